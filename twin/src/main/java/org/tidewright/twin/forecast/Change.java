package org.tidewright.twin.forecast;

import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.system.Lever;

/**
 * A lever moved, for good or for a while.
 *
 * @param value it is moved to, in the lever's unit
 * @param from when, since the forecast's first midnight
 * @param lasts how long; infinite for good
 */
public record Change(
        Lever lever,
        @Unit("*") double value,
        @Unit("s") double from,
        @Unit("s") double lasts) {
    public Change {
        if (!(from >= 0 && from < Double.POSITIVE_INFINITY) || !(lasts > 0) || !Double.isFinite(value)) {
            throw new IllegalArgumentException(lever.name() + " cannot be moved to " + value + " at " + from + " s for "
                    + lasts + " s; it needs a value, a time that is not negative and a span above 0");
        }
    }

    /** For good, from the start. */
    public static Change to(Lever lever, @Unit("*") double value) {
        return new Change(lever, value, 0, Double.POSITIVE_INFINITY);
    }
}
