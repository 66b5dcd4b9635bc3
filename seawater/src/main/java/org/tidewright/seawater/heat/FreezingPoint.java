package org.tidewright.seawater.heat;

import org.tidewright.seawater.density.Teos10;
import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.range.FittedRange;
import org.tidewright.seawater.unit.TemperatureScale;
import org.tidewright.seawater.unit.Unit;

/** Where seawater begins to freeze: what stored salt water and a tank in a cold room must stay above. */
public final class FreezingPoint {
    /** The salinities of the measurements of 1978; they were made at the freezing point itself. */
    public static final FittedRange FIT = new FittedRange(-3, 0, 4, 40);

    /** Difference in entropy of water and ice, near enough for a first step, in J/(kg K). */
    private static final double ENTROPY_OF_MELTING = 1220;

    private static final int MOST_STEPS = 20;

    private FreezingPoint() {}

    /**
     * Freezing point of air-saturated seawater at one atmosphere.
     *
     * <pre>t_f = -0.0575 S + 1.710523e-3 S^(3/2) - 2.154996e-4 S^2</pre>
     *
     * on IPTS-68, converted.
     *
     * @param practicalSalinity PSS-78
     * @return temperature, ITS-90
     * @source Millero 1978 in UNESCO 1983, Tech. Pap. Mar. Sci. 44
     * @validity S 4 to 40: {@link #FIT}; 0.003 degC of the measurements, from memory
     * @checkvalue S 35: -1.922 degC on IPTS-68
     */
    @Unit("degC")
    public static double ofSeawater(@Unit("1") double practicalSalinity) {
        Bounds.practicalSalinity(practicalSalinity);
        double s = practicalSalinity;
        return TemperatureScale.fromIpts68(s * (-0.0575 + 1.710523e-3 * Math.sqrt(s) - 2.154996e-4 * s));
    }

    /**
     * Freezing point of seawater without dissolved air at one atmosphere by TEOS-10: where ice and the water in
     * seawater have one chemical potential. Found by secants.
     *
     * <pre>mu_w(S, t_f) = g_ice(t_f)</pre>
     *
     * @param practicalSalinity PSS-78
     * @return temperature, ITS-90
     * @source IOC, SCOR and IAPSO 2010, Manuals and Guides 56, section 3.33; ice Feistel and Wagner 2006, J. Phys.
     *     Chem. Ref. Data 35, 1021-1047 (doi 10.1063/1.2183324), IAPWS R10-06
     * @validity S 0 to 42, and beyond it as {@link Teos10#density}
     */
    @Unit("degC")
    public static double airFree(@Unit("1") double practicalSalinity) {
        Bounds.practicalSalinity(practicalSalinity);
        double before = -0.0575 * practicalSalinity;
        double excessBefore = meltingExcess(before, practicalSalinity);
        double t = before - excessBefore / ENTROPY_OF_MELTING;
        for (int step = 0; step < MOST_STEPS && Math.abs(t - before) > 1e-12; step++) {
            double excess = meltingExcess(t, practicalSalinity);
            double next = t - excess * (t - before) / (excess - excessBefore);
            before = t;
            excessBefore = excess;
            t = next;
        }
        return t;
    }

    /**
     * Freezing point of seawater saturated with air at one atmosphere by TEOS-10.
     *
     * <pre>t_f = t_f(air-free) - (2.4 - S / 70) mK</pre>
     *
     * @param practicalSalinity PSS-78
     * @return temperature, ITS-90
     * @source as {@link #airFree}; the lowering by dissolved air as in the TEOS-10 toolbox
     * @validity as {@link #airFree}
     */
    @Unit("degC")
    public static double airSaturated(@Unit("1") double practicalSalinity) {
        return airFree(practicalSalinity) - 1e-3 * (2.4 - practicalSalinity / 70);
    }

    /** Above 0 where ice melts into the water, which is then warmer than its freezing point; in J/kg. */
    private static double meltingExcess(double temperature, double practicalSalinity) {
        return IceGibbsFunction.value(temperature) - Teos10.chemicalPotentialOfWater(temperature, practicalSalinity);
    }
}
