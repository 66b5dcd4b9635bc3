package org.tidewright.husbandry.livestock;

import java.util.List;
import java.util.stream.Stream;
import org.tidewright.husbandry.advice.Sources;
import org.tidewright.plan.species.SpeciesSource;

/**
 * A candidate, and where it would live.
 *
 * @param sources to which each rule adds what it rests on
 */
record Situation(Animals candidate, Home home, List<Animals> residents, Sources sources) {
    Stream<Animals> fish() {
        return residents.stream().filter(Animals::isFish);
    }

    Stream<Animals> invertebrates() {
        return residents.stream().filter(each -> !each.isFish());
    }

    Stream<Animals> corals() {
        return invertebrates().filter(each -> each.invertebrate().group().isCoral());
    }

    /** The letter of what a fact of the catalogue rests on. */
    String key(String what, SpeciesSource source) {
        return sources.key(what, source.basis(), source.citation());
    }
}
