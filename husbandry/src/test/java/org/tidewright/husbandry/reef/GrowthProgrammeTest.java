package org.tidewright.husbandry.reef;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.TestPlans;
import org.tidewright.husbandry.forecast.AssumedGrowth;
import org.tidewright.husbandry.forecast.ForecastReport;
import org.tidewright.plan.model.Plan;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.forecast.Change;
import org.tidewright.twin.forecast.Course;
import org.tidewright.twin.forecast.Forecast;
import org.tidewright.twin.forecast.Quantity;
import org.tidewright.twin.run.Account;
import org.tidewright.twin.system.Lever;

class GrowthProgrammeTest {
    private static final double DAY = 86_400;
    private static final double WEEKS_12 = 84;

    private final Plan plan = TestPlans.example("harbour-room");
    private final Forecast forecast = Forecast.of(plan);
    private final Growth growth =
            Growth.asStated(plan, CoralLore.BY_FORM, forecast.twin().volume());

    @Test
    void theLeverRisesWeekByWeekToTheMiddleOfEachWeek() {
        List<Change> changes = GrowthProgramme.of(forecast.twin(), growth, WEEKS_12);
        assertThat(changes).hasSize(11);
        assertThat(changes.get(0).from()).isEqualTo(7 * DAY);
        assertThat(changes.get(0).value()).isEqualTo(growth.ofCorals(10.5 / 365.25));
        for (int i = 1; i < changes.size(); i++) {
            assertThat(changes.get(i).value()).isGreaterThan(changes.get(i - 1).value());
        }
        assertThat(GrowthProgramme.of(forecast.twin(), growth, 7)).isEmpty();
    }

    /** With doses as they are the water has ever less alkalinity, until the slower growth in it takes what is dosed. */
    @Test
    void inTwelveWeeksTheWaterFallsBehindTheGrowingCorals() {
        List<Change> changes = GrowthProgramme.of(forecast.twin(), growth, WEEKS_12);
        Course still = forecast.course(WEEKS_12, 13, Set.of(Quantity.ALKALINITY), List.of(), 7);
        Course grown = forecast.course(WEEKS_12, 13, Set.of(Quantity.ALKALINITY), changes, 7);
        assertThat(grown.meanOfLastDay(Quantity.ALKALINITY)).isLessThan(still.meanOfLastDay(Quantity.ALKALINITY) - 0.3);
        assertThat(taken(grown)).isGreaterThan(1.01 * taken(still));
    }

    /**
     * With doses raised as {@link DoseAhead} says the water stays where it would be if nothing grew, and skeletons take in the
     * last week what their areas say.
     */
    @Test
    void dosesRaisedAsToldHoldTheWaterWhileTheCoralsGrow() {
        List<Change> changes = new ArrayList<>(GrowthProgramme.of(forecast.twin(), growth, WEEKS_12));
        for (double week = 7; week < WEEKS_12; week += 7) {
            double from = week * DAY;
            for (DoseAhead dose : DoseAhead.of(plan, growth, (week + 3.5) / 365.25)) {
                Lever lever = forecast.twin().levers().get(dose.dosing().name() + " dose");
                changes.add(new Change(lever, dose.then().value(), from, Double.POSITIVE_INFINITY));
            }
        }
        Set<Quantity> told = Set.of(Quantity.ALKALINITY, Quantity.CALCIUM);
        Course still = forecast.course(WEEKS_12, 13, told, List.of(), 7);
        Course held = forecast.course(WEEKS_12, 13, told, changes, 7);
        double corals = growth.ofCorals((WEEKS_12 - 3.5) / 365.25);
        assertThat(corals).isGreaterThan(1.1);
        assertThat(taken(held) / taken(still)).isCloseTo(corals, within(0.015));
        assertThat(held.meanOfLastDay(Quantity.ALKALINITY))
                .isCloseTo(still.meanOfLastDay(Quantity.ALKALINITY), within(0.1));
        assertThat(held.meanOfLastDay(Quantity.CALCIUM)).isCloseTo(still.meanOfLastDay(Quantity.CALCIUM), within(3.0));
    }

    private double taken(Course course) {
        return -course.account().of(Stock.ALKALINITY, forecast.twin().waters()).stream()
                .filter(line -> line.cause().equals("corals' skeletons"))
                .mapToDouble(Account.Line::amount)
                .sum();
    }

    @Test
    void aForecastLetsTheCoralsGrowAndSaysSo() {
        ForecastReport report = ForecastReport.of(plan, forecast, 28, 29, List.of());
        assertThat(report.growth()).hasSize(3);
        assertThat(AssumedGrowth.of(report).orElseThrow())
                .startsWith("Your corals grow on the way: at the end they take 10");
    }

    @Test
    void whereTheKeeperMovesTheCoralsNothingElseDoes() {
        Change half = Change.to(forecast.twin().levers().get("corals"), 0.5);
        ForecastReport report = ForecastReport.of(plan, forecast, 15, 16, List.of(half));
        assertThat(report.growth()).isEmpty();
        assertThat(AssumedGrowth.of(report)).isEmpty();
    }

    @Test
    void aTankWithoutStonyCoralsHasNothingThatGrows() {
        Plan soft = ReefPlans.plan(
                "", "", "inhabitants:\n  corals:\n    - {name: leathers, plan_area: 300 cm², form: soft}\n");
        Forecast other = Forecast.of(soft);
        Growth none = Growth.asStated(soft, CoralLore.BY_FORM, other.twin().volume());
        assertThat(GrowthProgramme.of(other.twin(), none, 365)).isEmpty();
        assertThat(none.demand(1).alkalinity()).isCloseTo(0, within(0.0));
    }
}
