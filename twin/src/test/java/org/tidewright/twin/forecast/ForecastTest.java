package org.tidewright.twin.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.tidewright.plan.Examples;
import org.tidewright.plan.model.Inhabitants;
import org.tidewright.testkit.ChangedText;
import org.tidewright.twin.TestPlans;
import org.tidewright.twin.contract.Balance;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.ensemble.Ensemble;
import org.tidewright.twin.rehearsal.Band;
import org.tidewright.twin.run.Account;
import org.tidewright.twin.system.Lever;
import org.tidewright.twin.system.SystemTwin;

/** What-ifs on the first example: each moves what every keeper knows it moves, and in that direction. */
class ForecastTest {
    private static final Set<Quantity> ALL = EnumSet.allOf(Quantity.class);
    private static final double DAY = 86_400;

    private final Forecast forecast = Forecast.of(TestPlans.example("harbour-room"));

    @Test
    void startsWithTheWaterThePlanStates() {
        Course course = forecast.course(1, 2, ALL);
        assertThat(course.of(Quantity.ALKALINITY)[0]).isCloseTo(8.0, within(0.01));
        assertThat(course.of(Quantity.CALCIUM)[0]).isCloseTo(420, within(0.5));
        assertThat(course.of(Quantity.NITRATE)[0]).isCloseTo(8, within(0.01));
        assertThat(course.of(Quantity.PHOSPHATE)[0]).isCloseTo(0.06, within(0.001));
    }

    @Test
    void anAccountOfTheLastDayHoldsTheMealsOfOneDay() {
        Course all = forecast.course(3, 25, ALL);
        Course end = forecast.course(3, 25, ALL, List.of(), 1);
        assertThat(end.account().from()).isEqualTo(2 * DAY);
        assertThat(end.account().to()).isEqualTo(3 * DAY);
        // Pellets are fed alike on each of the three days.
        assertThat(fed(end, "pellets")).isCloseTo(fed(all, "pellets") / 3, within(1e-12));
        assertThat(end.time()).isEqualTo(all.time());
        assertThat(end.last(Quantity.NITRATE)).isCloseTo(all.last(Quantity.NITRATE), within(1e-3));
    }

    private static double fed(Course course, String food) {
        return course.account().streams(Balance.NITROGEN).stream()
                .filter(stream -> stream.cause().equals(food))
                .mapToDouble(Account.Stream::amount)
                .sum();
    }

    @Test
    void moreFeedMakesMoreNitrateAndPhosphate() {
        Course asRun = forecast.course(60, 2, ALL);
        Course changed = forecast.course(60, 2, ALL, List.of(Change.to(lever("feed"), 1.5)));
        assertThat(changed.last(Quantity.NITRATE)).isGreaterThan(1.2 * asRun.last(Quantity.NITRATE));
        assertThat(changed.last(Quantity.PHOSPHATE)).isGreaterThan(asRun.last(Quantity.PHOSPHATE));
        // Nitrification takes more alkalinity. Where it ends is another matter: the breath of more food slows the
        // skeletons.
        assertThat(nitrification(changed)).isLessThan(1.2 * nitrification(asRun));
        assertThat(changed.last(Quantity.PH)).isLessThan(asRun.last(Quantity.PH));
    }

    /** What it brought of alkalinity: less than nothing. */
    private double nitrification(Course course) {
        return course.account().of(Stock.ALKALINITY, forecast.twin().waters()).stream()
                .filter(line -> line.cause().equals("ammonia oxidation"))
                .mapToDouble(Account.Line::amount)
                .sum();
    }

    @Test
    void aWindowOpenAtNightLiftsThePh() {
        Course shut = forecast.course(3, 49, ALL);
        Course open = forecast.course(3, 49, ALL, List.of(Change.to(lever("air changes"), 6.0 / 3600)));
        assertThat(open.last(Quantity.CARBON_DIOXIDE_OF_ROOM)).isLessThan(shut.last(Quantity.CARBON_DIOXIDE_OF_ROOM));
        assertThat(least(open, Quantity.PH)).isGreaterThan(least(shut, Quantity.PH) + 0.05);
    }

