package org.tidewright.seawater.gas;

import org.tidewright.seawater.heat.MoistAir;
import org.tidewright.seawater.heat.VapourPressure;
import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.range.FittedRange;
import org.tidewright.seawater.unit.TemperatureScale;
import org.tidewright.seawater.unit.Unit;

/**
 * Carbon dioxide between air and seawater. What a meter shows, ppm, is the share of the dry air; what the water answers
 * to is the fugacity: the share times the pressure without vapour, and 0.3 % less for the gas's departure from the ideal.
 */
public final class CarbonDioxide {
    /** The range of the measurements behind the solubility. */
    public static final FittedRange FIT = new FittedRange(-1, 40, 0, 45);

    /** Gas constant, CODATA 2018, in cm^3 bar/(mol K): the unit the virial coefficients are printed for. */
    private static final double GAS_CONSTANT = 83.14462618;

    /** One atmosphere in bar. */
    private static final double ATMOSPHERE = 1.01325;

    private CarbonDioxide() {}

    /**
     * Solubility coefficient K0: dissolved carbon dioxide (CO2 and H2CO3 together) over fugacity.
     *
     * <pre>
     * ln K0 = -60.2409 + 93.4517 (100/T) + 23.3585 ln(T/100)
     *         + S [0.023517 - 0.023656 (T/100) + 0.0047036 (T/100)^2]
     * </pre>
     *
     * @param temperature in-situ temperature, ITS-90
     * @param practicalSalinity PSS-78
     * @return moles per kilogram of seawater and atmosphere of fugacity
     * @source Weiss 1974, Mar. Chem. 2, 203-215, eq. 12, table 1, doi 10.1016/0304-4203(74)90015-2
     * @validity -1 to 40 degC, S 0 to 45: {@link #FIT}; 0.2 %
     * @checkvalue S = 35, 25 degC: ln K0 = -3.5617 (Dickson, Sabine and Christian 2007, ch. 5)
     */
    @Unit("mol/(kg*atm)")
    public static double solubility(@Unit("degC") double temperature, @Unit("1") double practicalSalinity) {
        Bounds.waterTemperature(temperature);
        Bounds.practicalSalinity(practicalSalinity);
        double hundreds = TemperatureScale.kelvin(temperature) / 100;
        double ofWater = -60.2409 + 93.4517 / hundreds + 23.3585 * Math.log(hundreds);
        double ofSalt = 0.023517 + hundreds * (-0.023656 + hundreds * 0.0047036);
        return Math.exp(ofWater + practicalSalinity * ofSalt);
    }

    /**
     * Fugacity over partial pressure, in air at one atmosphere.
     *
     * <pre>
     * f/p = exp[(B + 2 d) P/(R T)]
     * B = -1636.75 + 12.0408 T - 3.27957e-2 T^2 + 3.16528e-5 T^3,  d = 57.7 - 0.118 T, both cm^3/mol
     * </pre>
     *
     * @param temperature ITS-90
     * @return factor, a little below 1
     * @source Weiss 1974, Mar. Chem. 2, 203-215, eq. 6, 9 and 11, the share of CO2 itself neglected
     * @validity -8 to 42 degC, near one atmosphere, little CO2
     * @checkvalue 25 degC: 0.9968
     */
    @Unit("1")
    public static double fugacityFactor(@Unit("degC") double temperature) {
        Bounds.waterTemperature(temperature);
        double kelvin = TemperatureScale.kelvin(temperature);
        double virial = -1636.75 + kelvin * (12.0408 + kelvin * (-3.27957e-2 + kelvin * 3.16528e-5));
        double cross = 57.7 - 0.118 * kelvin;
        return Math.exp((virial + 2 * cross) * ATMOSPHERE / (GAS_CONSTANT * kelvin));
    }

    /**
     * Partial pressure at the water's surface of carbon dioxide that makes a known share of the dry air: the air there
     * is saturated with vapour.
     *
     * <pre>p = x (P - p_w)</pre>
     *
     * @param shareOfDryAir moles per mole of dry air; 420 ppm is 420e-6
     * @param temperature of the water, ITS-90
     * @param practicalSalinity PSS-78
     * @param pressure of the air at the water, not reduced to sea level
     * @return partial pressure
     * @source Dickson, Sabine and Christian 2007, PICES Special Publication 3, SOP 5
     * @validity as {@link VapourPressure#ofSeawater}
     */
    @Unit("atm")
    public static double partialPressure(
            @Unit("1") double shareOfDryAir,
            @Unit("degC") double temperature,
            @Unit("1") double practicalSalinity,
            @Unit("Pa") double pressure) {
        Bounds.within(shareOfDryAir, "1", 0, 1, "share of carbon dioxide", "is it in ppm?");
        return shareOfDryAir * dryPressure(temperature, practicalSalinity, pressure);
    }

    /**
     * Share of the dry air that is in equilibrium with water of a known partial pressure, the inverse of
     * {@link #partialPressure}.
     *
     * @param partialPressure of carbon dioxide
     * @param temperature of the water, ITS-90
     * @param practicalSalinity PSS-78
     * @param pressure of the air at the water, not reduced to sea level
     * @return moles per mole of dry air
     * @source as {@link #partialPressure}
     * @validity as {@link #partialPressure}
     */
    @Unit("1")
    public static double shareOfDryAir(
            @Unit("atm") double partialPressure,
            @Unit("degC") double temperature,
            @Unit("1") double practicalSalinity,
            @Unit("Pa") double pressure) {
        Bounds.notNegative(partialPressure, "atm", "partial pressure of carbon dioxide");
        return partialPressure / dryPressure(temperature, practicalSalinity, pressure);
    }

    private static double dryPressure(double temperature, double practicalSalinity, double pressure) {
        Bounds.within(pressure, "Pa", 20_000, 200_000, "air pressure", "is it in mbar or hPa?");
        double vapour = VapourPressure.ofSeawater(temperature, practicalSalinity);
        return (pressure - vapour) / MoistAir.STANDARD_PRESSURE;
    }
}
