package org.tidewright.seawater.carbonate;

import org.tidewright.seawater.range.FittedRange;
import org.tidewright.seawater.unit.Unit;

/** Dissociation of bisulfate, HSO4- = SO4-- + H+: what stands between the free and the total pH scale. */
public final class Bisulfate {
    /** The range of the measurements behind the equation. */
    public static final FittedRange FIT = new FittedRange(0, 45, 5, 45);

    private Bisulfate() {}

    /**
     * Dissociation constant on the free scale.
     *
     * <pre>
     * ln KS = -4276.1/T + 141.328 - 23.093 ln T + (-13856/T + 324.57 - 47.986 ln T) I^0.5
     *         + (35474/T - 771.54 + 114.723 ln T) I - 2698/T I^1.5 + 1776/T I^2 + ln(1 - 0.001005 S)
     * </pre>
     *
     * with I the ionic strength, 19.924 S / (1000 - 1.005 S).
     *
     * @param temperature ITS-90
     * @param practicalSalinity PSS-78
     * @return KS per kilogram of seawater
     * @source Dickson 1990, J. Chem. Thermodyn. 22, 113-127, doi 10.1016/0021-9614(90)90074-Z
     * @validity 0 to 45 degC, S 5 to 45: {@link #FIT}
     * @checkvalue S = 35, 25 degC: ln KS = -2.30 (Dickson, Sabine and Christian 2007, ch. 5)
     */
    @Unit("mol/kg")
    public static double dissociation(@Unit("degC") double temperature, @Unit("1") double practicalSalinity) {
        return Math.exp(lnK(Conditions.at(temperature, practicalSalinity)));
    }

    static double lnK(Conditions c) {
        return lnKPerWater(c) + Math.log(c.waterShare);
    }

    /** The constant per kilogram of water: the factor to seawater is left to the caller who has it without a log. */
    static double lnKPerWater(Conditions c) {
        double a = -13856 * c.perKelvin + 324.57 - 47.986 * c.lnKelvin;
        double b = 35474 * c.perKelvin - 771.54 + 114.723 * c.lnKelvin;
        return -4276.1 * c.perKelvin
                + 141.328
                - 23.093 * c.lnKelvin
                + a * c.rootIonic
                + c.ionic * (b + c.perKelvin * (-2698 * c.rootIonic + 1776 * c.ionic));
    }
}
