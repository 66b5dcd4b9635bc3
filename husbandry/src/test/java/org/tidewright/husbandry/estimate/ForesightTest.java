package org.tidewright.husbandry.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.tidewright.plan.method.WaterQuantity.ALKALINITY;

import java.util.EnumSet;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.tidewright.numerics.filter.Belief;
import org.tidewright.plan.method.TestMethod;

class ForesightTest {
    private static final double DEGREE = TestInputs.one(ALKALINITY);
    private static final TestMethod TEST = TestInputs.method(ALKALINITY, "test", 0.2, 0);

    /** Daily tests, the first when the change is made; nothing is known of the level, and the use before is known. */
    private static List<Foresight.Foreseen> foreseen(int tests, double useWalk) {
        Inputs inputs = new TestInputs()
                .expecting(ALKALINITY, null, new Known(0.6, 1e-9))
                .inputs();
        Kits kits = new Kits(java.util.Map.of()).with(List.of(TEST), 8 * DEGREE);
        WaterModel model = new WaterModel(inputs, EnumSet.of(ALKALINITY), kits, 0, ALKALINITY);
        Belief then = model.start();
        then.covariance()[model.levelState(ALKALINITY)][model.levelState(ALKALINITY)] = 1e6;
        probe(model, then);
        double[] sizes = new double[2];
        for (int i = 0; i < 2; i++) {
            boolean ofUse = model.noises().get(i).part() == WaterStates.Noise.Part.USE;
            sizes[i] = ofUse ? useWalk * DEGREE : 0;
        }
        List<Foresight.Test> daily = IntStream.range(0, tests)
                .mapToObj(day -> new Foresight.Test(day, TEST))
                .toList();
        return Foresight.run(model, then, sizes, ALKALINITY, 0, daily);
    }

    /** Nothing is known of the change either. */
    private static void probe(WaterModel model, Belief then) {
        double[] row = model.probeRow();
        for (int i = 0; i < row.length; i++) {
            if (row[i] != 0) {
                then.covariance()[i][i] = 1e6;
            }
        }
    }

    /**
     * Of a level that falls straight the filter knows the slope as well as a fitted line: σ √(12 / (N (N² - 1))); eight daily
     * tests tell it to 0.03086, example 3.2 of the handbook.
     */
    @Test
    void withoutAWalkAChangeIsToldAsWellAsByAFittedLine() {
        List<Foresight.Foreseen> foreseen = foreseen(20, 0);
        for (int tests = 2; tests <= 20; tests++) {
            assertThat(foreseen.get(tests - 1).change() / DEGREE)
                    .as(tests + " tests")
                    .isCloseTo(FittedSlope.error(0.2, tests, 1), within(1e-6));
        }
        assertThat(foreseen.get(7).change() / DEGREE).isCloseTo(0.03086, within(5e-6));
        assertThat(foreseen.get(6).shows(0.1 * DEGREE)).isFalse();
        assertThat(foreseen.get(7).shows(0.1 * DEGREE)).isTrue();
    }

    /**
     * Where the use walks, the filter weighs readings better than a line does: it never knows less than the line of the best
     * length, and more tests never make it worse.
     */
    @Test
    void whereTheUseWalksItNeverKnowsLessThanTheBestLine() {
        for (double walk : new double[] {0.01, 0.03, 0.06}) {
            List<Foresight.Foreseen> foreseen = foreseen(60, walk);
            double best = FittedSlope.best(0.2, walk);
            double ofLine = Math.sqrt(FittedSlope.variance(0.2, walk, best));
            assertThat(foreseen.get((int) Math.ceil(best)).change() / DEGREE).isLessThan(ofLine);
            for (int i = 3; i < 60; i++) {
                assertThat(foreseen.get(i).change())
                        .isLessThanOrEqualTo(foreseen.get(i - 1).change() * (1 + 1e-9));
            }
        }
    }

    /** A walk of the use is known at a time no better than it wanders: a change is told from it to no less than that. */
    @Test
    void aChangeSmallerThanTheUseWandersNeverShows() {
        List<Foresight.Foreseen> foreseen = foreseen(200, 0.06);
        assertThat(foreseen.get(199).shows(0.1 * DEGREE)).isFalse();
        assertThat(foreseen.get(199).change() / DEGREE)
                .isCloseTo(foreseen.get(100).change() / DEGREE, withinPercentage(0.1));
    }

    @Test
    void foretellsWithWhatErrorAnEstimateWillKnow() {
        TestInputs told = told();
        Estimate now = estimate(told);
        List<Foresight.Test> tests =
                List.of(new Foresight.Test(45, TEST), new Foresight.Test(49, TEST), new Foresight.Test(52, TEST));
        List<Foresight.Foreseen> foreseen = Foresight.of(now, 42, tests);

        // The same tests made: what is then known is as sure as was foretold, whatever they show.
        TestInputs later = told();
        tests.forEach(test -> later.read(TEST, test.time(), 7.9));
        Fitted fitted = estimate(later).fitted();
        Timeline timeline = fitted.timeline();
        timeline.shake(now.fitted().sizes());
        Belief last = Reckoning.kept(timeline, Evidence.of(timeline)).last();
        assertThat(foreseen.get(2).level())
                .isCloseTo(last.standardError(fitted.model().levelRow(ALKALINITY, 52)), withinPercentage(5));
        assertThat(foreseen.get(2).time()).isEqualTo(52);
        assertThat(foreseen.get(2).use())
                .isCloseTo(last.standardError(fitted.model().useRow(ALKALINITY)), withinPercentage(5));
    }

    @Test
    void aChangeBeforeTheLastLineCannotBeForeseen() {
        Estimate now = estimate(told());
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Foresight.of(now, 3, List.of()))
                .withMessageContaining("before the last line");
    }

    private static TestInputs told() {
        TestInputs told = new TestInputs()
                .expecting(ALKALINITY, null, new Known(0.5, 0.2))
                .dosed(ALKALINITY, 0.5);
        for (int day = 2; day <= 42; day += 4) {
            told.read(TEST, day, 8 + 0.1 * Math.sin(day));
        }
        return told;
    }

    private static Estimate estimate(TestInputs told) {
        return Estimates.of(told.inputs()).of(ALKALINITY).orElseThrow();
    }
}
