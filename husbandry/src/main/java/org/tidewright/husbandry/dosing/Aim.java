package org.tidewright.husbandry.dosing;

import org.tidewright.seawater.unit.Unit;

/**
 * Where a level is to be held.
 *
 * @param value to come back to
 * @param least of the range
 * @param most of the range
 * @param safeRate by which it may be moved on purpose, a day
 */
public record Aim(
        @Unit("*") double value,
        @Unit("*") double least,
        @Unit("*") double most,
        @Unit("*") double safeRate) {
    public Aim {
        if (!(least < most && value >= least && value <= most && safeRate > 0)) {
            throw new IllegalArgumentException("a range from " + least + " to " + most + " with " + value
                    + " as its aim and " + safeRate + " a day as the safe rate cannot be held");
        }
    }
}
