package org.tidewright.husbandry.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.TestPlans;
import org.tidewright.husbandry.estimate.Inputs;
import org.tidewright.husbandry.journal.Span;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.plan.model.Plan;

class CompanionTest {
    private static final Plan PLAN = TestPlans.example("harbour-room");
    private static final Inputs INPUTS = Inputs.of(PLAN, List.of(), Span.EVER);

    /** What 20 mL a day of the plan's bicarbonate bring. */
    private static double more() {
        return 20e-6
                * Dosed.movable(PLAN, INPUTS, WaterQuantity.ALKALINITY, 0)
                        .orElseThrow()
                        .effect();
    }

    /**
     * By hand: 80 g/L of NaHCO3 (84.007 g/mol) bring 0.952 mol/L of alkalinity, 70 g/L of CaCl2 2H2O (147.01 g/mol) 0.476 mol/L
     * of calcium. 20 mL of the one take 20 · 0.952/2 · (1 - f)/0.476 = 20 (1 - f) mL of the other.
     */
    @Test
    void calciumGoesWithAlkalinityVolumeForVolumeWhereTheTwoPartsMatch() {
        Companion up = Companion.of(PLAN, INPUTS, "bicarbonate", more(), 0).orElseThrow();
        assertThat(up.dosed().solution().name()).isEqualTo("calcium");
        double expected = 20 * (1 - INPUTS.magnesiumShare());
        assertThat((up.amount() - 100e-6) * 1e6).isCloseTo(expected, within(0.7));
        Companion down = Companion.of(PLAN, INPUTS, "bicarbonate", -more(), 0).orElseThrow();
        assertThat((100e-6 - down.amount()) * 1e6).isCloseTo(expected, within(0.7));
    }

    @Test
    void aMoveTooSmallToBeSetMovesNothingBesideIt() {
        assertThat(Companion.of(PLAN, INPUTS, "bicarbonate", more() / 100, 0)).isEmpty();
    }

    @Test
    void aSolutionThatBringsBothIsMovedOnce() {
        assertThat(Companion.of(PLAN, INPUTS, "calcium", more(), 0)).isEmpty();
    }
}
