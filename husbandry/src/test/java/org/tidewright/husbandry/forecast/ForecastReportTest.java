package org.tidewright.husbandry.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.TestPlans;
import org.tidewright.husbandry.json.ForecastJson;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.twin.forecast.Change;
import org.tidewright.twin.forecast.Forecast;
import org.tidewright.twin.forecast.Quantity;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What a forecast says, on the first example. */
class ForecastReportTest {
    private final Plan plan = TestPlans.example("harbour-room");
    private final Forecast forecast = Forecast.of(plan);

    @Test
    void withoutChangesItSaysWhatToExpect() {
        ForecastReport report = ForecastReport.of(plan, forecast, 10, 241, List.of());
        assertThat(report.lead(UnitSystem.METRIC)).startsWith("Go on as you do").contains("nitrate near");
    }

    @Test
    void thePlansOwnLimitsComeBeforeTheCustomary() {
        Plan strict = TestPlans.workedTank("stand: {", "limits: {act_warmer: 27 °C, act_oxygen: 70 %}\nstand: {");
        assertThat(band(strict, Quantity.TEMPERATURE).high()).isEqualTo(27);
        assertThat(band(strict, Quantity.TEMPERATURE).low()).isEqualTo(23);
        assertThat(band(strict, Quantity.OXYGEN_SATURATION).low()).isCloseTo(70, within(1e-9));
        assertThat(band(TestPlans.workedTank(), Quantity.TEMPERATURE).high()).isEqualTo(28);
    }

    private static AlarmBand band(Plan plan, Quantity quantity) {
        return AlarmBand.of(plan).stream()
                .filter(band -> band.quantity() == quantity)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aChangeNobodyCouldMeasureIsCalledThat() {
        ForecastReport report = ForecastReport.of(plan, forecast, 5, 121, List.of(change("feed +1 %")));
        assertThat(report.lead(UnitSystem.METRIC)).startsWith("Do not expect to see it");
    }

    @Test
    void aDoseLeftOutIsToldByTheAlkalinityItCosts() {
        ForecastReport report = ForecastReport.of(plan, forecast, 3, 73, List.of(change("bicarbonate dose -50 %")));
        assertThat(report.lead(UnitSystem.METRIC)).contains("alkalinity").contains("dKH");
    }

    @Test
    void aBandThatIsLeftOnlyBecauseOfTheChangeComesFirst() {
        ForecastReport report =
                ForecastReport.of(plan, forecast, 4, 97, List.of(change("power off from day 1 for 20 h")));
        assertThat(report.lead(UnitSystem.METRIC)).startsWith("Do not leave it so: on day 1 oxygen");
        assertThat(report.warnings()).anyMatch(warning -> !warning.asRunToo());
    }

    @Test
    void temperatureIsToldInFahrenheitToWhoWantsIt() {
        assertThat(ForecastReport.told(Quantity.TEMPERATURE, 25, UnitSystem.US)).isEqualTo("77.0\u00a0°F");
        assertThat(ForecastReport.told(Quantity.TEMPERATURE, 25, UnitSystem.METRIC))
                .isEqualTo("25.0\u00a0°C");
    }

    @Test
    void whatMovedNitrateAddsUpToItsChange() {
        ForecastReport report = ForecastReport.of(plan, forecast, 14, 337, List.of(change("feed +50 %")));
        List<Explained.Line> lines = Explained.of(report, forecast.twin(), Quantity.NITRATE);
        Explained.Line together = lines.get(lines.size() - 1);
        double sum = lines.stream()
                .limit(lines.size() - 1)
                .mapToDouble(Explained.Line::asRun)
                .sum();
        assertThat(together.cause()).isEqualTo("together");
        assertThat(sum).isCloseTo(together.asRun(), within(1e-9));
        double[] course = report.asRun().of(Quantity.NITRATE);
        assertThat(together.asRun()).isCloseTo(course[course.length - 1] - course[0], within(0.3));
        assertThat(Explained.of(report, forecast.twin(), Quantity.PH)).isEmpty();
    }

    @Test
    void jsonNamesEveryQuantityWithItsUnit() {
        ForecastReport report = ForecastReport.of(plan, forecast, 2, 5, List.of(change("feed +50 % from day 1")));
        JsonNode root = JsonMapper.builder().build().readTree(ForecastJson.text(report, UnitSystem.METRIC));
        assertThat(root.path("changes").get(0).path("from_d").asDouble()).isEqualTo(1);
        assertThat(root.path("as_run").path("time_d").size()).isEqualTo(5);
        for (Quantity quantity : Quantity.values()) {
            assertThat(root.path("changed").path(quantity.key()).size())
                    .as(quantity.key())
                    .isEqualTo(5);
        }
        assertThat(root.path("lead").asString()).isNotEmpty();
    }

    private Change change(String text) {
        try {
            return ChangeText.read(text, forecast.twin().levers());
        } catch (ChangeText.Unreadable unreadable) {
            throw new AssertionError(unreadable);
        }
    }
}
