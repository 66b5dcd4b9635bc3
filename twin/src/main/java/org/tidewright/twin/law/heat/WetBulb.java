package org.tidewright.twin.law.heat;

import org.tidewright.seawater.heat.VapourPressure;
import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/** The temperature below which evaporation cannot cool water, whatever the fan. */
public final class WetBulb {
    private static final double PSYCHROMETER = 6.62e-4; // 1/K, aspirated psychrometer

    private WetBulb() {}

    /**
     * Wet-bulb temperature over seawater; salinity 0 gives that of the psychrometer.
     *
     * <pre>p_s(Tw) - 6.62e-4 p (T - Tw) = p_a</pre>
     *
     * solved for Tw. Over seawater it lies some 0.2 K higher; in air near saturation above the air itself.
     *
     * @param air temperature of the room, ITS-90
     * @param airVapourPressure partial pressure of vapour in the room
     * @param pressure total pressure of the air
     * @param practicalSalinity PSS-78, 0 for fresh water
     * @return temperature of the wet surface
     * @source psychrometer equation, World Meteorological Organization, Guide to Instruments; constant from memory
     * @validity 0 to 40 degC, well aired; the coefficient is taken as constant, which reads 0.1 K low in hot dry air
     */
    @Unit("degC")
    public static double of(
            @Unit("degC") double air,
            @Unit("Pa") double airVapourPressure,
            @Unit("Pa") double pressure,
            @Unit("1") double practicalSalinity) {
        Bounds.within(air, "degC", -20, 60, "air temperature");
        Bounds.within(pressure, "Pa", 20_000, 200_000, "air pressure");
        double saturated = VapourPressure.ofPureWater(air);
        Bounds.within(airVapourPressure, "Pa", 0, saturated, "vapour pressure of the air, up to saturation,");
        double least = -40;
        double most = air + 20;
        // The left-hand side rises with Tw: halve the interval.
        for (int halving = 0; halving < 60; halving++) {
            double middle = (least + most) / 2;
            double vapour = VapourPressure.ofSeawater(middle, practicalSalinity);
            if (vapour - PSYCHROMETER * pressure * (air - middle) < airVapourPressure) {
                least = middle;
            } else {
                most = middle;
            }
        }
        return (least + most) / 2;
    }

    /**
     * Wet-bulb temperature of fresh water by a fit without iteration, to check the other by.
     *
     * <pre>
     * Tw = T atan[0.151977 (RH + 8.313659)^(1/2)] + atan(T + RH) - atan(RH - 1.676331)
     *      + 0.00391838 RH^(3/2) atan(0.023101 RH) - 4.686035,  RH in per cent
     * </pre>
     *
     * @param air temperature of the room, ITS-90
     * @param relativeHumidity as a share
     * @return temperature of the wet surface
     * @source Stull 2011, J. Appl. Meteorol. Climatol. 50, 2267-2269, eq. 1
     * @validity 101.325 kPa, RH 0.05 to 0.99, -20 to 50 degC; -1.0 to +0.65 K
     * @checkvalue 20 degC, 50 %: 13.7 degC
     */
    @Unit("degC")
    public static double stull2011(@Unit("degC") double air, @Unit("1") double relativeHumidity) {
        Bounds.within(air, "degC", -20, 50, "air temperature");
        Bounds.within(relativeHumidity, "1", 0.05, 0.99, "relative humidity");
        double percent = 100 * relativeHumidity;
        return air * Math.atan(0.151977 * Math.sqrt(percent + 8.313659))
                + Math.atan(air + percent)
                - Math.atan(percent - 1.676331)
                + 0.00391838 * percent * Math.sqrt(percent) * Math.atan(0.023101 * percent)
                - 4.686035;
    }
}
