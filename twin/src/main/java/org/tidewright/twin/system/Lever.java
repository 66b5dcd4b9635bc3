package org.tidewright.twin.system;

import org.tidewright.twin.contract.Setting;

/**
 * Something a keeper or a failure can change while a system runs.
 *
 * @param name as a keeper would say it
 * @param meaning in a few words
 * @param kind how its values are told
 * @param unit coherent unit of its values
 * @param setting the twin's setting behind it; its initial value is the plan's
 */
public record Lever(String name, String meaning, Kind kind, String unit, Setting setting) {
    /** How values are told. */
    public enum Kind {
        /** A share of what the plan does: 1, or 100 %, leaves it. */
        FACTOR,
        /** An amount with its unit. */
        AMOUNT,
        /** On or off. */
        SWITCH,
        /** A switch that may also stick: off, on, stuck on. */
        FLOAT_SWITCH
    }
}
