package org.tidewright.husbandry.wishlist;

import java.util.Collection;
import org.tidewright.husbandry.livestock.Animals;
import org.tidewright.plan.species.InvertebrateSpecies.Group;
import org.tidewright.seawater.unit.Unit;

/** What animals weigh as a load on the filter. */
final class LiveMass {
    /** Of a snail, shrimp or crab without its shell, as it is sold; a guess from memory, good to a factor of three. */
    static final double OF_SMALL_ANIMAL = 0.001;

    private LiveMass() {}

    /**
     * Of all of them. Corals, anemones, clams and algae count with nothing: with light they take up more ammonia than they give
     * (common practice).
     */
    static @Unit("kg") double of(Animals animals) {
        if (animals.isFish()) {
            return animals.count() * animals.fish().mass(animals.length());
        }
        return isFixed(animals) ? 0 : animals.count() * OF_SMALL_ANIMAL;
    }

    static @Unit("kg") double of(Collection<Animals> animals) {
        return animals.stream().mapToDouble(LiveMass::of).sum();
    }

    /** Whether it stays where it is put, and lives by light. */
    static boolean isFixed(Animals animals) {
        if (animals.isFish()) {
            return false;
        }
        Group group = animals.invertebrate().group();
        return group.isCoral() || group == Group.ANEMONE || group == Group.CLAM || group == Group.CALCAREOUS_ALGAE;
    }
}
