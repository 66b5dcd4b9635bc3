package org.tidewright.husbandry.journal;

import org.jspecify.annotations.Nullable;

/** Refuses what cannot have happened. */
final class Refusal {
    private Refusal() {}

    static void unless(boolean holds, String otherwise) {
        if (!holds) {
            throw new IllegalArgumentException(otherwise);
        }
    }

    static void unlessPositive(@Nullable Double number, String what) {
        unless(
                number == null || (number > 0 && number < Double.POSITIVE_INFINITY),
                what + " is " + number + "; it must be more than nothing");
    }
}
