package org.tidewright.husbandry.sheet;

import java.util.List;

/**
 * A unit a known number may be written in.
 *
 * @param spellings the usual one first; the empty one stands for no unit at all
 * @param needs what must be known of the water before it can be told in the column's unit
 * @param conversion to the unit of the column
 */
record SpeltUnit(List<String> spellings, Needs needs, Conversion conversion) {
    /** What a conversion asks for. */
    enum Needs {
        NOTHING,
        TEMPERATURE,
        TEMPERATURE_AND_SALINITY
    }

    /** From a number in the unit; temperature in degC and practical salinity are NaN where nothing needs them. */
    interface Conversion {
        double toColumn(double value, double temperature, double salinity);
    }

    static SpeltUnit spelt(Needs needs, Conversion conversion, String... spellings) {
        return new SpeltUnit(List.of(spellings), needs, conversion);
    }

    /** A unit that is the column's times a factor. */
    static SpeltUnit times(double factor, String... spellings) {
        return spelt(Needs.NOTHING, (value, t, s) -> value * factor, spellings);
    }

    String usual() {
        return spellings.get(0);
    }
}
