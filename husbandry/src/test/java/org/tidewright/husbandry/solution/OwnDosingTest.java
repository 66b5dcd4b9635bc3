package org.tidewright.husbandry.solution;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.quantity.WaterStudy;
import org.tidewright.plan.Examples;
import org.tidewright.plan.model.Dosing;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.Salt;
import org.tidewright.plan.source.Basis;
import org.tidewright.plan.text.PlanReading;
import org.tidewright.plan.text.PlanText;

/** The first example: 100 mL a day of 80 g/L of bicarbonate and of 70 g/L of calcium chloride, 2 L of limewater, vinegar. */
class OwnDosingTest {
    private static final Plan HARBOUR = plan("harbour-room");

    private static Plan plan(String name) {
        return ((PlanReading.Sound) PlanText.read(Examples.text(name))).plan();
    }

    private static WaterStudy emptyLog(Plan plan) {
        return WaterStudy.of(plan, List.of(), Instant.parse("2026-03-07T12:00:00Z"), ZoneOffset.UTC);
    }

    /** 8 g of 84.007 g/mol and 7 g of 147.014; 2 L of 0.9 of 20.97 mmol/L at 21 °C; no vinegar, which is eaten. */
    @Test
    void whatThePlanDosesADayIsCountedInMoles() {
        assertThat(OwnDosing.mineralsPerDay(HARBOUR))
                .hasSize(3)
                .hasEntrySatisfying(Salt.SODIUM_BICARBONATE, n -> assertThat(n).isCloseTo(0.09523, within(1e-5)))
                .hasEntrySatisfying(Salt.CALCIUM_CHLORIDE, n -> assertThat(n).isCloseTo(0.04761, within(1e-5)))
                .hasEntrySatisfying(Salt.CALCIUM_HYDROXIDE, n -> assertThat(n).isCloseTo(0.0377, within(2e-4)));
    }

    @Test
    void theChangesOfThePlanAreItsOwn() {
        OwnDosing.Changes changes = OwnDosing.changes(HARBOUR).orElseThrow();
        assertThat(changes.volume()).isCloseTo(0.045, within(1e-12));
        assertThat(changes.period()).isEqualTo(7 * 86_400.0);
    }

    /** 0.9 0.005 + 0.1 0.15 where coralline algae grow. */
    @Test
    void magnesiumsShareGoesWithWhoLivesThere() {
        assertThat(OwnDosing.magnesiumShare(HARBOUR)).isCloseTo(0.0195, within(1e-12));
    }

    /** 1.0 ± 0.2 dKH a day in the plan: 0.35665 ± 0.0713 mol/m³. */
    @Test
    void withoutALogThePlanTellsTheUse() {
        DailyUse use = OwnDosing.uses(HARBOUR, emptyLog(HARBOUR)).get(0);
        assertThat(use.basis()).isEqualTo(Basis.YOUR_PLAN);
        assertThat(use.value()).isCloseTo(0.35665, within(1e-5));
        assertThat(use.standardError()).isCloseTo(0.07133, within(1e-5));
        Plan nano = plan("window-nano");
        assertThat(OwnDosing.uses(nano, emptyLog(nano))).isEmpty();
    }

    @Test
    void aDosingIsFoundByItsSalt() {
        assertThat(OwnDosing.of(HARBOUR, Salt.SODIUM_BICARBONATE).map(Dosing::name))
                .contains("bicarbonate");
        assertThat(OwnDosing.of(HARBOUR, Salt.SODIUM_CARBONATE)).isEmpty();
    }
}
