package org.tidewright.husbandry.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.tidewright.plan.method.WaterQuantity.ALKALINITY;
import static org.tidewright.plan.method.WaterQuantity.CALCIUM;
import static org.tidewright.plan.method.WaterQuantity.NITRATE;

import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.tidewright.plan.method.TestMethod;
import org.tidewright.plan.method.WaterQuantity;

class EstimateTest {
    private static final double DEGREE = TestInputs.one(ALKALINITY);
    private static final TestMethod TEST = TestInputs.method(ALKALINITY, "test", 0.1, 0);
    private static final TestMethod BIASED = TestInputs.method(ALKALINITY, "biased", 0.1, 0.5);

    private static TestInputs dosed() {
        return new TestInputs().expecting(ALKALINITY, null, new Known(0.5, 0.3)).dosed(ALKALINITY, 0.5);
    }

    private static Estimate estimate(TestInputs told, WaterQuantity quantity) {
        return Estimates.of(told.inputs()).of(quantity).orElseThrow();
    }

    /** Dosed 0.5 a day and falling by 0.05: used are 0.55. */
    @Test
    void whatIsUsedIsWhatIsDosedAndWhatIsMissing() {
        TestInputs told = dosed();
        for (int day = 0; day <= 60; day += 3) {
            told.read(TEST, day, 9 - 0.05 * day);
        }
        Estimate estimate = estimate(told, ALKALINITY);
        Estimate.Point middle = estimate.at(30);
        assertThat(middle.level().value() / DEGREE).isCloseTo(7.5, within(0.03));
        assertThat(middle.use().value() / DEGREE).isCloseTo(0.55, within(0.01));
        assertThat(middle.use().standardError() / DEGREE).isBetween(0.005, 0.03);
    }

    /** The readings show what is left of both; of what a reactor brings and of the use only the difference is known. */
    @Test
    void theChangeADayIsKnownBetterThanTheUseWhereTheDoseIsNot() {
        TestInputs told = new TestInputs()
                .expecting(ALKALINITY, null, new Known(0.5, 0.3))
                .dosed(ALKALINITY, 0.5, DayShape.EVEN, 0.4);
        for (int day = 0; day <= 60; day += 3) {
            told.read(TEST, day, 9 - 0.02 * day);
        }
        Estimate.Point middle = estimate(told, ALKALINITY).at(30);
        assertThat(middle.change().value() / DEGREE).isCloseTo(-0.02, within(0.01));
        assertThat(middle.change().standardError()).isLessThan(middle.use().standardError() / 5);
        assertThat(middle.dosed().value() - middle.use().value())
                .isCloseTo(middle.change().value(), within(1e-9));
    }

    /** A quarter of it exchanged once in the four weeks to come for water that stands 2 above: 0.5 / 28 a day. */
    @Test
    void theChangeADayHoldsWhatWaterChangesBring() {
        TestInputs told = dosed().renewed(45, 0.25, ALKALINITY, 10, 0);
        for (int day = 0; day <= 40; day += 4) {
            told.read(TEST, day, 8);
        }
        Estimate.Point now = estimate(told, ALKALINITY).at(40);
        assertThat(now.renewed() / DEGREE).isCloseTo(0.5 / 28, within(0.001));
        assertThat(now.change().value())
                .isCloseTo(now.dosed().value() + now.renewed() - now.use().value(), within(1e-9));
        assertThat(estimate(told, ALKALINITY).at(46).renewed()).isZero();
    }

    /** Said to bring 0.5 a day, doubled for eight days: the level rises by 0.3 a day, so it brings three fifths of that. */
    @Test
    void howStrongASolutionIsIsLearntFromAMoveOfIt() {
        TestInputs told = new TestInputs()
                .expecting(ALKALINITY, null, new Known(0.5, 0.3))
                .dosed(ALKALINITY, 0.5, DayShape.EVEN, 0.4);
        for (int day = 0; day <= 60; day++) {
            told.read(TEST, day, 7 + 0.3 * Math.max(0, Math.min(8, day - 30)));
        }
        Inputs moved = told.inputs().dosed("alkalinity solution", 1.0, 30).dosed("alkalinity solution", 0.5, 38);
        Known strength = Estimates.of(moved)
                .of(ALKALINITY)
                .orElseThrow()
                .strength(moved.solutions().get(0), 60);
        assertThat(strength.value()).isCloseTo(0.6, within(0.08));
        assertThat(strength.standardError()).isLessThan(0.1);
    }

