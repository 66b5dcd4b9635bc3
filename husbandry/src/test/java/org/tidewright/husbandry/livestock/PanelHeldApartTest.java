package org.tidewright.husbandry.livestock;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * The half of the panel that was first looked at when the rules stood: 94 of 106 agreed. What was wrong in general was mended
 * then, so that this tells no more how the rules do on cases not seen.
 */
class PanelHeldApartTest {
    @Test
    void allButTheToldVerdictsAreThoseOfAnExperiencedKeeper() {
        List<PanelJudge.Outcome> outcomes = PanelJudge.judge(Panel.cases(Panel.heldApart()));
        assertThat(PanelJudge.differing(outcomes))
                .containsExactlyInAnyOrder(
                        "condy_anemone_in_reef_nano",
                        "peppermint_shrimps_with_arc_eye_hawkfish",
                        "seahorses_with_bubble_tip");
        assertThat(PanelJudge.forAnotherReason(outcomes)).hasSizeLessThanOrEqualTo(4);
    }
}
