package org.tidewright.twin.system;

import org.tidewright.seawater.unit.Unit;

/** Organic matter as the three elements the twin follows. */
public record Ration(
        @Unit("mol") double carbon,
        @Unit("mol") double nitrogen,
        @Unit("mol") double phosphorus) {
    /** Nothing. */
    public static final Ration NONE = new Ration(0, 0, 0);

    public Ration plus(Ration other) {
        return new Ration(carbon + other.carbon, nitrogen + other.nitrogen, phosphorus + other.phosphorus);
    }

    public Ration times(@Unit("1") double factor) {
        return new Ration(factor * carbon, factor * nitrogen, factor * phosphorus);
    }
}
