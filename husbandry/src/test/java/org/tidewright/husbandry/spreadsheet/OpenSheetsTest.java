package org.tidewright.husbandry.spreadsheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.tidewright.husbandry.spreadsheet.Sheets.SYSTEM;
import static org.tidewright.husbandry.spreadsheet.Sheets.taken;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.journal.ProbeLog.Probe;
import org.tidewright.husbandry.journal.ProbeLog.Value;
import org.tidewright.plan.fault.Fault;
import org.tidewright.plan.method.QuantityUnit;
import org.tidewright.plan.method.WaterQuantity;

/** Logs of others; the numbers are from count.py beside them, which README.md there tells of. */
class OpenSheetsTest {
    private static final ZoneId ZONE = ZoneId.of("America/Los_Angeles");

    @Test
    void theHandLogOfOneTankIsTakenWholeOnceTheTankIsChosen() throws Exception {
        Mapping mapping = checks().proposal(ZONE).mapping();
        assertThat(mapping.questions()).singleElement().asString().contains("Column 2");
        Preview preview = checks().preview(mapping.with(new RowChoice(2, "1", true)), SYSTEM);
        assertThat(preview.questions()).isEmpty();
        assertThat(preview.badCount()).isZero();
        assertThat(preview.rows()).isEqualTo(612);
        assertSummary(preview, "temp_surface_c", 53, 12.0, 13.0, 14.6);
        assertSummary(preview, "temp_bottom_c", 53, 11.9, 12.9, 14.4);
        assertSummary(preview, "salinity_surface", 53, 28.25, 30.03, 31.57);
        assertSummary(preview, "salinity_bottom", 53, 28.29, 30.03, 31.58);
        assertSummary(preview, "ph_nbs_surface", 54, 7.81, 7.945, 8.33);
        assertSummary(preview, "ph_nbs_bottom", 54, 7.82, 7.91, 8.33);
        assertSummary(preview, "do_surface_mg_l", 54, 5.93, 7.51, 11.68);
        assertSummary(preview, "do_bottom_mg_l", 54, 5.73, 7.135, 12.2);
        assertThat(preview.first())
                .isBetween(Instant.parse("2023-06-05T07:00:00Z"), Instant.parse("2023-06-06T07:00:00Z"));
        assertThat(preview.last())
                .isBetween(Instant.parse("2023-08-25T07:00:00Z"), Instant.parse("2023-08-26T07:00:00Z"));
        Taking.Taken taken = taken(checks().drafts(mapping.with(new RowChoice(2, "1", true)), SYSTEM, rows -> {}));
        assertThat(taken.drafts()).hasSize(428);
        assertThat(taken.values()).isEmpty();
    }

    @Test
    void aNoteAmongTheTimesOfDayStopsItUntilItIsLeftOut() throws Exception {
        Mapping all = checks().proposal(ZONE).mapping().confirmed();
        Preview preview = checks().preview(all, SYSTEM);
        assertThat(preview.bad()).extracting(Fault::line).containsExactly(40, 148, 149, 150);
        assertThat(preview.bad().get(0).sentence()).contains("found “very low flow to start”; expected a time of day");
        assertThat(checks().drafts(all, SYSTEM, rows -> {})).isInstanceOf(Taking.Refused.class);
        Preview third = checks().preview(all.with(new RowChoice(2, "3", true)).leavingBadCellsOut(), SYSTEM);
        assertSummary(third, "temp_surface_c", 52, 12.0, 13.1, 15.5);
        assertSummary(third, "ph_nbs_bottom", 53, 7.78, 7.92, 8.93);
        assertSummary(third, "do_bottom_mg_l", 53, 6.06, 7.51, 11.4);
    }

    private static Spreadsheet checks() throws Exception {
        return sheet("daily_tank_checks");
    }