    @Test
    void phAndOxygenAreHighestLateInTheLightAndLowestInTheDark() {
        Course day = forecast.course(3, 3 * 48 + 1, ALL);
        double[] ph = Arrays.copyOfRange(day.of(Quantity.PH), 96, 144);
        double[] oxygen = Arrays.copyOfRange(day.of(Quantity.OXYGEN), 96, 144);
        // Lit from 11:00 to 20:00: half hours 22 to 40.
        assertThat(indexOfMost(ph)).isBetween(30, 41);
        // Limewater by night and people in the evening decide when it is lowest; in the dark it is.
        assertThat(indexOfLeast(ph))
                .satisfiesAnyOf(
                        half -> assertThat(half).isLessThan(24),
                        half -> assertThat(half).isGreaterThan(40));
        assertThat(indexOfMost(oxygen)).isBetween(24, 40);
        // Limewater by night, people and meals in the evening decide when in the dark each is lowest.
        assertThat(indexOfLeast(ph)).matches(ForecastTest::isDark, "in the dark");
        assertThat(indexOfLeast(oxygen)).matches(ForecastTest::isDark, "in the dark");
        // From common practice: a reef tank swings by 0.15 to 0.4 in a day, less with algae lit by night.
        assertThat(Arrays.stream(ph).max().orElseThrow()
                        - Arrays.stream(ph).min().orElseThrow())
                .isBetween(0.05, 0.45);
    }

    @Test
    void withoutPowerOxygenFallsAndAWorkingPumpBringsItBack() {
        Change cut = new Change(lever("power"), 0, DAY, 8 * 3600);
        Course course = forecast.course(2, 2 * 96 + 1, ALL, List.of(cut));
        double before = course.of(Quantity.OXYGEN)[96];
        double atTheEnd = course.of(Quantity.OXYGEN)[96 + 32];
        double after = course.last(Quantity.OXYGEN);
        assertThat(atTheEnd).isLessThan(before - 1);
        assertThat(after).isCloseTo(before, within(0.3));
    }

    @Test
    void withoutDosesAlkalinityFallsByWhatTheCoralsUse() {
        Course asRun = forecast.course(7, 2, ALL);
        Course without = forecast.course(7, 2, ALL, List.of(Change.to(lever("bicarbonate dose"), 0)));
        assertThat(without.last(Quantity.ALKALINITY)).isLessThan(asRun.last(Quantity.ALKALINITY) - 1);
    }

    @Test
    void theAccountOfNitrogenInTheWaterAddsUpToItsChange() {
        Course course = forecast.course(14, 15, ALL);
        double told = course.account().of(Balance.NITROGEN, forecast.twin().waters()).stream()
                .mapToDouble(Account.Line::amount)
                .sum();
        double streams = course.account().streams(Balance.NITROGEN).stream()
                .mapToDouble(stream -> (forecast.twin().waters().contains(stream.to()) ? 1 : 0) * stream.amount()
                        - (forecast.twin().waters().contains(stream.from()) ? 1 : 0) * stream.amount())
                .sum();
        assertThat(streams).isCloseTo(told, within(1e-9));
    }

    @Test
    void aSystemNobodyTopsUpEndsWhereTheModelDoesAndSaysSo() {
        Forecast nano = Forecast.of(TestPlans.example("window-nano"));
        Course course = nano.course(
                400, 401, ALL, List.of(Change.to(nano.twin().levers().get("reservoir refill"), 0)));
        assertThat(course.time().length).isEqualTo(course.of(Quantity.SALINITY).length);
        assertThat(course.last(Quantity.SALINITY)).isGreaterThan(45);
    }

    @Test
    void anOutlookHoldsTheUsualCourseWithinItsBand() {
        Outlook outlook = Outlook.of(
                forecast.twin(), 14, 15, EnumSet.of(Quantity.NITRATE), List.of(), 60, Ensemble.Progress.UNWATCHED);
        Band band = outlook.of(Quantity.NITRATE);
        double usual = forecast.course(14, 15, ALL).last(Quantity.NITRATE);
        assertThat(band.low()[14]).isLessThan(usual);
        assertThat(band.high()[14]).isGreaterThan(usual);
    }

