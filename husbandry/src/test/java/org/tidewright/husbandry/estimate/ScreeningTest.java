package org.tidewright.husbandry.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.tidewright.plan.method.WaterQuantity.ALKALINITY;
import static org.tidewright.plan.method.WaterQuantity.AMMONIA;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.estimate.Estimate.Standing;
import org.tidewright.plan.method.TestMethod;

class ScreeningTest {
    private static final double DEGREE = TestInputs.one(ALKALINITY);
    private static final TestMethod TEST = TestInputs.method(ALKALINITY, "test", 0.15, 0);

    /** Scatter of some tests, as drawn once. */
    private static final double[] SCATTER = {
        0.05, -0.12, 0.2, -0.04, 0.1, -0.18, 0.02, 0.14, -0.09, 0.07, -0.15, 0.11, 0.03, -0.06, 0.16, -0.1
    };

    /** A level that stays at 8, tested each third day. */
    private static double[] steady() {
        double[] readings = new double[SCATTER.length];
        for (int i = 0; i < readings.length; i++) {
            readings[i] = 8 + SCATTER[i];
        }
        return readings;
    }

    private static Estimate estimate(double... readings) {
        TestInputs told = new TestInputs()
                .expecting(ALKALINITY, null, new Known(0.5, 0.2))
                .dosed(ALKALINITY, 0.5);
        for (int i = 0; i < readings.length; i++) {
            told.read(TEST, 1 + 3 * i, readings[i]);
        }
        return Estimates.of(told.inputs()).of(ALKALINITY).orElseThrow();
    }

    private static List<Standing> standings(Estimate estimate) {
        return estimate.readings().stream().map(Estimate.Judged::standing).toList();
    }

    @Test
    void soundReadingsAreAllTaken() {
        assertThat(standings(estimate(steady()))).containsOnly(Standing.TAKEN);
    }

    @Test
    void aGrossErrorIsNamedAndBendsNeitherLevelNorUse() {
        Estimate without = estimate(steady());
        for (int where : new int[] {0, 1, 7, 14}) {
            double[] readings = steady();
            readings[where] = 8 / 2.8; // read in another unit
            Estimate estimate = estimate(readings);
            Estimate.Judged judged = estimate.readings().get(where);
            assertThat(judged.standing()).as("reading " + where).isEqualTo(Standing.SET_ASIDE);
            assertThat(judged.off()).isLessThan(-10);
            assertThat(standings(estimate).stream().filter(standing -> standing == Standing.TAKEN))
                    .hasSize(SCATTER.length - 1);
            for (int i = 0; i < SCATTER.length; i++) {
                double time = 1 + 3 * i;
                assertThat(estimate.at(time).level().value() / DEGREE)
                        .isCloseTo(without.at(time).level().value() / DEGREE, within(0.1));
                assertThat(estimate.at(time).use().value() / DEGREE)
                        .isCloseTo(without.at(time).use().value() / DEGREE, within(0.01));
            }
        }
    }

    /** A single last reading may be an error or the first of a jump: it is set aside until the next one comes. */
    @Test
    void aLastReadingFarOffIsSetAsideAndBothAreTakenOnceTheNextAgrees() {
        double[] readings = steady();
        int last = readings.length - 1;
        readings[last] = 9.5;
        Estimate first = estimate(readings);
        assertThat(first.readings().get(last).standing()).isEqualTo(Standing.SET_ASIDE);
        assertThat(first.at(1 + 3 * last).level().value() / DEGREE).isCloseTo(8, within(0.15));

        double[] more = java.util.Arrays.copyOf(readings, last + 2);
        more[last + 1] = 9.45;
        Estimate then = estimate(more);
        assertThat(then.readings().get(last).standing()).isEqualTo(Standing.TAKEN_AFTER_JUMP);
        assertThat(then.readings().get(last + 1).standing()).isEqualTo(Standing.TAKEN);
        assertThat(then.at(1 + 3 * (last + 1)).level().value() / DEGREE).isCloseTo(9.47, within(0.12));
        assertThat(then.at(1 + 3 * (last - 1)).level().value() / DEGREE).isCloseTo(8, within(0.15));
        assertThat(then.at(1 + 3 * (last + 1)).use().value() / DEGREE).isCloseTo(0.5, within(0.06));
    }

    @Test
    void aLevelThatJumpedInTheMiddleIsFollowedAndTheUseIsNotBent() {
        double[] readings = steady();
        for (int i = 8; i < readings.length; i++) {
            readings[i] += 1.5;
        }
        Estimate estimate = estimate(readings);
        assertThat(estimate.readings().get(8).standing()).isEqualTo(Standing.TAKEN_AFTER_JUMP);
        assertThat(standings(estimate)).doesNotContain(Standing.SET_ASIDE);
        assertThat(estimate.at(22).level().value() / DEGREE).isCloseTo(8, within(0.15));
        assertThat(estimate.at(25).level().value() / DEGREE).isCloseTo(9.5, within(0.15));
        assertThat(estimate.at(46).use().value() / DEGREE).isCloseTo(0.5, within(0.06));
    }

    @Test
    void twoErrorsInARowThatDoNotAgreeAreNoJump() {
        double[] readings = steady();
        readings[7] = 12.9;
        readings[8] = 15;
        Estimate estimate = estimate(readings);
        assertThat(estimate.readings().get(7).standing()).isEqualTo(Standing.SET_ASIDE);
        assertThat(estimate.readings().get(8).standing()).isEqualTo(Standing.SET_ASIDE);
        assertThat(standings(estimate)).doesNotContain(Standing.TAKEN_AFTER_JUMP);
    }

    @Test
    void aJournalOfOneReadingBelievesIt() {
        Estimate estimate = estimate(14);
        assertThat(standings(estimate)).containsExactly(Standing.TAKEN);
        assertThat(estimate.at(1).level().value() / DEGREE).isCloseTo(14, within(0.1));
    }

    /** What kills is believed at once. */
    @Test
    void ammoniaThatRisesIsNeverSetAside() {
        TestMethod card = TestInputs.method(AMMONIA, "card", 0.05, 0);
        TestInputs told = new TestInputs();
        for (int i = 0; i < 12; i++) {
            told.read(card, 1 + 3 * i, i == 11 ? 1.0 : 0.02 * (i % 3));
        }
        Estimate estimate = Estimates.of(told.inputs()).of(AMMONIA).orElseThrow();
        assertThat(standings(estimate)).doesNotContain(Standing.SET_ASIDE);
        assertThat(estimate.at(34).level().value() / TestInputs.one(AMMONIA)).isCloseTo(1, within(0.1));
    }
}