    /** Dosed from midnight to 6:00 only: read at noon, the day's middle lies below by what the closed form of the wave says. */
    @Test
    void theLevelOverTheDayIsTheMeanOfItsHours() {
        DayShape night = DayShape.window(0, 0.25, Double.POSITIVE_INFINITY);
        TestInputs told = new TestInputs()
                .expecting(ALKALINITY, null, new Known(0.5, 0.3))
                .dosed(ALKALINITY, 0.5, night);
        for (double day = 0.5; day <= 60; day += 3) {
            told.read(TEST, day, 8);
        }
        Estimate estimate = estimate(told, ALKALINITY);
        double mean = 0;
        for (int i = 0; i < 96; i++) {
            mean += estimate.at(30 + (i + 0.5) / 96).level().value() / 96;
        }
        assertThat(estimate.at(30.5).overDay().value()).isCloseTo(mean, within(0.002 * DEGREE));
        assertThat(estimate.at(30.1).overDay().value()).isCloseTo(mean, within(0.002 * DEGREE));
        // By hand: level(t) = 8 + 0.5 (s(t) - t) - 0.5 (1 - 0.5) with s = min(1, 4t); its mean is 8 - 0.25 + 0.5 (0.875
        // - 0.5).
        assertThat(estimate.at(30.5).overDay().value() / DEGREE).isCloseTo(7.9375, within(0.02));
    }

    @Test
    void doubtGrowsAfterTheLastReadingAndIsLeastInTheMiddle() {
        TestInputs told = dosed();
        for (int day = 0; day <= 30; day += 5) {
            told.read(TEST, day, 8);
        }
        Estimate estimate = estimate(told, ALKALINITY);
        double before = 0;
        for (int day = 30; day <= 60; day += 5) {
            double error = estimate.at(day).level().standardError();
            assertThat(error).isGreaterThan(before);
            before = error;
        }
        assertThat(estimate.at(15).level().standardError())
                .isLessThan(estimate.at(30).level().standardError());
        assertThat(estimate.at(17).level().standardError())
                .isGreaterThan(estimate.at(15).level().standardError());
    }

    @Test
    void aForecastFollowsOtherDoses() {
        TestInputs told = dosed();
        for (int day = 0; day <= 40; day += 4) {
            told.read(TEST, day, 8);
        }
        Estimate estimate = estimate(told, ALKALINITY);
        Inputs more = told.inputs().dosed("alkalinity solution", 0.7, 40);
        double asNow = estimate.at(50).level().value();
        double withMore = estimate.ahead(50, more).level().value();
        assertThat((withMore - asNow) / DEGREE).isCloseTo(2.0, within(1e-6));
        assertThat(estimate.ahead(50, told.inputs()).level())
                .isEqualTo(estimate.at(50).level());
        assertThatIllegalArgumentException()
                .isThrownBy(() -> told.inputs().dosed("magic", 1, 40))
                .withMessageContaining("alkalinity solution");
        assertThatIllegalArgumentException().isThrownBy(() -> estimate.at(1000)).withMessageContaining("foreseen");
    }

    @Test
    void aForecastMakesThePlannedWaterChanges() {
        TestInputs told = dosed().renewed(45, 0.25, ALKALINITY, 10, 0);
        for (int day = 0; day <= 40; day += 4) {
            told.read(TEST, day, 8);
        }
        Estimate estimate = estimate(told, ALKALINITY);
        double rise = estimate.at(45.001).level().value()
                - estimate.at(44.999).level().value();
        assertThat(rise / DEGREE).isCloseTo(0.25 * 2, within(0.03));
    }

    /** The second method knows what the first is off by. */
    @Test
    void aBiasIsLearntFromReadingsOfAnotherMethod() {
        TestInputs told = dosed();
        for (int day = 0; day <= 40; day += 2) {
            told.read(day % 4 == 0 ? TEST : BIASED, day, day % 4 == 0 ? 8 : 8.6);
        }
        Estimate estimate = estimate(told, ALKALINITY);
        Known bias = bias(estimate, BIASED);
        assertThat(bias.value() / DEGREE).isCloseTo(0.6, within(0.05));
        assertThat(bias.standardError() / DEGREE).isLessThan(0.06);
        assertThat(estimate.at(20).level().value() / DEGREE).isCloseTo(8, within(0.05));
    }

