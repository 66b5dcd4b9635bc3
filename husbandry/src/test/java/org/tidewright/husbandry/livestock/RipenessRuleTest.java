package org.tidewright.husbandry.livestock;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.tidewright.plan.model.Cover;
import org.tidewright.plan.model.UnitSystem;

/** What success and failure with easier kinds say of a harder one. */
class RipenessRuleTest {
    private static final Animals STAGHORN = SettingsByHand.animals("Acropora muricata", 1);
    private static final Animals FINGER = SettingsByHand.animals("Montipora digitata", 1);

    private static List<Finding> judge(List<Animals> residents, List<Animals> thriving, List<Animals> died) {
        return SettingsByHand.judge(
                        new RipenessRule(),
                        STAGHORN,
                        SettingsByHand.setting(residents, new Experience(thriving, died), null, null),
                        null)
                .stream()
                .filter(finding -> finding.rule().equals("after"))
                .toList();
    }

    @Test
    void anEasierOneThatHasThrivedForHalfAYearIsEnough() {
        assertThat(judge(List.of(FINGER), List.of(FINGER), List.of())).isEmpty();
    }

    @Test
    void oneThatCameLatelyIsNotYet() {
        assertThat(judge(List.of(FINGER), List.of(), List.of())).singleElement().satisfies(finding -> {
            assertThat(finding.call()).isEqualTo(Call.NOT_YET);
            assertThat(finding.what().text(UnitSystem.METRIC))
                    .isEqualTo("No easier kind has lived here for half a year yet.");
        });
    }

    @Test
    void oneThatDiedWithinTheYearIsToBeUnderstoodFirst() {
        assertThat(judge(List.of(FINGER), List.of(FINGER), List.of(FINGER)))
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.call()).isEqualTo(Call.MIND);
                    assertThat(finding.what().text(UnitSystem.METRIC)).startsWith("An easier kind died here");
                });
    }

    /** Two months old on 1 November 2026, and a staghorn asks for nine: seven months of 30.4375 days are 213.06 days. */
    @Test
    void aYoungTankIsGivenTheDayOnWhichItIsOldEnough() {
        Home young = new Home(2, 0.7, 0.6, 0.8, Cover.NET, 0.05, 60, 24, 26, 2.0, 0.1, Set.of(), 2);
        assertThat(SettingsByHand.judge(
                        new RipenessRule(), STAGHORN, Setting.of(SettingsByHand.TODAY, young, List.of(FINGER)), null))
                .filteredOn(finding -> finding.rule().equals("maturity"))
                .singleElement()
                .extracting(finding -> Objects.requireNonNull(finding.becomes()).text(UnitSystem.METRIC))
                .isEqualTo("Buy it after 3 June 2027, when the tank is 9 months old.");
    }
}
