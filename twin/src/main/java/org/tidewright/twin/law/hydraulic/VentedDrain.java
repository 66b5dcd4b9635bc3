package org.tidewright.twin.law.hydraulic;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Gravity;
import org.tidewright.seawater.unit.Unit;

/** A drain that carries air with its water: the limits below which it is quiet. */
public final class VentedDrain {
    /** Filled share of a stack in drainage practice, greatest; from memory: 1/4 to 7/24. */
    @Unit("1")
    public static final double USUAL_FILL = 7.0 / 24;

    /** Roughness the annular law is written with. */
    @Unit("m")
    public static final double STACK_ROUGHNESS = 0.25e-3;

    private static final double MILLIMETRES = 1e3;
    private static final double CUBIC_METRES = 1e-3;

    private VentedDrain() {}

    /**
     * Flow a vertical pipe carries as a ring on its wall round a core of air. Above it the pressure swings begin: a
     * quiet limit, not the most the pipe can pass.
     *
     * <pre>Q = 2.5e-4 k_b^(-1/6) d^(8/3) f^(5/3)      Q in L/s, d and k_b in mm</pre>
     *
     * @param bore d
     * @param fill f, share of the bore's area that is water; {@link #USUAL_FILL}
     * @param roughness k_b; {@link #STACK_ROUGHNESS}
     * @source Wyly and Eaton 1961, NBS Monograph 31, in the form of EN 12056-3
     * @validity f 0.20 to 0.33; a stack long enough to reach its terminal speed (a few metres)
     * @checkvalue d = 25 mm, f = 7/24: 2.159e-4 m^3/s (777.3 L/h); the form of US plumbing codes gives 776.4 L/h
     */
    @Unit("m^3/s")
    public static double annularLimit(@Unit("m") double bore, @Unit("1") double fill, @Unit("m") double roughness) {
        Bounds.positive(bore, "m", "bore");
        Bounds.within(fill, "1", 0, 1, "filled share of the stack");
        Bounds.positive(roughness, "m", "roughness of the stack");
        double litresPerSecond = 2.5e-4
                * Math.pow(roughness * MILLIMETRES, -1.0 / 6)
                * Math.pow(bore * MILLIMETRES, 8.0 / 3)
                * Math.pow(fill, 5.0 / 3);
        return litresPerSecond * CUBIC_METRES;
    }

    /**
     * {@link #annularLimit(double, double, double)} with the usual fill and roughness.
     *
     * @source Wyly and Eaton 1961, NBS Monograph 31, in the form of EN 12056-3
     */
    @Unit("m^3/s")
    public static double annularLimit(@Unit("m") double bore) {
        return annularLimit(bore, USUAL_FILL, STACK_ROUGHNESS);
    }

    /**
     * Greatest flow at which a pipe frees its own air and runs silent.
     *
     * <pre>Q = Fr sqrt(g d) (pi/4) d^2,  Fr = 0.3</pre>
     *
     * @param bore d
     * @source rule of process piping (from memory)
     * @checkvalue d = 40 mm: 850 L/h
     */
    @Unit("m^3/s")
    public static double selfVentingLimit(@Unit("m") double bore) {
        Bounds.positive(bore, "m", "bore");
        double speed = PipeFroude.SELF_VENTING_BELOW * Math.sqrt(Gravity.STANDARD * bore);
        return speed * Math.PI / 4 * bore * bore;
    }
}
