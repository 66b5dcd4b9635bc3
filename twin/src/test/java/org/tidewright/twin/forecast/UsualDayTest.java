package org.tidewright.twin.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.tidewright.twin.TestPlans;
import org.tidewright.twin.forecast.UsualDay.Day;
import org.tidewright.twin.forecast.UsualDay.Habits;
import org.tidewright.twin.forecast.UsualDay.Lime;

/** A day's pH, gases and what the keeper's habits do to them, against sums done by hand and common practice. */
class UsualDayTest {
    private static final double HOUR = 3600;

    private final UsualDay harbour = new UsualDay(TestPlans.example("harbour-room"));

    @Test
    void phFollowsCarbonDioxideAsTheCarbonateSystemHasIt() {
        Course day = harbour.asPlanned().course();
        double[] pressure = day.of(Quantity.CARBON_DIOXIDE);
        for (int i = 0; i < pressure.length; i++) {
            // At 8 dKH, 25.5 °C and S 35, with the constants of Lueker et al. 2000: 7.97 at 600, 7.86 at 800, 7.78 at
            // 1000.
            double degrees = day.of(Quantity.ALKALINITY)[i];
            double ph = day.of(Quantity.PH)[i] - Math.log10(degrees / 8) * 0.92;
            double expected = 7.97 + Math.log10(600 / pressure[i]) * (7.97 - 7.78) / Math.log10(1000.0 / 600);
            if (pressure[i] > 550 && pressure[i] < 1050) {
                assertThat(ph).isCloseTo(expected, within(0.02));
            }
        }
    }

    @Test
    void thePhIsLowestBeforeTheLightsAndTheDayRaisesIt() {
        Day day = new UsualDay(TestPlans.example("fifty-five-gallon")).asPlanned();
        double[] ph = day.course().of(Quantity.PH);
        double dawn = ph[sampleAt(day.lit().get(0).from())];
        double dusk = ph[sampleAt(day.lit().get(0).to())];
        // Common practice: 0.15 to 0.4 between the ends of the day.
        assertThat(dusk - dawn).isBetween(0.1, 0.4);
        double[] oxygen = day.course().of(Quantity.OXYGEN_SATURATION);
        assertThat(oxygen[sampleAt(day.lit().get(0).to())])
                .isGreaterThan(oxygen[sampleAt(day.lit().get(0).from())]);
    }

    @Test
    void anOpenWindowTakesTheBreathOfTheRoomAway() {
        Day shut = harbour.asPlanned();
        Day open = harbour.with(new Habits(Lime.AS_PLANNED, 0, 24 * HOUR, null, null, null));
        // Three people of 0.018 m³/h each (from memory) in 60 m³ changed five times an hour: 180 ppm over the 425
        // outdoors.
        double highest = max(open.course(), Quantity.CARBON_DIOXIDE_OF_ROOM);
        assertThat(highest).isBetween(425 + 120.0, 425 + 240.0);
        assertThat(max(shut.course(), Quantity.CARBON_DIOXIDE_OF_ROOM)).isGreaterThan(2 * highest);
        assertThat(min(open.course(), Quantity.PH)).isGreaterThan(min(shut.course(), Quantity.PH) + 0.1);
    }

    @Test
    void anEveningWindowDoesPartOfIt() {
        double shut = min(harbour.asPlanned().course(), Quantity.PH);
        double evening = min(
                harbour.with(new Habits(Lime.AS_PLANNED, 19 * HOUR, 3 * HOUR, null, null, null))
                        .course(),
                Quantity.PH);
        double always = min(
                harbour.with(new Habits(Lime.AS_PLANNED, 0, 24 * HOUR, null, null, null))
                        .course(),
                Quantity.PH);
        assertThat(evening).isBetween(shut, always);
    }

    @Test
    void limewaterHoldsThePhHigherThanAsMuchAlkalinityFromBicarbonate() {
        Day with = harbour.asPlanned();
        Day without = harbour.with(new Habits(Lime.NONE, 0, 0, null, null, null));
        assertThat(without.limewater()).isZero();
        assertThat(with.limewater() * 86_400e3).isCloseTo(2, within(1e-9));
        // 2 L of 0.9 × 41 meq/L a day stand for 74 meq of hydroxide, which bind as much carbon dioxide.
        assertThat(mean(with.course(), Quantity.CARBON_DIOXIDE))
                .isLessThan(mean(without.course(), Quantity.CARBON_DIOXIDE) - 10);
        assertThat(mean(with.course(), Quantity.PH)).isGreaterThan(mean(without.course(), Quantity.PH));
        assertThat(without.course().last(Quantity.ALKALINITY))
                .isCloseTo(with.course().last(Quantity.ALKALINITY), within(0.6));
    }

    @Test
    void limewaterAtNightWhereNoneIsPlannedKeepsToWhatEvaporates() {
        UsualDay nano = new UsualDay(TestPlans.example("window-nano"));
        Day night = nano.with(new Habits(Lime.AT_NIGHT, 0, 0, null, null, null));
        // An open tank of 0.21 m² loses some 0.2 to 1 L a day; common practice.
        assertThat(night.limewater() * 86_400e3).isBetween(0.02, 1.0);
        assertThat(min(night.course(), Quantity.PH))
                .isGreaterThan(min(nano.asPlanned().course(), Quantity.PH));
    }

    @Test
    void lightsMoveWithTheirClock() {
        Day early = harbour.with(new Habits(Lime.AS_PLANNED, 0, 0, 7 * HOUR, 10 * HOUR, 22 * HOUR));
        assertThat(early.lit()).containsExactly(new UsualDay.Span(7 * HOUR, 17 * HOUR));
        assertThat(early.algaeLit())
                .containsExactly(new UsualDay.Span(22 * HOUR, 24 * HOUR), new UsualDay.Span(0, 10 * HOUR));
        double[] light = early.course().of(Quantity.LIGHT);
        assertThat(light[sampleAt(12 * HOUR)]).isPositive();
        assertThat(light[sampleAt(6 * HOUR)]).isZero();
        assertThat(light[sampleAt(18 * HOUR)]).isZero();
    }

    @Test
    void theSameHabitsGiveTheSameDay() {
        assertThat(harbour.with(Habits.AS_PLANNED).course().of(Quantity.PH))
                .isEqualTo(harbour.asPlanned().course().of(Quantity.PH));
    }

    @Test
    void refusesHoursThatAreNone() {
        assertThatThrownBy(() -> new Habits(Lime.NONE, -1, 0, null, null, null)).hasMessageContaining("window");
        assertThatThrownBy(() -> new Habits(Lime.NONE, 0, 0, 90_000.0, null, null))
                .hasMessageContaining("0 to 86400");
    }

    private static int sampleAt(double time) {
        return (int) Math.round(time / 86_400 * (UsualDay.SAMPLES - 1));
    }

    private static double min(Course course, Quantity quantity) {
        return Arrays.stream(course.of(quantity)).min().orElseThrow();
    }

    private static double max(Course course, Quantity quantity) {
        return Arrays.stream(course.of(quantity)).max().orElseThrow();
    }

    private static double mean(Course course, Quantity quantity) {
        return Arrays.stream(course.of(quantity)).average().orElseThrow();
    }
}
