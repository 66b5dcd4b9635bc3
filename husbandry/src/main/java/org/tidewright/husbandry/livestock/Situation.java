package org.tidewright.husbandry.livestock;

import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.Sources;
import org.tidewright.husbandry.burden.Burden;
import org.tidewright.plan.species.SpeciesSource;

/**
 * A candidate, and where it would live.
 *
 * @param burden what it would do to the water; null where the twin was not asked
 * @param sources to which each rule adds what it rests on
 */
record Situation(
        Animals candidate, Setting setting, @Nullable Burden burden, Sources sources) {
    Home home() {
        return setting.home();
    }

    List<Animals> residents() {
        return setting.residents();
    }

    Stream<Animals> fish() {
        return residents().stream().filter(Animals::isFish);
    }

    Stream<Animals> invertebrates() {
        return residents().stream().filter(each -> !each.isFish());
    }

    Stream<Animals> corals() {
        return invertebrates().filter(each -> each.invertebrate().group().isCoral());
    }

    /** The letter of what a fact of the catalogue rests on. */
    String key(String what, SpeciesSource source) {
        return sources.key(what, source.basis(), source.citation());
    }
}
