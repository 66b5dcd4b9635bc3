package org.tidewright.plan.species;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.tidewright.plan.source.Basis;

class CatalogueTest {
    private static final Catalogue CATALOGUE = Catalogue.ofProgram();

    private static FishSpecies fish(String name) {
        return (FishSpecies) CATALOGUE.find(name).orElseThrow();
    }

    @Test
    void holdsWhatIsCommonlyKept() {
        assertThat(CATALOGUE.fish()).hasSizeGreaterThanOrEqualTo(150);
        assertThat(CATALOGUE.invertebrates()).hasSizeGreaterThanOrEqualTo(100);
    }

    @Test
    void findsASpeciesByEachOfItsNamesInAnyCase() {
        FishSpecies tang = fish("Zebrasoma flavescens");
        assertThat(fish("YELLOW TANG")).isSameAs(tang);
        assertThat(CATALOGUE.find("heteractis magnifica")).isPresent();
        assertThat(CATALOGUE.find("yelow tang")).isEmpty();
        assertThat(CATALOGUE.suggestion("yelow tang")).isEqualTo("Did you mean “yellow tang”?");
    }

    /** Morais and Bellwood 2018: L∞ 16.8 cm, K 0.28, a 0.0214, b 3.04; the figures by hand from these. */
    @Test
    void aYellowTangGrowsAndWeighsAsItsPublishedCurveSays() {
        FishSpecies tang = fish("Zebrasoma flavescens");
        assertThat(tang.lengthAfter(0.06, 1)).isCloseTo(0.0864, within(2e-4));
        assertThat(tang.mass(0.0864)).isCloseTo(0.0150, within(2e-4));
        assertThat(tang.lengthAfter(0.06, 5)).isCloseTo(0.1414, within(2e-4));
        assertThat(tang.mass(0.1414)).isCloseTo(0.0672, within(4e-4));
    }

    @Test
    void aRowOfTheKeepersOwnChangesWhatItStatesAndNoMore() {
        Catalogue.Extended own = CATALOGUE.withFish("scientific_name,usual_length_cm\nZebrasoma flavescens,18\n");
        assertThat(own.faults()).isEmpty();
        FishSpecies changed = (FishSpecies) own.catalogue().find("yellow tang").orElseThrow();
        assertThat(changed.size().usual()).isCloseTo(0.18, within(1e-12));
        assertThat(changed.size().source()).isEqualTo(SpeciesSource.OWN);
        assertThat(changed.weight()).isEqualTo(fish("yellow tang").weight());
        assertThat(changed.gape().source().basis()).isNotEqualTo(Basis.YOUR_PLAN);
        assertThat(own.catalogue().fish()).hasSameSizeAs(CATALOGUE.fish());
    }

    @Test
    void faultsOfAKeepersFileAreToldWithTheirPlacesAndNothingOfItCounts() {
        Catalogue.Extended own = CATALOGUE.withFish(
                "scientific_name,jump_0to3,swiming,digs\nZebrasoma flavescens,7,roams,perhaps\nNewfishus novus,1,,no\n");
        assertThat(own.catalogue()).isSameAs(CATALOGUE);
        assertThat(own.faults())
                .anySatisfy(
                        fault -> assertThat(fault.sentence())
                                .isEqualTo(
                                        "the header: found “swiming”; expected a column of this file. Did you mean “swimming”?"));
        assertThat(own.faults()).anySatisfy(fault -> {
            assertThat(fault.line()).isEqualTo(2);
            assertThat(fault.sentence())
                    .isEqualTo("Zebrasoma flavescens, jump_0to3: found “7”; expected a number from 0 to 3.");
        });
        assertThat(own.faults())
                .anySatisfy(fault -> assertThat(fault.sentence())
                        .isEqualTo("Zebrasoma flavescens, digs: found “perhaps”; expected yes or no."));
        assertThat(own.faults())
                .anySatisfy(fault -> assertThat(fault.sentence())
                        .startsWith("Newfishus novus, common_name: found nothing; expected a value."));
    }

    @Test
    void textThatIsNoTableIsAFaultAndNoCrash() {
        assertThat(CATALOGUE.withFish("\"").faults()).isNotEmpty();
        assertThat(CATALOGUE.withInvertebrates("").faults()).isNotEmpty();
        assertThat(CATALOGUE.withFish("a,b\n1,2,3\n").faults()).isNotEmpty();
    }

    @Test
    void aWordBySeveralKindsIsAskedAboutAndNotTakenForAMisspeltOne() {
        assertThat(CATALOGUE.suggestion("Clownfish"))
                .startsWith("Which of them: “")
                .contains("clownfish”, “")
                .endsWith(" more?");
        assertThat(CATALOGUE.suggestion("Gramma")).contains("“royal gramma”").endsWith("”?");
    }
}
