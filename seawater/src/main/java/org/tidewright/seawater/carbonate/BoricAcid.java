package org.tidewright.seawater.carbonate;

import org.tidewright.seawater.range.FittedRange;
import org.tidewright.seawater.unit.Unit;

/** Dissociation of boric acid, B(OH)3 + H2O = B(OH)4- + H+. */
public final class BoricAcid {
    /** The range of the measurements behind the equation. */
    public static final FittedRange FIT = new FittedRange(0, 45, 5, 45);

    private BoricAcid() {}

    /**
     * Dissociation constant on the total scale.
     *
     * <pre>
     * ln KB = (-8966.90 - 2890.53 S^0.5 - 77.942 S + 1.728 S^1.5 - 0.0996 S^2)/T
     *         + 148.0248 + 137.1942 S^0.5 + 1.62142 S
     *         - (24.4344 + 25.085 S^0.5 + 0.2474 S) ln T + 0.053105 S^0.5 T
     * </pre>
     *
     * @param temperature ITS-90
     * @param practicalSalinity PSS-78
     * @return KB per kilogram of seawater
     * @source Dickson 1990, Deep-Sea Res. 37, 755-766, eq. 23, doi 10.1016/0198-0149(90)90004-F
     * @validity 0 to 45 degC, S 5 to 45: {@link #FIT}
     * @checkvalue S = 35, 25 degC: ln KB = -19.7964 (Dickson, Sabine and Christian 2007, ch. 5)
     */
    @Unit("mol/kg")
    public static double dissociation(@Unit("degC") double temperature, @Unit("1") double practicalSalinity) {
        return Math.exp(lnK(Conditions.at(temperature, practicalSalinity)));
    }

    static double lnK(Conditions c) {
        return c.perKelvin
                        * (-8966.90 + c.rootS * (-2890.53 + c.rootS * (-77.942 + c.rootS * (1.728 - c.rootS * 0.0996))))
                + 148.0248
                + c.rootS * (137.1942 + c.rootS * 1.62142)
                - c.lnKelvin * (24.4344 + c.rootS * (25.085 + c.rootS * 0.2474))
                + 0.053105 * c.rootS * c.kelvin;
    }
}
