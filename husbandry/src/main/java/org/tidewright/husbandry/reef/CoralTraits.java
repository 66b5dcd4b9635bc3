package org.tidewright.husbandry.reef;

import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tidewright.seawater.unit.Unit;

/**
 * What a coral needs of its place and how it grows.
 *
 * @param name scientific name, or the form in words where the species is not known
 * @param ofSpecies whether it is known by its species, not by its form alone
 * @param light in which it thrives, the middle and the ends; null where it needs none or nobody knows
 * @param reach of its sweepers, tentacles or stings beyond its edge
 * @param unharmed genera that may touch it and take no harm; its own genus need not be named
 * @param extension of its branches or its edge on a reef, a year
 * @param calcification carbonate laid down on a reef over the area seen from above; all zero where it lays down none
 * @param palytoxin whether it may carry palytoxin
 */
public record CoralTraits(
        String name,
        boolean ofSpecies,
        @Nullable @Unit("mol/(m^2*s)") Ranged light,
        FlowClass flow,
        @Unit("m") double reach,
        Set<String> unharmed,
        @Unit("m/y") Ranged extension,
        @Unit("mol/(m^2*s)") Ranged calcification,
        boolean palytoxin) {
    public CoralTraits {
        unharmed = Set.copyOf(unharmed);
    }

    /** First word of its scientific name; empty where only its form is known. */
    public String genus() {
        return ofSpecies ? name.split("\\s+", 2)[0] : "";
    }

    /** Whether two corals may touch and neither is stung. */
    public boolean mayTouch(CoralTraits other) {
        if (!ofSpecies || !other.ofSpecies) {
            return false;
        }
        return genus().equals(other.genus()) || (unharmed.contains(other.genus()) && other.unharmed.contains(genus()));
    }

    /** Whether it lays down skeleton. */
    public boolean calcifies() {
        return calcification.value() > 0;
    }
}
