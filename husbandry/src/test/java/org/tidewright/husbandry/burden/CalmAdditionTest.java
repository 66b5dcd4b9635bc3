package org.tidewright.husbandry.burden;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.TestPlans;
import org.tidewright.plan.model.Plan;
import org.tidewright.twin.ensemble.Ensemble.Progress;

class CalmAdditionTest {
    private static final int FEW = 5;
    private static final Plan NANO = TestPlans.example("window-nano");

    @Test
    void whatIsFoundStaysCalmAndAQuarterMoreOfWhatWasTriedDoesNot() {
        CalmAddition found = CalmAddition.of(NANO, Lately.NOTHING, FEW, Progress.UNWATCHED);
        assertThat(found.mass()).isGreaterThan(0).isLessThan(found.most());
        Residents residents = Residents.of(NANO, Lately.NOTHING, Residents.usualOutage(), FEW, Progress.UNWATCHED);
        assertThat(calm(residents, found.mass())).isEqualTo(1);
        assertThat(calm(residents, found.mass() + found.most() / 4)).isLessThan(1);
    }

    private static double calm(Residents residents, double mass) {
        int count = (int) Math.max(1, Math.round(mass / 0.005));
        double one = mass / count;
        return residents
                .with(Addition.today(one, count, 4 * one), Progress.UNWATCHED)
                .calmToday();
    }
}
