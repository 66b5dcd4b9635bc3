package org.tidewright.husbandry.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.tidewright.plan.method.WaterQuantity.ALKALINITY;

import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;
import org.tidewright.numerics.sample.Draws;
import org.tidewright.plan.method.TestMethod;

/** What a journal teaches of how much things wander, on series of the model's own making whose noise is known. */
class NoiseFitTest {
    private static final double DEGREE = TestInputs.one(ALKALINITY);
    private static final TestMethod TEST = TestInputs.method(ALKALINITY, "test", 0.1, 0);

    /** Level and use that walk, doses that make up for the use at the start. */
    private static Estimate estimate(int readings, double levelWalk, double useWalk) {
        RandomGenerator dice = new Draws(20, readings).stream("walks");
        TestInputs told = new TestInputs()
                .expecting(ALKALINITY, null, new Known(0.5, 0.2))
                .dosed(ALKALINITY, 0.5);
        double level = 8;
        double use = 0.5;
        for (int day = 1; day <= 2 * readings; day++) {
            level += 0.5 - use + levelWalk * dice.nextGaussian();
            use += useWalk * dice.nextGaussian();
            // Kept within reason: a keeper would not let it run away.
            double back = 0.02 * (use - 0.5);
            use -= back;
            if (day % 2 == 0) {
                told.read(TEST, day, level + 0.1 * dice.nextGaussian());
            }
        }
        return Estimates.of(told.inputs()).of(ALKALINITY).orElseThrow();
    }

    private static Estimate.Wandering of(Estimate estimate, String part) {
        return estimate.wanderings().stream()
                .filter(wandering -> wandering.part().equals(part))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aLongJournalTeachesHowMuchTheLevelWalks() {
        Estimate.Wandering level = of(estimate(350, 0.15, 0.002), "level");
        assertThat(level.size() / DEGREE).isCloseTo(0.15, withinPercentage(15));
        assertThat(level.taught()).isGreaterThan(0.9);
    }

    @Test
    void aLongJournalTeachesHowMuchTheUseWalks() {
        Estimate.Wandering use = of(estimate(350, 0.01, 0.04), "use a day");
        assertThat(use.size() / DEGREE).isCloseTo(0.04, withinPercentage(25));
        assertThat(use.taught()).isGreaterThan(0.8);
    }

    @Test
    void aFewReadingsTeachNextToNothingOfIt() {
        Estimate estimate = estimate(4, 0.05, 0.01);
        for (Estimate.Wandering wandering : estimate.wanderings()) {
            assertThat(wandering.taught()).as(wandering.part()).isBetween(0.0, 0.35);
            assertThat(wandering.size()).isCloseTo(wandering.usual(), withinPercentage(40));
        }
    }

    @Test
    void surprisesAreAsLargeAsTheyShouldBe() {
        Estimate.Calibration calibration = estimate(350, 0.1, 0.01).calibration();
        assertThat(calibration.count()).isGreaterThan(340);
        assertThat(calibration.meanSquare()).isBetween(0.85, 1.15);
        assertThat(calibration.within90()).isBetween(0.87, 0.93);
    }
}
