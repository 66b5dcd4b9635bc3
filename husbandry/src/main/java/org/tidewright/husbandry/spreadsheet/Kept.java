package org.tidewright.husbandry.spreadsheet;

/** As what the numbers of a column are kept. */
public enum Kept {
    /** As values of a probe where they come faster than anybody tests by hand, as readings otherwise. */
    BY_PACE,
    READINGS,
    PROBE
}
