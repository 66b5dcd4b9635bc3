package org.tidewright.twin.law.power;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/** A lead-acid battery gives less the faster it is emptied. */
public final class Peukert {
    /** Sealed glass-mat lead-acid; from memory. */
    @Unit("1")
    public static final double SEALED = 1.10;

    /** Flooded lead-acid; from memory. */
    @Unit("1")
    public static final double FLOODED = 1.25;

    /** Lithium iron phosphate, which hardly cares; from memory. */
    @Unit("1")
    public static final double LITHIUM = 1.03;

    private Peukert() {}

    /**
     * Time to empty a battery at a constant current.
     *
     * <pre>t = H (C / (I H))^k</pre>
     *
     * @param capacity C, printed for the rated time
     * @param ratedTime H for which the capacity holds, usually 20 h
     * @param current I drawn
     * @param exponent k, {@link #SEALED}, {@link #FLOODED} or {@link #LITHIUM}
     * @return time until empty; times the share that may be drawn, until then
     * @source Peukert 1897, Elektrotech. Z. 20; form with the rated time
     * @validity currents from the rated one to some ten times that, near 25 degC
     */
    @Unit("s")
    public static double runTime(
            @Unit("C") double capacity,
            @Unit("s") double ratedTime,
            @Unit("A") double current,
            @Unit("1") double exponent) {
        Bounds.within(capacity, "C", 0, 1e9, "capacity");
        Bounds.within(ratedTime, "s", 1, 1e7, "rated time");
        Bounds.within(current, "A", 1e-6, 1e5, "current");
        Bounds.within(exponent, "1", 1, 2, "Peukert exponent");
        return ratedTime * Math.pow(capacity / (current * ratedTime), exponent);
    }
}