    @Test
    void sensorsOfFiveMinutesBecomeValuesOfProbes() throws Exception {
        Spreadsheet sheet = sheet("tanks_5min_ph_co2_part");
        Mapping mapping = sheet.proposal(ZONE).mapping().with(new RowChoice(13, "bare", true));
        assertThat(mapping.columns().keySet()).containsExactly(3, 5, 7, 18);
        Preview preview = sheet.preview(mapping, SYSTEM);
        assertSummary(preview, "temp_c", 575, 12.376, 13.243, 14.23);
        assertSummary(preview, "sal_psu", 575, 30.47, 30.61, 30.73);
        assertSummary(preview, "do_mgl", 575, 5.38, 6.91, 8.38);
        assertSummary(preview, "ph_total", 575, 7.52, 7.6, 7.71);
        assertThat(preview.first()).isEqualTo("2023-08-08T00:05:00Z");
        assertThat(preview.last()).isEqualTo("2023-08-09T23:55:00Z");
        Taking.Taken taken = taken(sheet.drafts(mapping, SYSTEM, rows -> {}));
        assertThat(taken.drafts()).isEmpty();
        assertThat(taken.values())
                .hasSize(4)
                .allSatisfy((probe, values) -> assertThat(values).hasSize(575));
        Probe temperature = new Probe(WaterQuantity.TEMPERATURE, "probe", "tank");
        assertThat(taken.values().get(temperature))
                .startsWith(new Value(Instant.parse("2023-08-08T00:05:00Z"), 13.234));
    }

    @Test
    void hourlyNumbersUnderNoNameAreGuessedByTheirSizeAndMustBeConfirmed() throws Exception {
        Spreadsheet sheet = sheet("ambient_temperature_part");
        Mapping mapping = sheet.proposal(ZONE).mapping();
        assertThat(mapping.questions()).containsExactly("Is column 2 temperature in °F?");
        Preview preview = sheet.preview(mapping.confirmed(), SYSTEM);
        assertSummary(preview, "value", 1000, 61.36447611, 70.772807055, 76.56950166);
        assertThat(preview.series().get(0).repeated()).isZero();
        // The first stamp stands for Pacific daylight time.
        assertThat(preview.first()).isEqualTo("2013-07-04T07:00:00Z");
        assertThat(preview.last()).isEqualTo("2013-08-16T06:00:00Z");
        Map<Probe, List<Value>> values =
                taken(sheet.drafts(mapping.confirmed(), SYSTEM, rows -> {})).values();
        assertThat(values).hasSize(1);
        // 69.88083514 °F
        assertThat(values.values().iterator().next().get(0).value()).isCloseTo(21.0449084, within(1e-7));
    }

    @Test
    void aMachineThatFailsAndAClockThatWasSetBackAreTold() throws Exception {
        Spreadsheet sheet = sheet("machine_temperature_part");
        QuantityUnit fahrenheit = WaterQuantity.TEMPERATURE.unitOfKey("f").orElseThrow();
        Measured machine = new Measured(WaterQuantity.TEMPERATURE, fahrenheit, "probe", "machine", Kept.BY_PACE, true);
        Mapping mapping = sheet.proposal(ZONE).mapping().with(2, machine);
        Preview preview = sheet.preview(mapping, SYSTEM);
        assertThat(preview.bad())
                .extracting(Fault::line)
                .containsExactlyElementsOf(IntStream.rangeClosed(75, 91).boxed().toList());
        assertThat(preview.bad().get(0).sentence())
                .isEqualTo("value: found “27.21222794”; expected temperature that can be meant in °F. Is it in °C?");
        assertSummary(preview, "value", 584, 30.50446055, 86.81678582, 102.9848334);
        assertThat(preview.series().get(0).repeated()).isEqualTo(12);
        assertThat(preview.series().get(0).firstRepeated()).isEqualTo("2014-01-07T10:00:00Z");
    }

    private static void assertSummary(
            Preview preview, String label, int count, double least, double median, double most) {
        assertThat(preview.series())
                .filteredOn(one -> one.label().equals(label))
                .singleElement()
                .satisfies(one -> {
                    assertThat(one.count()).isEqualTo(count);
                    assertThat(one.least()).isCloseTo(least, within(1e-12));
                    assertThat(one.median()).isCloseTo(median, within(1e-12));
                    assertThat(one.most()).isCloseTo(most, within(1e-12));
                });
    }

    private static Spreadsheet sheet(String name) throws Exception {
        return Sheets.saved(Sheets.resource("open/" + name + ".csv"));
    }
}
