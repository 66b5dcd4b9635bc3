package org.tidewright.husbandry.livestock;

import java.util.List;
import java.util.Optional;
import org.tidewright.husbandry.burden.Burden;

/** Tells what candidates would do to the water. */
@FunctionalInterface
public interface Water {
    /** Where nobody asks the twin. */
    Water NOT_ASKED = (candidate, coming) -> Optional.empty();

    /**
     * A candidate with all others that are to come before it.
     *
     * @return empty of what the twin does not know by its mass: all but fish
     */
    Optional<Burden> with(Animals candidate, List<Animals> coming);
}