    /** Shown 8.9 of a standard of 8.5: it reads 0.4 too much. */
    @Test
    void aBiasIsLearntFromAStandard() {
        TestInputs told = dosed().checked(BIASED, 8.9, 8.5, 0.02).checked(BIASED, 8.9, 8.5, 0.02);
        for (int day = 0; day <= 40; day += 2) {
            told.read(BIASED, day, 8.4);
        }
        Estimate estimate = estimate(told, ALKALINITY);
        assertThat(bias(estimate, BIASED).value() / DEGREE).isCloseTo(0.39, within(0.02));
        assertThat(estimate.at(20).level().value() / DEGREE).isCloseTo(8.0, within(0.04));
        assertThat(estimate.at(20).level().standardError() / DEGREE).isLessThan(0.1);
        // What the next test will show is its own bias and all.
        assertThat(estimate.reading(41, BIASED).value() / DEGREE).isCloseTo(8.4, within(0.06));
    }

    @Test
    void repeatedReadingsDoNotAverageABiasAway() {
        TestInputs told = dosed();
        for (int day = 0; day <= 200; day++) {
            told.read(BIASED, day, 8);
        }
        double error = estimate(told, ALKALINITY).at(100).level().standardError() / DEGREE;
        assertThat(error).isCloseTo(0.485, within(0.02)); // 0.5, and a little known from what systems usually have: ± 2
    }

    private static Known bias(Estimate estimate, TestMethod method) {
        return estimate.biases().stream()
                .filter(bias -> bias.method().equals(method))
                .findFirst()
                .orElseThrow()
                .bias();
    }

    /** Calcium was tested twice only; that alkalinity fell tells of it too. */
    @Test
    void alkalinityTellsOfTheCalciumThatSkeletonsTake() {
        TestMethod calcium = TestInputs.method(CALCIUM, "calcium", 5, 0);
        TestInputs told = new TestInputs().expecting(ALKALINITY, null, new Known(0, 0.3));
        for (int day = 0; day <= 30; day += 3) {
            told.read(TEST, day, 10 - 0.1 * day);
        }
        told.read(calcium, 0, 440).read(calcium, 1, 440);
        Estimate estimate = estimate(told, CALCIUM);
        double fallen = estimate.at(0).level().value() - estimate.at(30).level().value();
        assertThat(fallen / TestInputs.one(CALCIUM)).isCloseTo(30 * 0.1 * 7.008, withinPercentage(10));
        assertThat(estimate.at(30).use().value() / TestInputs.one(CALCIUM)).isCloseTo(0.7008, withinPercentage(15));
    }

    @Test
    void somethingMovedLoosensTheUse() {
        TestInputs quiet = dosed();
        TestInputs moved = dosed().upset(40);
        for (int day = 0; day <= 39; day += 3) {
            quiet.read(TEST, day, 8);
            moved.read(TEST, day, 8);
        }
        double before = estimate(quiet.until(41), ALKALINITY).at(41).use().standardError();
        double after = estimate(moved.until(41), ALKALINITY).at(41).use().standardError();
        assertThat(after).isCloseTo(Math.hypot(before, 0.15 * 0.5 * DEGREE), withinPercentage(3));
    }

    /** A method that errs by a share errs by that share of every difference too. */
    @Test
    void aBiasThatGrowsWithTheLevelMakesDifferencesDoubtful() {
        TestMethod card = new TestMethod(
                "card",
                NITRATE,
                "card",
                0,
                0.05,
                0,
                0,
                0.25,
                false,
                org.tidewright.plan.source.Basis.FROM_MEMORY,
                "made for a test");
        TestInputs told = new TestInputs();
        for (int day = 0; day <= 60; day += 3) {
            told.read(card, day, 10 + 0.5 * day);
        }
        Estimate estimate = estimate(told, NITRATE);
        Known use = estimate.at(30).use();
        assertThat(use.value() / TestInputs.one(NITRATE)).isCloseTo(-0.5, within(0.1));
        assertThat(use.standardError()).isGreaterThan(0.2 * Math.abs(use.value()));
        Known last = estimate.at(60).level();
        assertThat(last.standardError() / last.value()).isBetween(0.2, 0.3);
    }

    @Test
    void readingsAreFoundByTheirLine() {
        TestInputs told = dosed().read(TEST, 1, 8).read(TEST, 2, 8.1);
        Estimate estimate = estimate(told, ALKALINITY);
        UUID second = told.inputs().readings().get(1).line();
        assertThat(estimate.reading(second).orElseThrow().reading().time()).isEqualTo(2);
        assertThat(estimate.reading(new UUID(9, 9))).isEmpty();
    }

    @Test
    void whatWasNeverReadIsNotEstimated() {
        Estimates estimates = Estimates.of(dosed().read(TEST, 1, 8).inputs());
        assertThat(estimates.of(CALCIUM)).isEmpty();
        assertThat(estimates.all()).containsOnlyKeys(ALKALINITY);
        assertThat(Estimates.of(dosed().inputs()).all()).isEmpty();
    }
}
