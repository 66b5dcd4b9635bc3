package org.tidewright.husbandry.livestock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.tidewright.plan.model.Cover;
import org.tidewright.plan.species.Catalogue;
import org.tidewright.plan.species.FishSpecies;

/** Worked by hand with the depth of prey over standard length of Mihalitsis and Bellwood 2017, PLoS ONE, standard 0.80 of total. */
class PreyRuleTest {
    private static Animals fish(String name, double length) {
        return new Animals(Catalogue.ofProgram().find(name).orElseThrow(), 1, length);
    }

    private static List<Finding> judge(Animals candidate, Animals... residents) {
        Home home = new Home(2, 0.7, 0.6, 0.8, Cover.NET, 0.05, 60, 24, 26, 24.0, null, java.util.Set.of(), 2);
        return new PreyRule()
                .judge(new Situation(
                        candidate,
                        Setting.of(LocalDate.of(2026, 3, 2), home, List.of(residents)),
                        null,
                        new org.tidewright.husbandry.advice.Sources()));
    }

    /** A lionfish of 20 cm with 0.30 swallows 0.30 · 0.80 · 20 = 4.8 cm; a chromis of 6 cm is 0.42 · 6 = 2.5 cm deep. */
    @Test
    void aLionfishSwallowsAChromis() {
        FishSpecies lionfish = fish("Pterois volitans", 0.2).fish();
        assertThat(lionfish.swallows(0.2)).isCloseTo(0.048, within(1e-9));
        assertThat(fish("Chromis viridis", 0.06).fish().depth(0.06)).isCloseTo(0.0252, within(1e-3));
        assertThat(judge(fish("Pterois volitans", 0.1), fish("Chromis viridis", 0.06)))
                .anySatisfy(finding -> {
                    assertThat(finding.rule()).isEqualTo("predation_by_it");
                    assertThat(finding.call()).isEqualTo(Call.NO);
                });
        assertThat(judge(fish("Chromis viridis", 0.06), fish("Pterois volitans", 0.1)))
                .anySatisfy(finding -> assertThat(finding.rule()).isEqualTo("predation_on_it"));
    }

    @Test
    void whatIsTooDeepForItsMouthIsSafe() {
        assertThat(judge(fish("Zebrasoma flavescens", 0.18), fish("Paracirrhites arcatus", 0.12)))
                .noneMatch(finding -> finding.call() == Call.NO);
    }
}
