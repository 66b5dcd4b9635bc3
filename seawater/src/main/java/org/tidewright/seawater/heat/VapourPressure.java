package org.tidewright.seawater.heat;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.range.FittedRange;
import org.tidewright.seawater.unit.TemperatureScale;
import org.tidewright.seawater.unit.Unit;

/** Saturation pressure of water vapour over pure water and over seawater. */
public final class VapourPressure {
    /** The range of the osmotic coefficients behind the correction for salt. */
    public static final FittedRange FIT = new FittedRange(0, 40, 0, 40);

    private static final double CRITICAL_TEMPERATURE = 647.096; // K
    private static final double CRITICAL_PRESSURE = 22.064e6; // Pa

    private VapourPressure() {}

    /**
     * Saturation vapour pressure of pure water.
     *
     * <pre>
     * ln(p/pc) = (Tc/T) (a1 tau + a2 tau^1.5 + a3 tau^3 + a4 tau^3.5 + a5 tau^4 + a6 tau^7.5),  tau = 1 - T/Tc
     * a = -7.85951783, 1.84408259, -11.7866497, 22.6807411, -15.9618719, 1.80122502
     * </pre>
     *
     * @param temperature ITS-90; below the triple point the value is that of supercooled water, not of ice
     * @return pressure of saturated vapour
     * @source Wagner and Pruss 1993, J. Phys. Chem. Ref. Data 22, 783-787 (doi 10.1063/1.555926), eq. 1; IAPWS
     *     SR1-86(1992)
     * @validity 0.01 degC to the critical point; 0.023 % from IAPWS-95 between 0 and 40 degC
     */
    @Unit("Pa")
    public static double ofPureWater(@Unit("degC") double temperature) {
        Bounds.within(temperature, "degC", -40, 110, "temperature");
        double kelvin = TemperatureScale.kelvin(temperature);
        double tau = 1 - kelvin / CRITICAL_TEMPERATURE;
        double root = Math.sqrt(tau);
        double cube = tau * tau * tau;
        double sum = -7.85951783 * tau
                + 1.84408259 * tau * root
                - 11.7866497 * cube
                + 22.6807411 * cube * root
                - 15.9618719 * cube * tau
                + 1.80122502 * cube * cube * tau * root;
        return CRITICAL_PRESSURE * Math.exp(sum * CRITICAL_TEMPERATURE / kelvin);
    }

    /**
     * Saturation vapour pressure over seawater: that of pure water, lowered by the salt (1.9 % at S = 35).
     *
     * <pre>
     * p = p_water exp(-0.018 phi m),  m = 31.998 S / (1000 - 1.005 S)
     * phi = 0.90799 - 0.08992 (m/2) + 0.18458 (m/2)^2 - 0.07395 (m/2)^3 - 0.00221 (m/2)^4
     * </pre>
     *
     * m is the total molality of dissolved particles, phi the osmotic coefficient of seawater at 25 degC (Millero
     * 1974).
     *
     * @param temperature ITS-90
     * @param practicalSalinity PSS-78
     * @return pressure of saturated vapour
     * @source Dickson, Sabine and Christian 2007, PICES Special Publication 3, ch. 5, vapour pressure of seawater
     * @validity S 0 to 40, 0 to 40 degC: {@link #FIT}; 0.031 % from TEOS-10 there
     * @checkvalue S = 35, 25 degC: 0.0307 atm
     */
    @Unit("Pa")
    public static double ofSeawater(@Unit("degC") double temperature, @Unit("1") double practicalSalinity) {
        return ofPureWater(temperature) * loweringBySalt(practicalSalinity);
    }

    private static double loweringBySalt(double practicalSalinity) {
        Bounds.practicalSalinity(practicalSalinity);
        double m = 31.998 * practicalSalinity / (1000 - 1.005 * practicalSalinity);
        double half = m / 2;
        double phi = 0.90799 + half * (-0.08992 + half * (0.18458 + half * (-0.07395 + half * -0.00221)));
        return Math.exp(-0.018 * phi * m);
    }
}
