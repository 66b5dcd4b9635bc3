package org.tidewright.husbandry.reef;

import java.util.Optional;
import org.tidewright.plan.model.Inhabitants.Coral;
import org.tidewright.plan.species.Catalogue;

/** Tells what a coral of a scientific name needs. */
@FunctionalInterface
public interface CoralLore {
    /** Knows no species: every coral is taken as its form. */
    CoralLore BY_FORM = species -> Optional.empty();

    Optional<CoralTraits> of(String species);

    /** By the program's own catalogue. */
    static CoralLore ofProgram() {
        return new CatalogueLore(Catalogue.ofProgram());
    }

    /** Of a row of the plan: by its species where that is known, else by its form. */
    default CoralTraits of(Coral coral) {
        Optional<CoralTraits> known = coral.species() == null ? Optional.empty() : of(coral.species());
        return known.orElseGet(() -> FormTraits.of(coral.form()));
    }
}
