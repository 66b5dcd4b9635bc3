package org.tidewright.husbandry.livestock;

import org.tidewright.plan.species.FishSpecies;
import org.tidewright.plan.species.InvertebrateSpecies;
import org.tidewright.plan.species.Species;
import org.tidewright.seawater.unit.Unit;

/**
 * Animals of one kind and size, those that live somewhere or those that might.
 *
 * @param length of one fish as it is now; 0 for other animals
 */
public record Animals(Species species, int count, @Unit("m") double length) {
    /** {@code yellow tang}, {@code 3 blue-green chromises}. */
    public String words() {
        return count == 1
                ? "the " + species.name().common()
                : count + " × " + species.name().common();
    }

    public boolean isFish() {
        return species instanceof FishSpecies;
    }

    /** As a fish; only of a fish. */
    public FishSpecies fish() {
        return (FishSpecies) species;
    }

    /** As an invertebrate; only of one. */
    public InvertebrateSpecies invertebrate() {
        return (InvertebrateSpecies) species;
    }

    /** How long a fish will be when grown: its usual length, or what it has already. */
    public @Unit("m") double grown() {
        return Math.max(length, fish().size().usual());
    }

    /** Whether nobody means to keep it: what comes with rock or is dangerous, step 0 of difficulty. */
    boolean isPest() {
        return !isFish() && species.care().difficulty() == 0;
    }

    public boolean isKind(Animals other) {
        return species.name().scientific().equals(other.species().name().scientific());
    }

    public boolean isGenus(Animals other) {
        return species.name().genus().equals(other.species().name().genus());
    }
}
