package org.tidewright.seawater.carbonate;

import org.tidewright.seawater.range.FittedRange;
import org.tidewright.seawater.unit.Unit;

/**
 * Solubility products of the two forms of calcium carbonate in seawater. Corals lay down aragonite, coralline algae
 * calcite with magnesium (for which pure calcite is no measure).
 */
public final class CalciumCarbonate {
    /** The range of the measurements behind the equations. */
    public static final FittedRange FIT = new FittedRange(5, 40, 5, 44);

    private static final double LN_10 = Math.log(10);

    private CalciumCarbonate() {}

    /**
     * Solubility product of aragonite, [Ca++][CO3--] at saturation.
     *
     * <pre>
     * log K = -171.945 - 0.077993 T + 2903.293/T + 71.595 log T
     *         + (-0.068393 + 0.0017276 T + 88.135/T) S^0.5 - 0.10018 S + 0.0059415 S^1.5
     * </pre>
     *
     * @param temperature ITS-90
     * @param practicalSalinity PSS-78
     * @return solubility product, per kilogram of seawater
     * @source Mucci 1983, Am. J. Sci. 283, 780-799, doi 10.2475/ajs.283.7.780
     * @validity 5 to 40 degC, S 5 to 44: {@link #FIT}
     * @checkvalue S = 35, 25 degC: log K = -6.1883 (Zeebe and Wolf-Gladrow 2001)
     */
    @Unit("(mol/kg)^2")
    public static double aragonite(@Unit("degC") double temperature, @Unit("1") double practicalSalinity) {
        return Math.exp(lnAragonite(Conditions.at(temperature, practicalSalinity)));
    }

    /**
     * Solubility product of calcite.
     *
     * <pre>
     * log K = -171.9065 - 0.077993 T + 2839.319/T + 71.595 log T
     *         + (-0.77712 + 0.0028426 T + 178.34/T) S^0.5 - 0.07711 S + 0.0041249 S^1.5
     * </pre>
     *
     * @param temperature ITS-90
     * @param practicalSalinity PSS-78
     * @return solubility product, per kilogram of seawater
     * @source as {@link #aragonite}
     * @validity as {@link #aragonite}
     * @checkvalue S = 35, 25 degC: log K = -6.3693 (Zeebe and Wolf-Gladrow 2001)
     */
    @Unit("(mol/kg)^2")
    public static double calcite(@Unit("degC") double temperature, @Unit("1") double practicalSalinity) {
        return Math.exp(lnCalcite(Conditions.at(temperature, practicalSalinity)));
    }

    static double lnAragonite(Conditions c) {
        double log = -171.945
                - 0.077993 * c.kelvin
                + 2903.293 * c.perKelvin
                + c.rootS * (-0.068393 + 0.0017276 * c.kelvin + 88.135 * c.perKelvin)
                + c.s * (-0.10018 + 0.0059415 * c.rootS);
        return LN_10 * log + 71.595 * c.lnKelvin;
    }

    static double lnCalcite(Conditions c) {
        double log = -171.9065
                - 0.077993 * c.kelvin
                + 2839.319 * c.perKelvin
                + c.rootS * (-0.77712 + 0.0028426 * c.kelvin + 178.34 * c.perKelvin)
                + c.s * (-0.07711 + 0.0041249 * c.rootS);
        return LN_10 * log + 71.595 * c.lnKelvin;
    }
}