    @Test
    void aCancelledOutlookStops() {
        AtomicInteger seen = new AtomicInteger();
        Ensemble.Progress impatient = new Ensemble.Progress() {
            @Override
            public void done(int draws, int ofAll) {
                seen.incrementAndGet();
            }

            @Override
            public boolean isCancelled() {
                return seen.get() >= 3;
            }
        };
        assertThatThrownBy(() -> Outlook.of(forecast.twin(), 1, 2, EnumSet.of(Quantity.PH), List.of(), 400, impatient))
                .isInstanceOf(CancellationException.class);
        assertThat(seen.get()).isLessThan(50);
    }

    // ── a later moment, another plan ──

    /** A second past midnight, when nothing else happens. */
    private static final double WEEK = 7 * DAY + 1;

    @Test
    void aCourseThatBeginsLaterGoesOnWhereTheFirstWas() {
        Course whole = forecast.course(14, 15, ALL);
        Forecast later = forecast.at(WEEK, List.of());
        Course rest = later.course(14, 8, ALL);
        assertThat(later.begins()).isEqualTo(WEEK);
        assertThat(rest.time()[0]).isEqualTo(WEEK);
        assertThat(rest.time()[7]).isEqualTo(14 * DAY);
        for (Quantity quantity : ALL) {
            double there = whole.of(quantity)[7];
            assertThat(rest.of(quantity)[0])
                    .as(quantity.words())
                    .isCloseTo(there, within(0.003 * Math.abs(there) + 1e-9));
            assertThat(rest.last(quantity))
                    .as(quantity.words())
                    .isCloseTo(whole.last(quantity), within(0.01 * Math.abs(whole.last(quantity)) + 1e-3));
        }
        // The change of day 14 is not due yet, that of day 7 has been.
        assertThat(rest.events().stream().filter(event -> event.event().equals("weekly change")))
                .hasSize(1);
    }

    @Test
    void changesOnTheWayLeaveTheirMarkAndTheLeversAreBackAfterwards() {
        Forecast starved = forecast.at(WEEK, List.of(Change.to(lever("feed"), 0)));
        Course fedAgain = starved.course(9, 3, ALL);
        Course always = forecast.course(9, 10, ALL);
        assertThat(fedAgain.of(Quantity.NITRATE)[0]).isLessThan(always.of(Quantity.NITRATE)[7] - 0.1);
        assertThat(fedAgain.account().streams(Balance.NITROGEN))
                .anySatisfy(stream -> assertThat(stream.cause()).isEqualTo("pellets"));
    }

    @Test
    void aSystemThatGoesOnByItsOwnPlanGoesOnAsItWas() {
        Forecast later = forecast.at(WEEK, List.of());
        SystemTwin again = SystemTwin.of(TestPlans.example("harbour-room"));
        Course one = later.course(10, 4, ALL);
        Course other = later.goingOnBy(again).course(10, 4, ALL);
        for (Quantity quantity : ALL) {
            assertThat(other.of(quantity)).isEqualTo(one.of(quantity));
        }
    }

