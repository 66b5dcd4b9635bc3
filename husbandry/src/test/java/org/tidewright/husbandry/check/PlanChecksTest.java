package org.tidewright.husbandry.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.tidewright.husbandry.TestPlans;
import org.tidewright.husbandry.advice.Check;
import org.tidewright.husbandry.advice.Holding;
import org.tidewright.husbandry.advice.Report;
import org.tidewright.husbandry.advice.Source;
import org.tidewright.plan.Examples;
import org.tidewright.plan.model.UnitSystem;

class PlanChecksTest {
    static final List<String> NAMES = Examples.NAMES;

    @ParameterizedTest
    @FieldSource("NAMES")
    void everyCheckIsASentenceWithKnownSources(String example) {
        Report report = PlanChecks.of(TestPlans.example(example));
        List<String> known = report.sources().stream().map(Source::key).toList();
        for (UnitSystem units : UnitSystem.values()) {
            for (Check check : report.checks()) {
                assertThat(check.sentence().text(units))
                        .as(check.id())
                        .endsWith(".")
                        .doesNotContain("NaN", "null", "Infinity", "  ");
                assertThat(check.shown().text(units))
                        .as(check.id())
                        .isNotBlank()
                        .doesNotContain("NaN", "null");
                assertThat(known).as(check.id()).containsAll(check.sources());
            }
        }
    }

    @ParameterizedTest
    @FieldSource("NAMES")
    void noTwoChecksShareAName(String example) {
        List<String> ids = Checked.ids(TestPlans.example(example));
        assertThat(ids).hasSameSizeAs(new HashSet<>(ids));
    }

    @Test
    void theLeadIsTheFirstFailingCheckAndCountsTheOthers() {
        Report report = PlanChecks.of(TestPlans.workedExample());
        List<Check> failing = report.checks().stream()
                .filter(check -> check.holding() == Holding.FAILS)
                .toList();
        assertThat(failing).hasSize(3);
        assertThat(report.holds()).isFalse();
        assertThat(report.lead().text(UnitSystem.METRIC))
                .isEqualTo(failing.get(0).sentence().text(UnitSystem.METRIC) + " 2 other checks do not hold either.");
    }

    @Test
    void whenNothingFailsNothingPresses() {
        Report sound = PlanChecks.of(TestPlans.workedTank());
        assertThat(sound.holds()).isTrue();
        assertThat(sound.lead().text(UnitSystem.METRIC)).startsWith("Nothing presses. Nothing falls back");
    }

    @Test
    void whoseWordComesFirstIsAlwaysSaid() {
        List<String> cautions = PlanChecks.of(TestPlans.workedTank()).cautions();
        assertThat(cautions).anyMatch(caution -> caution.contains("licensed electrician"));
        assertThat(cautions).anyMatch(caution -> caution.contains("structural engineer"));
        assertThat(cautions).noneMatch(caution -> caution.contains("generator"));
    }

    @Test
    void aGeneratorInThePlanBringsItsCaution() {
        String backup =
                "circulation_pumps: [{name: stream, stands_in: display, power: 12 W}]\nbackup: {generator: {power: 1 kW, fuel: 4 L, started_after: 1 h, feeds: [stream]}}\nstand: {";
        assertThat(PlanChecks.of(TestPlans.workedTank("stand: {", backup)).cautions())
                .anyMatch(caution -> caution.contains("outdoors only") && caution.contains("carbon monoxide"));
    }
}
