package org.tidewright.husbandry.arrival;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.arrival.search.Search.Effort;
import org.tidewright.testkit.SeededCases;

class ArrivalPlannerPropertyTest {
    private static final Effort LITTLE = new Effort(200, 50, 10, 200);

    @Test
    void everyPlanKeepsEveryRule() {
        SeededCases.check(400, draw -> {
            ArrivalPlan plan = ArrivalPlanner.plan(RandomRequest.of(draw, 8, 120), LITTLE);
            assertThat(PlanChecker.faults(plan)).isEmpty();
        });
    }

    @Test
    void noPlanIsBetterThanOneThatIsProven() {
        int[] proven = {0};
        SeededCases.check(100, draw -> {
            ArrivalRequest request = RandomRequest.of(draw, 4, 20);
            ArrivalPlan plan = ArrivalPlanner.plan(request);
            assertThat(PlanChecker.faults(plan)).isEmpty();
            proven[0] += plan.provenBest() ? 1 : 0;
            int[] cost = BestByTrying.cost(plan);
            assertThat(BestByTrying.cost(request, cost)).isEqualTo(cost);
        });
        assertThat(proven[0]).as("plans proven").isEqualTo(100);
    }

    @Test
    void theSameListHasTheSamePlan() {
        SeededCases.check(20, draw -> {
            ArrivalRequest request = RandomRequest.of(draw, 9, 150);
            assertThat(ArrivalPlanner.plan(request, LITTLE)).isEqualTo(ArrivalPlanner.plan(request, LITTLE));
        });
    }
}
