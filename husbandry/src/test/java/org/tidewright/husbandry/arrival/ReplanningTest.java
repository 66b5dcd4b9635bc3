package org.tidewright.husbandry.arrival;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.tidewright.husbandry.arrival.Lists.after;
import static org.tidewright.husbandry.arrival.Lists.budget;
import static org.tidewright.husbandry.arrival.Lists.day;
import static org.tidewright.husbandry.arrival.Lists.fish;
import static org.tidewright.husbandry.arrival.Lists.priced;
import static org.tidewright.husbandry.arrival.Lists.request;
import static org.tidewright.husbandry.arrival.Lists.tank;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.arrival.Arrival.Stage;
import org.tidewright.husbandry.arrival.Change.Added;
import org.tidewright.husbandry.arrival.Change.Animals;
import org.tidewright.husbandry.arrival.Change.Delayed;
import org.tidewright.husbandry.arrival.Change.Gone;
import org.tidewright.husbandry.arrival.Change.Quarantine;
import org.tidewright.husbandry.arrival.Happened.InQuarantine;
import org.tidewright.testkit.Draw;
import org.tidewright.testkit.SeededCases;

class ReplanningTest {
    /** Days 0 to 30, 33 to 63, 66 to 96. */
    private static final ArrivalPlan PLAN = ArrivalPlanner.plan(
            request(List.of(fish("goby", 5, 30, 1), fish("wrasse", 5, 30, 2), fish("tang", 5, 30, 3)), tank("Q")));

    private static ArrivalPlan on(int day, Change... changes) {
        ArrivalPlan plan = ArrivalPlanner.replan(PLAN, day(day), PLAN.happenedBy(day(day)), List.of(changes));
        assertThat(PlanChecker.faults(plan)).isEmpty();
        return plan;
    }

    private static void arrives(ArrivalPlan plan, String id, int in, int out, Stage stage) {
        Arrival arrival = plan.arrival(id).orElseThrow();
        assertThat(List.of(arrival.in(), arrival.out())).as(id).containsExactly(day(in), day(out));
        assertThat(arrival.stage()).as(id).isEqualTo(stage);
    }

    @Test
    void whereNothingChangedNothingMoves() {
        ArrivalPlan plan = on(40);
        arrives(plan, "goby", 0, 30, Stage.IN_DISPLAY);
        arrives(plan, "wrasse", 33, 63, Stage.IN_QUARANTINE);
        arrives(plan, "tang", 66, 96, Stage.PLANNED);
    }

    @Test
    void aDelayMovesOnlyWhatItConcerns() {
        ArrivalPlan plan = on(40, new Delayed("tang", new NotBefore(day(100), "not in the shop")));
        arrives(plan, "wrasse", 33, 63, Stage.IN_QUARANTINE);
        arrives(plan, "tang", 100, 130, Stage.PLANNED);
    }

    /** The tank is empty on day 40 and dry on day 43. */
    @Test
    void aDeathInQuarantineFreesTheTank() {
        ArrivalPlan plan = on(40, new Gone("wrasse", day(40)));
        assertThat(plan.arrival("wrasse")).isEmpty();
        assertThat(plan.notPlaced()).isEmpty();
        arrives(plan, "tang", 43, 73, Stage.PLANNED);
    }

    @Test
    void whatIsGivenUpBeforeItCameIsOffTheList() {
        ArrivalPlan plan = on(40, new Gone("tang", day(40)));
        assertThat(plan.request().wish("tang")).isEmpty();
        assertThat(plan.arrivals()).hasSize(2);
    }

    @Test
    void aLongerQuarantineMovesWhatFollows() {
        ArrivalPlan plan = on(40, new Quarantine("wrasse", 45));
        arrives(plan, "wrasse", 33, 78, Stage.IN_QUARANTINE);
        arrives(plan, "tang", 81, 111, Stage.PLANNED);
    }

    @Test
    void whatTheKeeperDidOtherwiseCountsAsItWas() {
        List<Happened> happened = new ArrayList<>(PLAN.happenedBy(day(32)));
        happened.add(new InQuarantine("tang", "Q", day(36)));
        ArrivalPlan plan = ArrivalPlanner.replan(PLAN, day(40), happened, List.of());
        assertThat(PlanChecker.faults(plan)).isEmpty();
        arrives(plan, "tang", 36, 66, Stage.IN_QUARANTINE);
        arrives(plan, "wrasse", 69, 99, Stage.PLANNED);
    }

    @Test
    void oneMoreWishTakesItsPlace() {
        ArrivalPlan plan = on(40, new Added(fish("blenny", 5, 20, 1)));
        arrives(plan, "wrasse", 33, 63, Stage.IN_QUARANTINE);
        arrives(plan, "blenny", 66, 86, Stage.PLANNED);
        arrives(plan, "tang", 89, 119, Stage.PLANNED);
    }

