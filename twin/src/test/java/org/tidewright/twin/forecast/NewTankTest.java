package org.tidewright.twin.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Objects;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tidewright.plan.Examples;
import org.tidewright.twin.TestPlans;

/** Days and heights of a new tank's first weeks, against common practice and sums done by hand. */
class NewTankTest {
    private static final double DAY = 86_400;

    @ParameterizedTest
    @ValueSource(strings = {"harbour-room", "window-nano", "fifty-five-gallon"})
    void unseededRockRunsThroughAmmoniaAndNitriteInTheWeeksOfCommonPractice(String name) {
        assertThat(Examples.NAMES).contains(name);
        Course course = tank(name, 26).fishless(NewTank.Seed.NONE, 1, 60).course();
        // Common practice at 25 to 27 °C: ammonia falls by day 10 to 21, nitrite peaks on day 12 to 30, clears on 25 to
        // 50.
        double ammoniaGone = firstBelow(course.time(), course.of(Quantity.AMMONIA), 0.1, 1);
        double nitritePeak = peakDay(course, Quantity.NITRITE);
        double nitriteGone = firstBelow(course.time(), course.of(Quantity.NITRITE), 0.1, nitritePeak);
        assertThat(ammoniaGone).isBetween(10.0, 21.0);
        assertThat(nitritePeak).isBetween(12.0, 30.0).isGreaterThan(peakDay(course, Quantity.AMMONIA));
        assertThat(nitriteGone).isBetween(25.0, 50.0).isGreaterThan(ammoniaGone);
        // A hand-worked tank of the same kind: one dose of 2.0 mg/L at 26 °C, ammonia gone at day 14.3, nitrite at
        // 34.1.
        assertThat(ammoniaGone).isBetween(14.3 * 0.8, 14.3 * 1.2);
        assertThat(nitriteGone).isBetween(34.1 * 0.8, 34.1 * 1.2);
        double[] nitrate = course.of(Quantity.NITRATE);
        assertThat(nitrate[nitrate.length - 1]).isGreaterThan(nitrate[0] + 4);
    }

    @Test
    void seedingShortensItAndMatureMediaMore() {
        NewTank tank = tank("harbour-room", 26);
        double bare = tank.fishless(NewTank.Seed.NONE, 1, 90).ready();
        double seeded = tank.fishless(NewTank.Seed.SOME, 1, 90).ready();
        double ripe = tank.fishless(NewTank.Seed.RIPE, 1, 90).ready();
        // Twenty times the cells are ln 20 / 0.5 = 6 days of ammonia oxidisers and ln 20 / 0.38 = 8 of nitrite
        // oxidisers.
        assertThat(bare - seeded).isBetween(6.0, 20.0);
        assertThat(seeded - ripe).isBetween(4.0, 20.0);
    }

    @Test
    void warmerIsQuicker() {
        double cool = tank("window-nano", 22).fishless(NewTank.Seed.NONE, 1, 90).ready();
        double warm = tank("window-nano", 26).fishless(NewTank.Seed.NONE, 1, 90).ready();
        assertThat(warm).isLessThan(cool);
        // 1.08 per kelvin on the rate of growth is at most 1.08^4 = 1.36 on the days.
        assertThat(cool / warm).isBetween(1.1, 1.5);
    }

    @Test
    void bacteriaThatGrowSlowerTakeLonger() {
        NewTank tank = tank("window-nano", 26);
        double usual = tank.fishless(NewTank.Seed.SOME, 1, 90).ready();
        assertThat(tank.growing(0.7).fishless(NewTank.Seed.SOME, 1, 90).ready()).isGreaterThan(usual);
        assertThat(tank.growing(1.4).fishless(NewTank.Seed.SOME, 1, 90).ready()).isLessThan(usual);
    }

    @Test
    void theFirstClearNitriteIsNotTheReadyTest() {
        NewTank.Beginning beginning = tank("harbour-room", 26).fishless(NewTank.Seed.NONE, 1, 60);
        Course course = beginning.course();
        double nitriteGone =
                firstBelow(course.time(), course.of(Quantity.NITRITE), 0.1, peakDay(course, Quantity.NITRITE));
        assertThat(beginning.ready()).isGreaterThan(nitriteGone + 3).isLessThan(60);
        assertThat(beginning.atReady()).isNotNull();
        int last = beginning.doses().get(beginning.doses().size() - 1);
        assertThat(beginning.ready()).isEqualTo(last + 1);
        assertThat(beginning.doses()).contains(last - 1);
    }

    @Test
    void bicarbonateMakesUpForTwoEquivalentsANitrogenOfTheSalt() {
        NewTank tank = tank("harbour-room", 26);
        NewTank.Beginning beginning = tank.fishless(NewTank.Seed.NONE, 1, 60);
        double dosed = 2 + beginning.doses().size() - 1; // mg/L of nitrogen, at most
        double moles = dosed * 1e-3 * tank.twin().volume() / 14.007e-3;
        // Wolf-Gladrow et al. 2007: two equivalents a mole; less what the cells keep and the last that was let go.
        assertThat(beginning.bicarbonate() / 84.007e-3).isBetween(0.75 * 2 * moles, 2 * moles);
    }

