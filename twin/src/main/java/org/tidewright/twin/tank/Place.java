package org.tidewright.twin.tank;

/** Kinds of place that hold water. */
public enum Place {
    DISPLAY,
    OVERFLOW_BOX,
    SUMP_SECTION,
    REFUGIUM,
    RESERVOIR,
    /** Pipes and devices above the water, whose content runs back. */
    HELD_BACK,
    FLOOR
}
