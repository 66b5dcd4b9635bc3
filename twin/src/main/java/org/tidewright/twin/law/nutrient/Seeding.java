package org.tidewright.twin.law.nutrient;

import org.tidewright.seawater.unit.Unit;

/**
 * How many nitrifiers come with a surface, as shares of the most it can carry. The trace is a worked example's 0.002 and
 * 0.0005 mg/L a day in a tank with room for 4; seeding multiplies both. An estimate: it may be three times more or less.
 */
public enum Seeding {
    /** What drifts in. */
    TRACE(5e-4, 1.25e-4),
    /** From a bottle, or a handful of gravel of a running tank: twenty times as many. */
    SOME(1e-2, 2.5e-3),
    /** Live rock, or filter media of a running tank: two hundred times as many. */
    RIPE(0.1, 2.5e-2);

    private final double ammoniaOxidisers;
    private final double nitriteOxidisers;

    Seeding(double ammoniaOxidisers, double nitriteOxidisers) {
        this.ammoniaOxidisers = ammoniaOxidisers;
        this.nitriteOxidisers = nitriteOxidisers;
    }

    /**
     * Share of the most ammonia oxidisers.
     *
     * @source this project's own estimate, from a worked example of a start-up; a factor of three either way
     */
    public @Unit("1") double ammoniaOxidisers() {
        return ammoniaOxidisers;
    }

    /**
     * Share of the most nitrite oxidisers.
     *
     * @source likewise
     */
    public @Unit("1") double nitriteOxidisers() {
        return nitriteOxidisers;
    }
}
