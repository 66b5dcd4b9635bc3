package org.tidewright.husbandry.check;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.TestPlans;
import org.tidewright.husbandry.advice.Holding;
import org.tidewright.plan.Examples;

class WeightCheckTest {
    /**
     * By hand: 489.8 L of water and 25 L in the reservoir at 1.0232 kg/L, 526.8 kg; rock 40, sand 30, stand 80 kg. Glass at
     * 2.5 kg/L: the display's bottom 1.2 × 0.6 m of 15 mm and panes 3.6 × 0.6 m of 12 mm, 91.8 kg; the sump's bottom
     * 0.9 × 0.45 m and panes 2.7 × 0.45 m of 8 mm, and 0.45 × 0.55 m of baffles of 6 mm, 36.1 kg. Together 804.7 kg.
     */
    @Test
    void theSystemWeighsWhatWasAddedUpByHand() {
        Checked check = Checked.of(TestPlans.workedExample(), "filled_weight");
        assertThat(check.shown()).isIn("804 ± 24 kg", "805 ± 24 kg");
        // 804.7 × 9.80665 / 0.72 m² = 10.96 kPa; a quarter of it with 25 % on top is 251 kg.
        assertThat(check.sentence()).contains("11 kPa").contains("251 kg on each of 4 feet");
    }

    @Test
    void theProgramNeverSaysThatAFloorHolds() {
        for (String name : Examples.NAMES) {
            assertThat(Checked.of(TestPlans.example(name), "filled_weight").holding())
                    .isEqualTo(Holding.ASK);
        }
    }

    @Test
    void aSuspendedFloorAsksForAnEngineerAndALightTankOnASlabNone() {
        assertThat(Checked.of(TestPlans.workedExample(), "filled_weight").sentence())
                .startsWith("Ask a structural engineer before the water goes in");
        assertThat(Checked.of(
                                TestPlans.example("window-nano", "floor: suspended", "floor: slab_on_ground"),
                                "filled_weight")
                        .sentence())
                .startsWith("Stand it level on sound ground");
    }

    @Test
    void aStandThatIsNotDescribedIsSaidToBeMissing() {
        assertThat(Checked.of(
                                TestPlans.workedExample("stand: {mass: 80 kg, feet: 4, floor: suspended}\n", ""),
                                "filled_weight")
                        .sentence())
                .endsWith("the stand not counted, as the plan does not describe it.");
    }
}