    /** 60 g are more than half of 100 g and of 5 g; 50 g are not. */
    @Test
    void fewerAnimalsWeighLess() {
        ArrivalPlan plan =
                ArrivalPlanner.plan(request(List.of(fish("goby", 5, 30), fish("chromis", 60, 30)), tank("Q")));
        assertThat(plan.notPlaced()).hasSize(1);
        ArrivalPlan fewer = ArrivalPlanner.replan(
                plan, day(40), plan.happenedBy(day(40)), List.of(new Animals("chromis", 5, 0.050)));
        assertThat(PlanChecker.faults(fewer)).isEmpty();
        arrives(fewer, "chromis", 40, 70, Stage.PLANNED);
    }

    @Test
    void whatComesAfterSomebodyWhoDiedDoesNotCome() {
        ArrivalPlan plan = ArrivalPlanner.plan(request(
                List.of(fish("shrimp", 5, 30), after(fish("goby", 5, 30), "shrimp", 7)), tank("Q")));
        ArrivalPlan anew =
                ArrivalPlanner.replan(plan, day(10), plan.happenedBy(day(10)), List.of(new Gone("shrimp", day(10))));
        assertThat(anew.arrivals()).isEmpty();
        assertThat(anew.notPlaced())
                .singleElement()
                .satisfies(
                        each -> assertThat(each.reasons()).containsExactly(new Reason.ComesAfter("shrimp", null, 7)));
    }

    /** The money of March went with the fish that died. */
    @Test
    void whatDiedWasPaidFor() {
        ArrivalPlan plan = ArrivalPlanner.plan(request(
                List.of(priced(fish("goby", 10, 30, 1), 8000), priced(fish("wrasse", 10, 30, 2), 8000)),
                budget(10_000),
                tank("Q")));
        ArrivalPlan anew =
                ArrivalPlanner.replan(plan, day(5), plan.happenedBy(day(5)), List.of(new Gone("goby", day(5))));
        arrives(anew, "wrasse", 29, 59, Stage.PLANNED);
    }

    @Test
    void aDayOutsideThePlanIsRefused() {
        assertThatThrownBy(() -> ArrivalPlanner.replan(PLAN, day(-1), List.of(), List.of()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("the day must lie between");
    }

    @Test
    void whatHasHappenedStaysAndTheRestKeepsEveryRule() {
        SeededCases.check(200, draw -> {
            ArrivalPlan plan = ArrivalPlanner.plan(RandomRequest.of(draw, 6, 120));
            int day = draw.whole(0, plan.request().horizonDays() - 1);
            List<Happened> happened = plan.happenedBy(plan.request().start().plusDays(day));
            ArrivalPlan anew = ArrivalPlanner.replan(
                    plan, plan.request().start().plusDays(day), happened, changes(draw, plan, day));
            assertThat(PlanChecker.faults(anew)).isEmpty();
        });
    }

    @Test
    void aBestPlanOfWhichPartHasHappenedIsStillTheBest() {
        SeededCases.check(100, draw -> {
            ArrivalPlan plan = ArrivalPlanner.plan(RandomRequest.of(draw, 5, 100));
            int day = draw.whole(0, plan.request().horizonDays() - 1);
            ArrivalPlan anew = ArrivalPlanner.replan(
                    plan,
                    plan.request().start().plusDays(day),
                    plan.happenedBy(plan.request().start().plusDays(day)),
                    List.of());
            assertThat(PlanChecker.faults(anew)).isEmpty();
            if (plan.provenBest() && anew.provenBest()) {
                assertThat(days(anew)).isEqualTo(days(plan));
            }
        });
    }

    /** Wishes left out, last day, sum of days. */
    private static List<Long> days(ArrivalPlan plan) {
        long sum = plan.arrivals().stream()
                .mapToLong(each -> each.out().toEpochDay())
                .sum();
        long last = plan.lastDay().map(java.time.LocalDate::toEpochDay).orElse(0L);
        return List.of((long) plan.notPlaced().size(), last, sum);
    }

    private static List<Change> changes(Draw draw, ArrivalPlan plan, int day) {
        List<Change> changes = new ArrayList<>();
        for (Wish wish : plan.request().wishes()) {
            int die = draw.whole(0, 9);
            if (die == 0) {
                changes.add(new Gone(wish.id(), plan.request().start().plusDays(day)));
            } else if (die == 1) {
                changes.add(new Delayed(
                        wish.id(), new NotBefore(plan.request().start().plusDays(day + draw.whole(1, 20)), "late")));
            } else if (die == 2) {
                changes.add(new Animals(wish.id(), 1, wish.load() * draw.between(0.5, 1)));
            } else if (die == 3 && wish.quarantineDays() > 0) {
                changes.add(new Quarantine(wish.id(), wish.quarantineDays() + draw.whole(1, 10)));
            }
        }
        if (draw.whole(0, 2) == 0) {
            changes.add(new Added(fish("more", draw.whole(1, 20), draw.whole(0, 20), draw.whole(1, 5))));
        }
        return changes;
    }
}
