package org.tidewright.husbandry.solution;

import org.tidewright.plan.source.Basis;
import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * What a system uses of something a day, in moles for each volume of its water; of charge, where it is alkalinity.
 *
 * @param value per day
 * @param standardError of the value
 * @param from where it is known from, in words
 */
public record DailyUse(
        Supply supply,
        @Unit("mol/(m^3*d)") double value,
        @Unit("mol/(m^3*d)") double standardError,
        Basis basis,
        String from) {
    public DailyUse {
        Bounds.finite(value, "mol/(m^3*d)", "use a day");
        Bounds.notNegative(standardError, "mol/(m^3*d)", "standard error of the use a day");
    }

    /** Standard error as a share of the value; of a use of nothing, none. */
    @Unit("1")
    public double relativeError() {
        return value == 0 ? 0 : standardError / Math.abs(value);
    }
}