    @Test
    void theSaltOfADoseIsThatOfItsNitrogen() {
        NewTank tank = tank("window-nano", 26);
        // 53.49 g of ammonium chloride hold 14.007 g of nitrogen.
        assertThat(tank.ammoniumChloride(2))
                .isCloseTo(2e-3 * tank.twin().volume() * 53.49 / 14.007, Percentage.withPercentage(0.01));
    }

    @Test
    void fourFishOnBareRockGiveTheAmmoniaOfTheirFood() {
        NewTank tank = new NewTank(TestPlans.example("window-nano"), 26, 4, 0.015);
        Course course = tank.stocked(tank.filled(NewTank.Seed.NONE), 0, 4);
        // 1.2 g of food of 7.7 % nitrogen a day, 0.70 of it as ammonia in the end: 64.7 mg a day. The gut holds a day
        // back.
        double perDay = 1.2e3 * 0.077 * 0.70 / (tank.twin().volume() * 1000);
        assertThat(course.last(Quantity.AMMONIA)).isBetween(2 * perDay, 4 * perDay);
    }

    @Test
    void allAtOncePeaksHigherThanOneAFortnight() {
        NewTank tank = new NewTank(TestPlans.example("fifty-five-gallon"), 26, 4, 0.015);
        Course once = tank.stocked(tank.filled(NewTank.Seed.SOME), 0, 75);
        Course staged = tank.stocked(tank.filled(NewTank.Seed.SOME), NewTank.FORTNIGHT, 75);
        assertThat(peak(once, Quantity.AMMONIA)).isGreaterThan(3 * peak(staged, Quantity.AMMONIA));
        assertThat(peak(once, Quantity.NITRITE)).isGreaterThan(2 * peak(staged, Quantity.NITRITE));
        assertThat(peakDay(once, Quantity.NITRITE)).isGreaterThan(peakDay(once, Quantity.AMMONIA));
        // Hand-worked: four at once reach 0.03 mg/L of free ammonia, one a fortnight stays under 0.02.
        assertThat(peak(once, Quantity.FREE_AMMONIA)).isGreaterThan(0.03);
        assertThat(peak(staged, Quantity.FREE_AMMONIA)).isLessThan(0.02);
    }

    @Test
    void aTankThatPassedTheTestTakesThemAll() {
        NewTank tank = new NewTank(TestPlans.example("fifty-five-gallon"), 26, 4, 0.015);
        NewTank.Beginning beginning = tank.fishless(NewTank.Seed.SOME, 1, 60);
        Course course = tank.stocked(Objects.requireNonNull(beginning.atReady()), 0, 60);
        // 16.17 mg of nitrogen a fish and day in 209 L are a third of the milligram a litre the test cleared.
        assertThat(peak(course, Quantity.AMMONIA)).isLessThan(NewTank.CLEAR);
        assertThat(peak(course, Quantity.FREE_AMMONIA)).isLessThan(0.01);
    }

    @Test
    void aFirstFishRunsTheSameWayLower() {
        Course course =
                tank("harbour-room", 26).firstFish(NewTank.Seed.NONE, 60).course();
        assertThat(peakDay(course, Quantity.NITRITE)).isGreaterThan(peakDay(course, Quantity.AMMONIA));
        assertThat(peak(course, Quantity.AMMONIA)).isBetween(0.1, 1.0);
    }

    @Test
    void refusesWhatIsNoTank() {
        assertThatThrownBy(() -> new NewTank(TestPlans.example("window-nano"), 26, 0, 0.01))
                .hasMessageContaining("1 to 20");
        NewTank tank = tank("window-nano", 26);
        assertThatThrownBy(() -> tank.fishless(NewTank.Seed.NONE, 9, 60)).hasMessageContaining("0.5 to 4");
        assertThatThrownBy(() -> tank.fishless(NewTank.Seed.NONE, 1, 0)).hasMessageContaining("1 to 400 days");
        assertThatThrownBy(() -> tank.twin().newlyFilled(tank.twin().network().usualParameters(), 2, 0))
                .hasMessageContaining("0 to 1");
    }

    private static NewTank tank(String name, double temperature) {
        return new NewTank(TestPlans.example(name), temperature, 4, 0.015);
    }

    private static double peak(Course course, Quantity quantity) {
        double most = 0;
        for (double value : course.of(quantity)) {
            most = Math.max(most, value);
        }
        return most;
    }

    private static double peakDay(Course course, Quantity quantity) {
        double[] values = course.of(quantity);
        int best = 0;
        for (int i = 0; i < values.length; i++) {
            best = values[i] > values[best] ? i : best;
        }
        return course.time()[best] / DAY;
    }

    private static double firstBelow(double[] time, double[] values, double bound, double after) {
        for (int i = 0; i < values.length; i++) {
            if (time[i] / DAY > after && values[i] < bound) {
                return time[i] / DAY;
            }
        }
        return Double.POSITIVE_INFINITY;
    }
}