    @Test
    void aSystemCannotGoOnByOneWithOtherWaters() {
        SystemTwin nano = SystemTwin.of(TestPlans.example("window-nano"));
        assertThatThrownBy(() -> forecast.goingOnBy(nano)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void aCourseCannotEndBeforeItBegins() {
        Forecast later = forecast.at(WEEK, List.of());
        assertThatThrownBy(() -> later.course(7, 2, ALL)).hasMessageContaining("more than 7.0");
    }

    /**
     * Ammonia of 1 mg/L where 1 + 0.1 ln 10 = 1.23 mg/L are oxidised a day with plenty, stepped by hand: dS/dt = -1.015 C m,
     * m = S/(0.1 + S) · 6.4/(0.5 + 6.4), dC/dt = (0.5 m - 0.03) C (1 - C/4.6) leave 0.031 mg/L after a day.
     */
    @Test
    void nitrifiersRaisedForAMilligramClearItInADay() {
        String text =
                ChangedText.of(Examples.text("window-nano"), "nitrate: 12 mg/L", "nitrate: 12 mg/L\n  ammonia: 1 mg/L");
        Variant still = Variant.of(TestPlans.read(text));
        Inhabitants nobody = new Inhabitants(List.of(), List.of(), null, List.of(), null, null, null);
        Forecast bare = Forecast.of(still.living(nobody, List.of()).plan());
        assertThat(leftAfterADay(bare.withNitrifiersThatClear(1))).isCloseTo(0.031, within(0.005));
        // Fewer than there are already change nothing.
        assertThat(leftAfterADay(bare.withNitrifiersThatClear(1e-9))).isEqualTo(leftAfterADay(bare));
    }

    /** Those that feel low ammonia late, half-saturation 0.8 mg/L, are then more, 1 + 0.8 ln 10 = 2.84; by hand 0.098 is left. */
    @Test
    void howeverLateTheyFeelAmmoniaTheyClearWhatTheyWereSeenToClear() {
        String text =
                ChangedText.of(Examples.text("window-nano"), "nitrate: 12 mg/L", "nitrate: 12 mg/L\n  ammonia: 1 mg/L");
        Variant still = Variant.of(TestPlans.read(text));
        Inhabitants nobody = new Inhabitants(List.of(), List.of(), null, List.of(), null, null, null);
        SystemTwin twin = SystemTwin.of(still.living(nobody, List.of()).plan());
        double[] parameters = twin.network().usualParameters();
        twin.network().parameters().stream()
                .filter(parameter -> parameter.name().equals("ammonia oxidisers, affinity, factor"))
                .forEach(parameter -> parameters[parameter.index()] = 0.1 / 0.8);
        Forecast late = new Forecast(twin, parameters);
        assertThat(leftAfterADay(late.withNitrifiersThatClear(1))).isCloseTo(0.098, within(0.01));
        assertThat(leftAfterADay(late.withNitrifiersThatClear(0.1))).isGreaterThan(0.8);
    }

    /** Ammonia of a day without a change of water. */
    private static double leftAfterADay(Forecast begun) {
        Change unchanged = Change.to(begun.twin().levers().get("water changes"), 0);
        return begun.course(1, 2, ALL, List.of(unchanged)).last(Quantity.AMMONIA);
    }

    @Test
    void nitrifiersOfAnotherComeWithWhatTheyLeaveUnlessThePlanSaysIt() {
        SystemTwin twin = SystemTwin.of(TestPlans.example("window-nano"));
        Forecast usual = new Forecast(twin, twin.network().usualParameters());
        Forecast few = usual.at(20 * DAY + 1, List.of(Change.to(twin.levers().get("feed"), 4)));
        Course brought = usual.withNitrifiersOf(few).course(1, 2, ALL);
        // The nano's plan states no ammonia.
        assertThat(brought.of(Quantity.AMMONIA)[0])
                .isCloseTo(few.course(21, 2, ALL).of(Quantity.AMMONIA)[0], within(1e-6));
        assertThat(brought.of(Quantity.NITRATE)[0]).isCloseTo(12, within(1e-6));
        // The harbour's does.
        Forecast hungry = forecast.at(WEEK, List.of(Change.to(lever("feed"), 4)));
        assertThat(forecast.withNitrifiersOf(hungry).course(1, 2, ALL).of(Quantity.AMMONIA)[0])
                .isCloseTo(0.01, within(1e-6));
    }

    private static boolean isDark(int halfHour) {
        return halfHour < 24 || halfHour > 39;
    }

    private Lever lever(String name) {
        return forecast.twin().levers().get(name);
    }

    private static double least(Course course, Quantity quantity) {
        return Arrays.stream(course.of(quantity)).skip(24).min().orElseThrow();
    }

    private static int indexOfMost(double[] values) {
        int most = 0;
        for (int i = 0; i < values.length; i++) {
            most = values[i] > values[most] ? i : most;
        }
        return most;
    }

    private static int indexOfLeast(double[] values) {
        int least = 0;
        for (int i = 0; i < values.length; i++) {
            least = values[i] < values[least] ? i : least;
        }
        return least;
    }
}
