package org.tidewright.husbandry.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.TestPlans;
import org.tidewright.husbandry.advice.Holding;

/**
 * The worked system by hand: 6.25 L of room more than the pump can move (handbook), and here besides 0.15 m of overflow
 * box, 0.288 × 0.144 m inside, to fill, and 8.89 mm over two baffles that follow.
 */
class LostDrainCheckTest {
    private static final double LITRE = 1e-3;
    private static final double ROOM = 6.247 * LITRE + 0.15 * 0.288 * 0.144 - 0.00889 * (0.44 + 0.20) * 0.45;
    private static final String TOP_OFF = "top_off: {reservoir: 25 L, pump_flow: 60 L/h}\n";

    @Test
    void withoutATopOffTheFloorStaysDry() {
        Checked check = Checked.of(TestPlans.workedExample(TOP_OFF, ""), "drains_blocked");
        assertThat(check.margin()).isCloseTo(ROOM, within(0.05 * LITRE));
        assertThat(check.holding()).isEqualTo(Holding.HOLDS);
        assertThat(check.sentence()).startsWith("The floor stays dry even then: the pump runs dry after ");
    }

    @Test
    void theTopOffPutsItsReservoirOnTop() {
        Checked check = Checked.of(TestPlans.workedExample(), "drains_blocked");
        assertThat(check.margin()).isCloseTo(ROOM - 25 * LITRE, within(0.05 * LITRE));
        assertThat(check.holding()).isEqualTo(Holding.FAILS);
        assertThat(check.sentence())
                .startsWith("Fill the top-off reservoir with no more than 9.9 L, ")
                .contains("puts water on the floor")
                .contains("most of it added by the top-off");
    }

    @Test
    void aReservoirFilledAsToldKeepsTheFloorDry() {
        assertThat(Checked.of(TestPlans.workedExample("reservoir: 25 L", "reservoir: 9.9 L"), "drains_blocked")
                        .holding())
                .isNotEqualTo(Holding.FAILS);
    }

    @Test
    void aHungOverflowIsAskedForItsSiphon() {
        Checked check = Checked.of(TestPlans.example("fifty-five-gallon"), "overflow_siphon_lost");
        assertThat(check.sentence()).contains("when the overflow loses its siphon");
    }
}
