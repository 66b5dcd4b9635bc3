package org.tidewright.twin.law.hydraulic;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Gravity;
import org.tidewright.seawater.unit.Unit;

/**
 * How a drain deals with air, by the Froude number of the pipe as if it ran full: v / sqrt(g d).
 *
 * @source rule of process piping (from memory)
 */
public enum PipeFroude {
    /** Air rises against the water: silent. */
    SELF_VENTING,
    /** Neither one nor the other: the pipe gulps, surges and is loud. */
    GULPING,
    /** The water carries the air out: a full siphon starts and stays full. */
    CLEARS_ITS_AIR;

    /** Froude number up to which a drain vents itself. */
    @Unit("1")
    public static final double SELF_VENTING_BELOW = 0.3;

    /** Froude number from which a drain clears its air. */
    @Unit("1")
    public static final double CLEARS_ABOVE = 2;

    /**
     * The pipe-full Froude number.
     *
     * <pre>Fr = v / sqrt(g d)</pre>
     *
     * @param flow in the pipe
     * @param bore d
     * @source definition
     * @checkvalue 2500 L/h in 25 mm: 2.857
     */
    @Unit("1")
    public static double number(@Unit("m^3/s") double flow, @Unit("m") double bore) {
        Bounds.notNegative(flow, "m^3/s", "flow");
        Bounds.positive(bore, "m", "bore");
        return flow / (Math.PI / 4 * bore * bore) / Math.sqrt(Gravity.STANDARD * bore);
    }

    /** What a flow does in a bore. */
    public static PipeFroude at(@Unit("m^3/s") double flow, @Unit("m") double bore) {
        double number = number(flow, bore);
        if (number <= SELF_VENTING_BELOW) {
            return SELF_VENTING;
        }
        return number > CLEARS_ABOVE ? CLEARS_ITS_AIR : GULPING;
    }
}
