package org.tidewright.husbandry.json;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.tidewright.husbandry.TestPlans;
import org.tidewright.husbandry.rehearsal.Crossing;
import org.tidewright.husbandry.rehearsal.OutageRehearsal;
import org.tidewright.husbandry.rehearsal.OutageReport;
import org.tidewright.plan.Examples;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.twin.rehearsal.OutageOrder;
import org.tidewright.twin.rehearsal.Outdoors;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class OutageJsonTest {
    static final List<String> NAMES = Examples.NAMES;

    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final OutageOrder ORDER = new OutageOrder(24, Outdoors.constant(35), true, true);

    @ParameterizedTest
    @FieldSource("NAMES")
    void everyNumberIsNamedWithItsUnit(String example) {
        assertThat(UnitNames.check(json(report(example)))).isGreaterThan(20);
    }

    @Test
    void itSaysWhatTheReportSays() {
        OutageReport report = report("harbour-room");
        JsonNode json = json(report);
        assertThat(json.get("lead").asString()).isEqualTo(report.lead().text(UnitSystem.METRIC));
        assertThat(json.get("order").get("hours_h").asDouble()).isEqualTo(24);
        assertThat(json.get("order").get("outdoor_temperature_c").get(0).asDouble())
                .isEqualTo(35);
        assertThat(json.get("water").get("floor_dry").asBoolean())
                .isEqualTo(report.water().floorDry());
        assertThat(json.get("water").get("room_left_l").asDouble())
                .isCloseTo(1000 * requireNonNull(report.water().room()).value(), within(1e-9));
        assertThat(json.get("crossings")).hasSameSizeAs(report.crossings());
        Crossing first = report.crossings().get(0);
        assertThat(json.get("crossings").get(0).get("after_h").asDouble())
                .isCloseTo(first.after().value() / 3600, within(1e-9));
    }

    @Test
    void whatIsNeverReachedIsNull() {
        JsonNode json = json(report("window-nano"));
        boolean seen = false;
        for (JsonNode crossing : json.get("crossings")) {
            if (crossing.get("share_of_draws").asDouble() == 0) {
                assertThat(crossing.get("after_h").isNull()).isTrue();
                seen = true;
            }
        }
        assertThat(seen).isTrue();
    }

    @Test
    void everyTraceHasAsManyValuesAsTimes() {
        JsonNode json = json(report("fifty-five-gallon"));
        for (JsonNode trace : json.get("traces")) {
            String unit = trace.get("id").asString().endsWith("oxygen") ? "_mg_per_l" : "_c";
            for (String line : List.of("low", "middle", "high")) {
                assertThat(trace.get(line + unit)).hasSameSizeAs(trace.get("time_h"));
            }
        }
        int samples = json.get("water").get("time_s").size();
        for (JsonNode vessel : json.get("water").get("vessels")) {
            assertThat(vessel.get("volume_l")).hasSize(samples);
        }
    }

    @Test
    void theSameOrderGivesTheSameText() {
        assertThat(OutageJson.text(report("window-nano"), UnitSystem.US))
                .isEqualTo(OutageJson.text(report("window-nano"), UnitSystem.US));
    }

    private static OutageReport report(String example) {
        return OutageRehearsal.of(TestPlans.example(example), ORDER);
    }

    private static JsonNode json(OutageReport report) {
        return JSON.readTree(OutageJson.text(report, UnitSystem.METRIC));
    }
}
