package org.tidewright.husbandry.livestock;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.TestPlans;
import org.tidewright.husbandry.reef.CoralLore;
import org.tidewright.husbandry.reef.ReefSite;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.UnitSystem;

/** Places in the harbour room, whose plan tells light at seven points, from 75 to 400 µmol/m²/s, and where its corals stand. */
class PlaceRuleTest {
    private static final Plan HARBOUR = TestPlans.example("harbour-room");

    private static List<Finding> judge(String name, Plan plan) {
        return SettingsByHand.judge(
                new PlaceRule(),
                SettingsByHand.animals(name, 1),
                SettingsByHand.setting(
                        List.of(),
                        new Experience(List.of(), List.of()),
                        null,
                        new ReefSite(plan, CoralLore.ofProgram())),
                null);
    }

    @Test
    void aCoralWhoseLightIsThereHasAPlace() {
        assertThat(judge("Discosoma sp.", HARBOUR)).singleElement().satisfies(finding -> {
            assertThat(finding.call()).isEqualTo(Call.YES);
            assertThat(finding.why().text(UnitSystem.METRIC))
                    .contains("from the left")
                    .contains("It asks for");
        });
    }

    @Test
    void whereLightIsNotKnownItIsToBeMinded() {
        Plan dark = TestPlans.workedExample();
        assertThat(new ReefSite(dark, CoralLore.ofProgram()).light()).isEmpty();
        assertThat(judge("Discosoma sp.", dark))
                .singleElement()
                .satisfies(finding -> assertThat(finding.call()).isEqualTo(Call.MIND));
    }

    @Test
    void fishAndSnailsAreGivenNone() {
        assertThat(judge("Gramma loreto", HARBOUR)).isEmpty();
        assertThat(judge("Trochus sp.", HARBOUR)).isEmpty();
    }
}
