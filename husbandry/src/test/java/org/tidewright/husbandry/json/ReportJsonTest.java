package org.tidewright.husbandry.json;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.tidewright.husbandry.TestPlans;
import org.tidewright.husbandry.advice.Check;
import org.tidewright.husbandry.advice.Report;
import org.tidewright.husbandry.check.PlanChecks;
import org.tidewright.plan.Examples;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.UnitSystem;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class ReportJsonTest {
    static final List<String> NAMES = Examples.NAMES;

    private static final JsonMapper JSON = JsonMapper.builder().build();

    @ParameterizedTest
    @FieldSource("NAMES")
    void everyNumberIsNamedWithItsUnit(String example) {
        assertThat(UnitNames.check(json(TestPlans.example(example), UnitSystem.METRIC)))
                .isGreaterThan(3);
    }

    @Test
    void itSaysWhatTheReportSays() {
        Plan plan = TestPlans.workedExample();
        Report report = PlanChecks.of(plan);
        JsonNode json = json(plan, UnitSystem.METRIC);
        assertThat(json.get("holds").asBoolean()).isFalse();
        assertThat(json.get("lead").asString()).isEqualTo(report.lead().text(UnitSystem.METRIC));
        assertThat(json.get("checks")).hasSameSizeAs(report.checks());
        for (int i = 0; i < report.checks().size(); i++) {
            Check check = report.checks().get(i);
            JsonNode entry = json.get("checks").get(i);
            assertThat(entry.get("id").asString()).isEqualTo(check.id());
            assertThat(entry.get("sentence").asString())
                    .isEqualTo(check.sentence().text(UnitSystem.METRIC));
        }
        JsonNode blocked = json.get("checks").get(1);
        assertThat(blocked.get("margin_l").asDouble())
                .isCloseTo(
                        1000 * requireNonNull(report.checks().get(1).margin()).value(), within(1e-9));
    }

    /** 490 L by hand: see the volumes of the worked example. */
    @Test
    void itsVolumesAddUpToItsWater() {
        JsonNode json = json(TestPlans.workedExample(), UnitSystem.METRIC);
        double sum = 0;
        for (JsonNode vessel : json.get("vessels")) {
            sum += vessel.get("place").asString().equals("reservoir")
                    ? 0
                    : vessel.get("volume_l").asDouble();
        }
        assertThat(json.get("water_l").asDouble()).isCloseTo(sum, within(1e-9)).isCloseTo(489.8, within(0.1));
    }

    @Test
    void theReadersUnitsChangeTheWordsButNotTheNumbers() {
        Plan plan = TestPlans.workedExample();
        JsonNode metric = json(plan, UnitSystem.METRIC);
        JsonNode us = json(plan, UnitSystem.US);
        assertThat(us.get("checks").get(0).get("margin_l"))
                .isEqualTo(metric.get("checks").get(0).get("margin_l"));
        assertThat(us.get("checks").get(0).get("sentence").asString()).contains("gal");
    }

    @Test
    void everySourceReferredToIsGiven() {
        JsonNode json = json(TestPlans.example("harbour-room"), UnitSystem.METRIC);
        List<String> known = json.get("sources")
                .valueStream()
                .map(source -> source.get("key").asString())
                .toList();
        for (JsonNode check : json.get("checks")) {
            assertThat(known)
                    .containsAll(check.get("sources")
                            .valueStream()
                            .map(JsonNode::asString)
                            .toList());
        }
    }

    private static JsonNode json(Plan plan, UnitSystem units) {
        return JSON.readTree(ReportJson.text(plan, PlanChecks.of(plan), units));
    }
}
