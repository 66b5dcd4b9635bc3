package org.tidewright.husbandry.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.TestPlans;
import org.tidewright.husbandry.advice.Holding;

/** Heads by hand at 2500 L/h: 15.9 mm through clean teeth, 25.3 mm through half of their width; the teeth are 30 mm deep. */
class OverflowCheckTest {
    @Test
    void cleanTeethLeaveTheDepthWorkedByHand() {
        Checked check = Checked.of(TestPlans.workedExample(), "overflow");
        assertThat(check.margin()).isCloseTo(0.030 - 0.0159, within(0.1e-3));
        assertThat(check.holding()).isEqualTo(Holding.HOLDS);
        assertThat(check.sentence()).contains("34 mm under the rim");
    }

    @Test
    void halfTheWidthStillHolds() {
        Checked check = Checked.of(TestPlans.workedExample("width: 6 mm, depth", "width: 3 mm, depth"), "overflow");
        assertThat(check.margin()).isCloseTo(0.030 - 0.0253, within(0.1e-3));
        assertThat(check.holding()).isEqualTo(Holding.HOLDS);
    }

    @Test
    void teethThatDrownFail() {
        Checked check = Checked.of(TestPlans.workedExample("depth: 30 mm", "depth: 15 mm"), "overflow");
        assertThat(check.holding()).isEqualTo(Holding.FAILS);
        assertThat(check.sentence()).startsWith("Cut the teeth deeper or open more of them");
    }

    @Test
    void aCrestTooNearTheRimFails() {
        Checked check = Checked.of(TestPlans.workedExample("crest: 0.55 m", "crest: 0.575 m"), "overflow");
        assertThat(check.holding()).isEqualTo(Holding.FAILS);
        assertThat(check.sentence()).startsWith("Lower the crest or slow the pump");
    }
}
