package org.tidewright.plan.rule;

import java.util.List;
import org.tidewright.plan.model.Inhabitants;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.species.Catalogue;

/** Who lives there: each fish has a mass, or a species and a length from which it follows. */
final class InhabitantRules {
    private InhabitantRules() {}

    static void check(Plan plan, Findings findings) {
        List<Inhabitants.Fish> fish =
                plan.inhabitants() == null ? List.of() : plan.inhabitants().fish();
        for (int i = 0; i < fish.size(); i++) {
            Inhabitants.Fish each = fish.get(i);
            if (each.mass() == null && each.massBySpecies().isEmpty()) {
                findings.add(
                        "inhabitants.fish[" + (i + 1) + "]",
                        found(each),
                        "a mass, or a known species and a length",
                        mend(each));
            }
        }
    }

    private static String found(Inhabitants.Fish fish) {
        if (fish.species() == null) {
            return "neither mass nor species";
        }
        return fish.length() == null
                ? "no mass, and a species without a length"
                : "no mass, and a species “" + fish.species() + "” that is no fish of the catalogue";
    }

    private static String mend(Inhabitants.Fish fish) {
        return fish.species() == null || fish.length() == null
                ? "Give the mass of one, or its species and length."
                : ("Give the mass of one. " + Catalogue.ofProgram().suggestion(fish.species())).strip();
    }
}
