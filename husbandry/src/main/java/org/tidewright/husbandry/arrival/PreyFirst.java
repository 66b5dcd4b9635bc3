package org.tidewright.husbandry.arrival;

import org.tidewright.seawater.range.Bounds;

/**
 * Somebody small enough to be swallowed is in the display, and knows its holes, before the one who might.
 *
 * @param predator id of a wish
 * @param prey id of another
 * @param days least days between the two, at least 1
 */
public record PreyFirst(String predator, String prey, int days) {
    /** Refuses what cannot be meant. */
    public PreyFirst {
        Bounds.within(days, "d", 1, 3660, "days between " + prey + " and " + predator);
    }
}
