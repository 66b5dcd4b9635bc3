package org.tidewright.husbandry.reef;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.TestPlans;
import org.tidewright.plan.species.Catalogue;
import org.tidewright.plan.species.InvertebrateSpecies;

class CatalogueLoreTest {
    private static final CoralLore LORE = CoralLore.ofProgram();

    private static CoralTraits of(String name) {
        return LORE.of(name).orElseThrow();
    }

    /** The row of the hammer coral: 80 to 200 µmol, low to medium flow, 12 cm, 10 to 25 mm a year, 5.12 (2.83–6.22) mg/cm² a day. */
    @Test
    void aSpeciesIsReadWithItsUnits() {
        CoralTraits hammer = of("Fimbriaphyllia ancora");
        assertThat(requireNonNull(hammer.light()).low()).isCloseTo(80e-6, within(1e-12));
        assertThat(hammer.light().high()).isCloseTo(200e-6, within(1e-12));
        assertThat(hammer.flow()).isEqualTo(FlowClass.LOW_MEDIUM);
        assertThat(hammer.reach()).isCloseTo(0.12, within(1e-12));
        assertThat(hammer.extension()).isEqualTo(Ranged.between(0.010, 0.025));
        double rate = 1e-2 / 100.087e-3 / 86_400;
        assertThat(hammer.calcification().value()).isCloseTo(5.12 * rate, within(1e-6 * rate));
        assertThat(hammer.calcification().high()).isCloseTo(6.22 * rate, within(1e-6 * rate));
        assertThat(hammer.ofSpecies()).isTrue();
    }

    @Test
    void kinMayTouchAndTorchesAreNoKinOfHammers() {
        assertThat(of("hammer coral").mayTouch(of("frogspawn coral"))).isTrue();
        assertThat(of("hammer coral").mayTouch(of("torch coral"))).isFalse();
    }

    @Test
    void whatIsNoCoralIsNotPlacedAsOne() {
        assertThat(LORE.of("Zebrasoma flavescens")).isEmpty();
        assertThat(LORE.of("Trochus sp.")).isEmpty();
        assertThat(LORE.of("no such thing")).isEmpty();
    }

    @Test
    void everyZoanthidIsTakenAsOneThatMayCarryPalytoxin() {
        assertThat(Catalogue.ofProgram().invertebrates().stream()
                        .filter(animal -> animal.group() == InvertebrateSpecies.Group.ZOANTHID))
                .isNotEmpty()
                .allSatisfy(animal -> assertThat(CatalogueLore.traits(animal).palytoxin())
                        .as(animal.name().scientific())
                        .isTrue());
    }

    @Test
    void everyCoralOfTheCatalogueCanBePlacedAndGrown() {
        assertThat(Catalogue.ofProgram().invertebrates().stream()
                        .filter(animal -> animal.group().isCoral()))
                .hasSizeGreaterThan(80)
                .allSatisfy(animal -> {
                    CoralTraits traits = CatalogueLore.traits(animal);
                    assertThat(traits.reach()).isBetween(0.0, 0.5);
                    assertThat(traits.extension().low()).isNotNegative();
                    assertThat(traits.calcification().low()).isNotNegative();
                });
    }

    @Test
    void aPlansCoralIsKnownByItsSpeciesAndElseByItsForm() {
        assertThat(Colony.of(TestPlans.example("harbour-room"), LORE))
                .allSatisfy(colony -> assertThat(colony.traits().ofSpecies()).isTrue());
        assertThat(Colony.of(
                        ReefPlans.plan(
                                "", "", "inhabitants:\n  corals:\n    - {name: a, plan_area: 9 cm², form: soft}\n"),
                        LORE))
                .singleElement()
                .satisfies(colony -> assertThat(colony.traits().ofSpecies()).isFalse());
    }
}
