package org.tidewright.seawater.carbonate;

import org.tidewright.seawater.range.FittedRange;
import org.tidewright.seawater.unit.Unit;

/** Self-ionisation of water in seawater, KW = [H+][OH-]. */
public final class WaterIonisation {
    /** The range of the measurements behind the equation. */
    public static final FittedRange FIT = new FittedRange(0, 45, 0, 45);

    private WaterIonisation() {}

    /**
     * Ion product on the total scale: the seawater scale of the source, converted exactly. (The handbook instead takes
     * 148.9652 for the first term, which gives 0.7 % more.)
     *
     * <pre>
     * ln KW = 148.9802 - 13847.26/T - 23.6521 ln T + (-5.977 + 118.67/T + 1.0495 ln T) S^0.5 - 0.01615 S
     * </pre>
     *
     * @param temperature ITS-90
     * @param practicalSalinity PSS-78
     * @return KW per kilogram of seawater, squared
     * @source Millero 1995, Geochim. Cosmochim. Acta 59, 661-677, doi 10.1016/0016-7037(94)00354-O
     * @validity 0 to 45 degC, S 0 to 45: {@link #FIT}
     * @checkvalue S = 35, 25 degC: ln KW = -30.434 with the handbook's first term
     */
    @Unit("(mol/kg)^2")
    public static double product(@Unit("degC") double temperature, @Unit("1") double practicalSalinity) {
        Conditions c = Conditions.at(temperature, practicalSalinity);
        return Math.exp(lnKSeawaterScale(c)) * PhScale.SEAWATER.toTotal(c);
    }

    static double lnKSeawaterScale(Conditions c) {
        return 148.9802
                - 13847.26 * c.perKelvin
                - 23.6521 * c.lnKelvin
                + c.rootS * (-5.977 + 118.67 * c.perKelvin + 1.0495 * c.lnKelvin)
                - 0.01615 * c.s;
    }
}
