package org.tidewright.seawater.transport;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.range.FittedRange;
import org.tidewright.seawater.unit.TemperatureScale;
import org.tidewright.seawater.unit.Unit;

/** How readily seawater conducts heat, at one atmosphere. Salt lowers it by a quarter of a per cent at S = 35. */
public final class ThermalConductivity {
    /** The range of the measurements behind the equation. */
    public static final FittedRange FIT = new FittedRange(0, 180, 0, 160);

    private ThermalConductivity() {}

    /**
     * Thermal conductivity of seawater.
     *
     * <pre>
     * log10 k = log10(240 + 0.0002 S) + 0.434 [2.3 - (343.5 + 0.037 S) / T] [1 - T / (647.3 + 0.03 S)]^(1/3)
     * T = t + 273.15
     * </pre>
     *
     * with k in mW/(m K) and t on IPTS-68.
     *
     * @param temperature ITS-90
     * @param practicalSalinity PSS-78
     * @return thermal conductivity
     * @source Jamieson and Tudhope 1970, Desalination 8, 393-401, in the form of Sharqawy, Lienhard and Zubair 2010,
     *     Desalin. Water Treat. 16, 354-380 (doi 10.5004/dwt.2010.1079)
     * @validity 0 to 180 degC, S 0 to 160: {@link #FIT}; 3 %. Against IAPWS it is 3.3 % high at 0 degC, 1 % at 25 degC
     */
    @Unit("W/(m*K)")
    public static double ofSeawater(@Unit("degC") double temperature, @Unit("1") double practicalSalinity) {
        Bounds.waterTemperature(temperature);
        Bounds.practicalSalinity(practicalSalinity);
        double kelvin = TemperatureScale.kelvin(TemperatureScale.ipts68(temperature));
        double s = practicalSalinity;
        double rise = 0.434 * (2.3 - (343.5 + 0.037 * s) / kelvin) * Math.cbrt(1 - kelvin / (647.3 + 0.03 * s));
        return 1e-3 * (240 + 0.0002 * s) * Math.pow(10, rise);
    }
}
