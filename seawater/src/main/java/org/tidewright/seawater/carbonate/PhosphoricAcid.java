package org.tidewright.seawater.carbonate;

import org.tidewright.seawater.range.FittedRange;
import org.tidewright.seawater.unit.Unit;

/**
 * The three dissociations of phosphoric acid, on the total scale: the seawater scale of the source, converted exactly.
 * (The handbook instead lowers the first terms by 0.015, which gives 0.7 % more.)
 */
public final class PhosphoricAcid {
    /** The range of the measurements behind the equations. */
    public static final FittedRange FIT = new FittedRange(0, 45, 0, 45);

    private PhosphoricAcid() {}

    /**
     * KP1 = [H+][H2PO4-] / [H3PO4].
     *
     * <pre>
     * ln KP1 = -4576.752/T + 115.54 - 18.453 ln T + (-106.736/T + 0.69171) S^0.5 + (-0.65643/T - 0.01844) S
     * </pre>
     *
     * @param temperature ITS-90
     * @param practicalSalinity PSS-78
     * @return KP1 per kilogram of seawater
     * @source Yao and Millero 1995, Aquat. Geochem. 1, 53-88, doi 10.1007/BF01025231; Millero 1995, Geochim.
     *     Cosmochim. Acta 59, 661-677
     * @validity 0 to 45 degC, S 0 to 45: {@link #FIT}
     * @checkvalue S = 35, 25 degC: ln KP1 = -3.71 with the handbook's first term
     */
    @Unit("mol/kg")
    public static double first(@Unit("degC") double temperature, @Unit("1") double practicalSalinity) {
        Conditions c = Conditions.at(temperature, practicalSalinity);
        return Math.exp(lnK1SeawaterScale(c)) * PhScale.SEAWATER.toTotal(c);
    }

    /**
     * KP2 = [H+][HPO4--] / [H2PO4-].
     *
     * <pre>
     * ln KP2 = -8814.715/T + 172.1033 - 27.927 ln T + (-160.34/T + 1.3566) S^0.5 + (0.37335/T - 0.05778) S
     * </pre>
     *
     * @param temperature ITS-90
     * @param practicalSalinity PSS-78
     * @return KP2 per kilogram of seawater
     * @source as {@link #first}
     * @validity as {@link #first}
     * @checkvalue S = 35, 25 degC: ln KP2 = -13.727 with the handbook's first term
     */
    @Unit("mol/kg")
    public static double second(@Unit("degC") double temperature, @Unit("1") double practicalSalinity) {
        Conditions c = Conditions.at(temperature, practicalSalinity);
        return Math.exp(lnK2SeawaterScale(c)) * PhScale.SEAWATER.toTotal(c);
    }

    /**
     * KP3 = [H+][PO4---] / [HPO4--].
     *
     * <pre>
     * ln KP3 = -3070.75/T - 18.126 + (17.27039/T + 2.81197) S^0.5 + (-44.99486/T - 0.09984) S
     * </pre>
     *
     * @param temperature ITS-90
     * @param practicalSalinity PSS-78
     * @return KP3 per kilogram of seawater
     * @source as {@link #first}
     * @validity as {@link #first}
     * @checkvalue S = 35, 25 degC: ln KP3 = -20.24 with the handbook's first term
     */
    @Unit("mol/kg")
    public static double third(@Unit("degC") double temperature, @Unit("1") double practicalSalinity) {
        Conditions c = Conditions.at(temperature, practicalSalinity);
        return Math.exp(lnK3SeawaterScale(c)) * PhScale.SEAWATER.toTotal(c);
    }

    static double lnK1SeawaterScale(Conditions c) {
        return -4576.752 * c.perKelvin
                + 115.54
                - 18.453 * c.lnKelvin
                + c.rootS * (-106.736 * c.perKelvin + 0.69171)
                + c.s * (-0.65643 * c.perKelvin - 0.01844);
    }

    static double lnK2SeawaterScale(Conditions c) {
        return -8814.715 * c.perKelvin
                + 172.1033
                - 27.927 * c.lnKelvin
                + c.rootS * (-160.34 * c.perKelvin + 1.3566)
                + c.s * (0.37335 * c.perKelvin - 0.05778);
    }

    static double lnK3SeawaterScale(Conditions c) {
        return -3070.75 * c.perKelvin
                - 18.126
                + c.rootS * (17.27039 * c.perKelvin + 2.81197)
                + c.s * (-44.99486 * c.perKelvin - 0.09984);
    }
}
