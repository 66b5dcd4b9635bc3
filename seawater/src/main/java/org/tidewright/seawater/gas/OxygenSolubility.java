package org.tidewright.seawater.gas;

import org.tidewright.seawater.density.Density;
import org.tidewright.seawater.heat.MoistAir;
import org.tidewright.seawater.heat.VapourPressure;
import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.range.FittedRange;
import org.tidewright.seawater.unit.TemperatureScale;
import org.tidewright.seawater.unit.Unit;

/**
 * Oxygen that seawater holds at equilibrium with air saturated with water vapour, as the air in contact with water is,
 * however dry the room: see {@link OxygenPressure}.
 */
public final class OxygenSolubility {
    /** The range of the measurements behind the equation. */
    public static final FittedRange FIT = new FittedRange(-2, 40, 0, 42);

    private OxygenSolubility() {}

    /**
     * Oxygen at saturation per mass of seawater, total pressure one atmosphere.
     *
     * <pre>
     * ln C = A0 + A1 Ts + A2 Ts^2 + A3 Ts^3 + A4 Ts^4 + A5 Ts^5 + S (B0 + B1 Ts + B2 Ts^2 + B3 Ts^3) + C0 S^2
     * Ts = ln[(298.15 - t) / (273.15 + t)]
     * A = 5.80871, 3.20291, 4.17887, 5.10006, -9.86643e-2, 3.80369
     * B = -7.01577e-3, -7.70028e-3, -1.13864e-2, -9.51519e-3;  C0 = -2.75915e-7
     * </pre>
     *
     * with t on IPTS-68. These are the coefficients fitted to the measurements of Benson and Krause, which the authors
     * recommend over their own combined fit.
     *
     * @param temperature in-situ temperature, ITS-90
     * @param practicalSalinity PSS-78
     * @return micromoles of O2 per kilogram of seawater
     * @source Garcia and Gordon 1992, Limnol. Oceanogr. 37, 1307-1312 (doi 10.4319/lo.1992.37.6.1307), eq. 8, table 1
     *     (erratum 1993: there is no A3 Ts^2 term)
     * @validity freezing point to 40 degC, S 0 to 42: {@link #FIT}
     * @checkvalue S = 35, 10 degC on IPTS-68: 274.610 umol/kg
     */
    @Unit("umol/kg")
    public static double perMass(@Unit("degC") double temperature, @Unit("1") double practicalSalinity) {
        Bounds.waterTemperature(temperature);
        Bounds.practicalSalinity(practicalSalinity);
        double t = TemperatureScale.ipts68(temperature);
        double s = practicalSalinity;
        double ts = Math.log((298.15 - t) / (273.15 + t));
        double ofWater = 5.80871 + ts * (3.20291 + ts * (4.17887 + ts * (5.10006 + ts * (-9.86643e-2 + ts * 3.80369))));
        double ofSalt = -7.01577e-3 + ts * (-7.70028e-3 + ts * (-1.13864e-2 + ts * -9.51519e-3));
        return Math.exp(ofWater + s * (ofSalt + s * -2.75915e-7));
    }

    /**
     * Oxygen at saturation per volume of seawater, total pressure one atmosphere.
     *
     * @param temperature in-situ temperature, ITS-90
     * @param practicalSalinity PSS-78
     * @return moles of O2 per cubic metre of seawater
     * @source {@link #perMass} times EOS-80 density
     * @validity as {@link #perMass}
     */
    @Unit("mol/m^3")
    public static double perVolume(@Unit("degC") double temperature, @Unit("1") double practicalSalinity) {
        return 1e-6 * perMass(temperature, practicalSalinity) * Density.ofSeawater(temperature, practicalSalinity);
    }

    /**
     * Oxygen at saturation per volume of seawater under a given barometric pressure.
     *
     * @param temperature in-situ temperature, ITS-90
     * @param practicalSalinity PSS-78
     * @param pressure total pressure of the air at the water, not reduced to sea level
     * @return moles of O2 per cubic metre of seawater
     * @source {@link #perVolume(double, double)} times {@link #pressureFactor}
     * @validity as both
     */
    @Unit("mol/m^3")
    public static double perVolume(
            @Unit("degC") double temperature, @Unit("1") double practicalSalinity, @Unit("Pa") double pressure) {
        return perVolume(temperature, practicalSalinity) * pressureFactor(temperature, practicalSalinity, pressure);
    }

    /**
     * Oxygen at saturation in the unit of the trade, total pressure one atmosphere.
     *
     * @param temperature in-situ temperature, ITS-90
     * @param practicalSalinity PSS-78
     * @return milligrams of O2 per litre of seawater
     * @source {@link #perVolume(double, double)} times the {@linkplain MolarMass#OXYGEN molar mass}
     * @validity as {@link #perMass}
     */
    @Unit("mg/L")
    public static double massPerVolume(@Unit("degC") double temperature, @Unit("1") double practicalSalinity) {
        return 1000 * MolarMass.OXYGEN * perVolume(temperature, practicalSalinity);
    }

    /**
     * What a barometric pressure other than one atmosphere multiplies the solubility by: the share of oxygen in dry air
     * is the same everywhere, but the vapour takes its part of the pressure first.
     *
     * <pre>f = (p - p_w) / (101325 Pa - p_w)</pre>
     *
     * with p_w the vapour pressure over the water. The gas's departure from the ideal, left out here, is 0.01 % at 85
     * kPa.
     *
     * @param temperature in-situ temperature, ITS-90
     * @param practicalSalinity PSS-78
     * @param pressure total pressure of the air at the water, above the vapour pressure
     * @return factor on any of the solubilities, 1 at one atmosphere
     * @source Benson and Krause 1984, Limnol. Oceanogr. 29, 620-632 (doi 10.4319/lo.1984.29.3.0620), eq. 24 without its
     *     second-order term
     * @validity 50 to 110 kPa
     */
    @Unit("1")
    public static double pressureFactor(
            @Unit("degC") double temperature, @Unit("1") double practicalSalinity, @Unit("Pa") double pressure) {
        Bounds.within(pressure, "Pa", 20_000, 200_000, "air pressure");
        double vapour = VapourPressure.ofSeawater(temperature, practicalSalinity);
        return (pressure - vapour) / (MoistAir.STANDARD_PRESSURE - vapour);
    }
}
