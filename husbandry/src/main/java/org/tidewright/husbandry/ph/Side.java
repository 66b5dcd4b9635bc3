package org.tidewright.husbandry.ph;

import org.tidewright.seawater.unit.Unit;

/** Whether a water holds more or less carbon dioxide than some air would give it, as far as a reading can tell. */
public enum Side {
    MORE,
    LESS,
    /** The doubt reaches both sides. */
    CANNOT_TELL;

    /** By what it seems to hold more, in any measure, and the doubt of that. */
    public static Side of(@Unit("*") double excess, @Unit("*") double doubt) {
        return excess > doubt ? MORE : excess < -doubt ? LESS : CANNOT_TELL;
    }
}
