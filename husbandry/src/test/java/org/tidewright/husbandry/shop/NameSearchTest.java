package org.tidewright.husbandry.shop;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.tidewright.plan.species.Catalogue;
import org.tidewright.plan.species.Species;

class NameSearchTest {
    private static final List<Species> ALL = Catalogue.ofProgram().all();

    private static List<String> found(String typed) {
        return NameSearch.of(typed, ALL).found().stream()
                .map(species -> species.name().scientific())
                .toList();
    }

    @Test
    void everyNameFindsItsSpeciesFirstInAnyCase() {
        for (Species species : ALL) {
            assertThat(found(species.name().scientific().toUpperCase(Locale.ROOT)))
                    .as(species.name().scientific())
                    .startsWith(species.name().scientific());
            for (String name : species.name().synonyms()) {
                assertThat(found(name)).as(name).contains(species.name().scientific());
            }
        }
    }

    @Test
    void partsOfSeveralWordsInAnyOrderAreEnough() {
        assertThat(found("tang yel")).contains("Zebrasoma flavescens");
        assertThat(found("zeb flav")).startsWith("Zebrasoma flavescens");
        assertThat(found("  Yellow-TANG ")).startsWith("Zebrasoma flavescens");
    }

    @Test
    void accentsAndSignsDoNotMatter() {
        assertThat(found("bird’s nest")).startsWith("Seriatopora hystrix");
        assertThat(found("birds-nest")).isNotEmpty();
        assertThat(found("Yéllow täng")).startsWith("Zebrasoma flavescens");
    }

    @Test
    void aSlipAtTheEndFallsBackToTheBeginning() {
        NameSearch slip = NameSearch.of("clownfihs", ALL);
        assertThat(slip.isShortened("clownfihs")).isTrue();
        assertThat(slip.by()).isEqualTo("clownfi");
        assertThat(slip.found()).isNotEmpty();
    }

    @Test
    void nothingTypedOrNothingLikeItFindsNothing() {
        assertThat(found("")).isEmpty();
        assertThat(found(" .,- ")).isEmpty();
        assertThat(found("qqqqqq")).isEmpty();
    }
}
