package org.tidewright.husbandry.livestock;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The half of the panel on which the rules were tuned. The cases on which they differ are told in the science of livestock. */
class PanelTuningTest {
    @Test
    void allButTheToldVerdictsAreThoseOfAnExperiencedKeeper() {
        List<PanelJudge.Outcome> outcomes = PanelJudge.judge(Panel.cases(Panel.tuning()));
        assertThat(PanelJudge.differing(outcomes))
                .containsExactlyInAnyOrder("clarkii_pair_into_ocellaris_tank", "schooling_bannerfish_trio");
        assertThat(PanelJudge.forAnotherReason(outcomes)).hasSizeLessThanOrEqualTo(4);
    }
}
