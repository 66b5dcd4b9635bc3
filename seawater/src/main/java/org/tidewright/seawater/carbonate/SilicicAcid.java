package org.tidewright.seawater.carbonate;

import org.tidewright.seawater.range.FittedRange;
import org.tidewright.seawater.unit.Unit;

/** Dissociation of silicic acid, Si(OH)4 = SiO(OH)3- + H+. */
public final class SilicicAcid {
    /** The range of the measurements behind the equation. */
    public static final FittedRange FIT = new FittedRange(0, 45, 0, 45);

    private SilicicAcid() {}

    /**
     * Dissociation constant on the total scale: the seawater scale of the source, converted exactly. (The handbook
     * instead takes 117.385 for 117.4, which gives 0.7 % more.)
     *
     * <pre>
     * ln KSi = -8904.2/T + 117.4 - 19.334 ln T + (-458.79/T + 3.5913) I^0.5 + (188.74/T - 1.5998) I
     *          + (-12.1652/T + 0.07871) I^2 + ln(1 - 0.001005 S)
     * </pre>
     *
     * @param temperature ITS-90
     * @param practicalSalinity PSS-78
     * @return KSi per kilogram of seawater
     * @source Yao and Millero 1995, Aquat. Geochem. 1, 53-88, doi 10.1007/BF01025231; Millero 1995, Geochim.
     *     Cosmochim. Acta 59, 661-677
     * @validity 0 to 45 degC, S 0 to 45: {@link #FIT}
     * @checkvalue S = 35, 25 degC: ln KSi = -21.61 with the handbook's first term
     */
    @Unit("mol/kg")
    public static double dissociation(@Unit("degC") double temperature, @Unit("1") double practicalSalinity) {
        Conditions c = Conditions.at(temperature, practicalSalinity);
        return Math.exp(lnKSeawaterScalePerWater(c)) * c.waterShare * PhScale.SEAWATER.toTotal(c);
    }

    static double lnKSeawaterScalePerWater(Conditions c) {
        return -8904.2 * c.perKelvin
                + 117.4
                - 19.334 * c.lnKelvin
                + c.rootIonic * (-458.79 * c.perKelvin + 3.5913)
                + c.ionic * (188.74 * c.perKelvin - 1.5998 + c.ionic * (-12.1652 * c.perKelvin + 0.07871));
    }
}
