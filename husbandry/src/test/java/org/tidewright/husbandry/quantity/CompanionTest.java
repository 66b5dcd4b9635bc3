package org.tidewright.husbandry.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.TestPlans;
import org.tidewright.husbandry.estimate.Estimate;
import org.tidewright.husbandry.estimate.Estimates;
import org.tidewright.husbandry.estimate.Inputs;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.husbandry.journal.Line;
import org.tidewright.husbandry.journal.Span;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.plan.model.Plan;

class CompanionTest {
    private static final Plan PLAN = TestPlans.example("harbour-room");
    private static final Estimate ESTIMATE = estimate();
    private static final double NOW = 1;

    /** By a single reading, which teaches nothing of the doses. */
    private static Estimate estimate() {
        OffsetDateTime at = OffsetDateTime.parse("2026-01-05T08:00:00+01:00");
        Event reading = new Event.Reading(
                WaterQuantity.ALKALINITY, 8, WaterQuantity.ALKALINITY.units().get(0), "endpoint_titration");
        Line line = new Line(UUID.randomUUID(), 1, at, reading, "", false, at.toInstant());
        return Estimates.of(Inputs.of(PLAN, List.of(line), Span.EVER))
                .of(WaterQuantity.ALKALINITY)
                .orElseThrow();
    }

    /** What 20 mL a day of the plan's bicarbonate bring. */
    private static double more() {
        return 20e-6
                * Dosed.movable(PLAN, ESTIMATE, WaterQuantity.ALKALINITY, NOW)
                        .orElseThrow()
                        .effect();
    }

    /**
     * By hand: 80 g/L of NaHCO3 (84.007 g/mol) bring 0.952 mol/L of alkalinity, 70 g/L of CaCl2 2H2O (147.01 g/mol) 0.476 mol/L
     * of calcium. 20 mL of the one take 20 · 0.952/2 · (1 - f)/0.476 = 20 (1 - f) mL of the other.
     */
    @Test
    void calciumGoesWithAlkalinityVolumeForVolumeWhereTheTwoPartsMatch() {
        Companion up = Companion.of(PLAN, ESTIMATE, "bicarbonate", more(), NOW).orElseThrow();
        assertThat(up.dosed().solution().name()).isEqualTo("calcium");
        double expected = 20 * (1 - ESTIMATE.inputs().magnesiumShare());
        assertThat((up.amount() - 100e-6) * 1e6).isCloseTo(expected, within(0.7));
        Companion down =
                Companion.of(PLAN, ESTIMATE, "bicarbonate", -more(), NOW).orElseThrow();
        assertThat((100e-6 - down.amount()) * 1e6).isCloseTo(expected, within(0.7));
    }

    @Test
    void aMoveTooSmallToBeSetMovesNothingBesideIt() {
        assertThat(Companion.of(PLAN, ESTIMATE, "bicarbonate", more() / 100, NOW))
                .isEmpty();
    }

    @Test
    void aSolutionThatBringsBothIsMovedOnce() {
        assertThat(Companion.of(PLAN, ESTIMATE, "calcium", more(), NOW)).isEmpty();
    }
}
