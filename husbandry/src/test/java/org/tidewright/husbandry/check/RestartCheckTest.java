package org.tidewright.husbandry.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.TestPlans;
import org.tidewright.husbandry.advice.Holding;

class RestartCheckTest {
    @Test
    void withoutASpareDrainAndWithATopOffTheDisplayRunsOver() {
        Checked check = Checked.of(TestPlans.workedExample(), "restart");
        assertThat(check.holding()).isEqualTo(Holding.FAILS);
        assertThat(check.sentence()).startsWith("Give the display a spare drain that carries the flow alone");
    }

    /** Its lip at 0.50 m, 43 mm of head: the box stays under the crest, so the display stands 15.9 mm over it as ever. */
    @Test
    void aSpareDrainAsToldKeepsTheDisplayWhereItRuns() {
        Checked check = Checked.of(DrainCheckTest.withSpare("40 mm"), "restart");
        assertThat(check.holding()).isEqualTo(Holding.HOLDS);
        assertThat(check.margin()).isCloseTo(0.050 - 0.0159, within(0.2e-3));
    }

    @Test
    void aPumpThatRunsDryIsTold() {
        Checked check =
                Checked.of(TestPlans.workedExample("top_off: {reservoir: 25 L, pump_flow: 60 L/h}\n", ""), "restart");
        assertThat(check.holding()).isEqualTo(Holding.CLOSE);
        assertThat(check.sentence()).startsWith("Let the pump start slowly or fit a low-level cut-out");
    }
}
