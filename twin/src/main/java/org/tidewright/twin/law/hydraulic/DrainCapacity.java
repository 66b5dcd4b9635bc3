package org.tidewright.twin.law.hydraulic;

import org.tidewright.seawater.unit.Unit;

/**
 * What a drain can carry at the head it has, limit by limit.
 *
 * @param entry what its mouth takes
 * @param pipe what its pipe passes when full
 * @param quietAnnular above which a vented drain grows loud
 * @source the least limit rules; see {@link DrainMouth}, {@link FullSiphon}, {@link VentedDrain}
 */
public record DrainCapacity(
        @Unit("m^3/s") double entry,
        @Unit("m^3/s") double pipe,
        @Unit("m^3/s") double quietAnnular) {
    /** The limit that rules. */
    public enum Limit {
        ENTRY,
        PIPE,
        ANNULAR
    }

    /**
     * Limits of a drain with an upright open mouth.
     *
     * @param mouthHead water over the mouth's lip
     * @param drop from the surface over the mouth to the sump's surface or the free outlet
     * @param drain with entry, fittings and exit in its loss sum; its mouth has the run's bore
     * @param kinematicViscosity of the water
     */
    public static DrainCapacity of(
            @Unit("m") double mouthHead,
            @Unit("m") double drop,
            PipeRun drain,
            @Unit("m^2/s") double kinematicViscosity) {
        return new DrainCapacity(
                new DrainMouth(drain.bore()).flow(mouthHead),
                FullSiphon.capacity(drain, drop, kinematicViscosity),
                VentedDrain.annularLimit(drain.bore()));
    }

    /** Most the drain can carry, loud or not. */
    @Unit("m^3/s")
    public double carried() {
        return Math.min(entry, pipe);
    }

    /** Most a vented drain carries quietly. */
    @Unit("m^3/s")
    public double quiet() {
        return Math.min(carried(), quietAnnular);
    }

    /** Which limit makes {@link #quiet}. */
    public Limit limitedBy() {
        if (quietAnnular <= carried()) {
            return Limit.ANNULAR;
        }
        return pipe <= entry ? Limit.PIPE : Limit.ENTRY;
    }
}
