package org.tidewright.seawater.density;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.range.FittedRange;
import org.tidewright.seawater.unit.TemperatureScale;
import org.tidewright.seawater.unit.Unit;

/**
 * Density at one atmosphere by the international equation of state of seawater, EOS-80. Differs from today's TEOS-10 by
 * at most 0.009 kg/m^3 at practical salinities 5 to 42 and 0 to 40 degC, 0.006 in the waters of a reef.
 */
public final class Density {
    /** The range of the measurements behind the equation. */
    public static final FittedRange FIT = new FittedRange(-2, 40, 0, 42);

    private Density() {}

    /**
     * Density of seawater at one atmosphere.
     *
     * <pre>
     * rho = rho_w + A S + B S^(3/2) + C S^2
     * A = 0.824493 - 4.0899e-3 t + 7.6438e-5 t^2 - 8.2467e-7 t^3 + 5.3875e-9 t^4
     * B = -5.72466e-3 + 1.0227e-4 t - 1.6546e-6 t^2
     * C = 4.8314e-4
     * </pre>
     *
     * with t on IPTS-68, which is why the given temperature is converted first.
     *
     * @param temperature in-situ temperature, ITS-90
     * @param practicalSalinity PSS-78
     * @return density of the seawater
     * @source Millero and Poisson 1981, Deep-Sea Res. 28A, 625-629 (doi 10.1016/0198-0149(81)90122-9); UNESCO 1983,
     *     Tech. Pap. Mar. Sci. 44, density at zero pressure
     * @validity -2 to 40 degC, S 0 to 42: {@link #FIT}; standard error 0.0036 kg/m^3
     * @checkvalue S = 35, 25 degC on IPTS-68: 1023.34306 kg/m^3
     */
    @Unit("kg/m^3")
    public static double ofSeawater(@Unit("degC") double temperature, @Unit("1") double practicalSalinity) {
        Bounds.practicalSalinity(practicalSalinity);
        double pureWater = ofPureWater(temperature);
        double t = TemperatureScale.ipts68(temperature);
        double s = practicalSalinity;
        double a = 0.824493 + t * (-4.0899e-3 + t * (7.6438e-5 + t * (-8.2467e-7 + t * 5.3875e-9)));
        double b = -5.72466e-3 + t * (1.0227e-4 + t * -1.6546e-6);
        double c = 4.8314e-4;
        return pureWater + s * (a + b * Math.sqrt(s) + c * s);
    }

    /**
     * Density of air-free pure water (standard mean ocean water) at one atmosphere.
     *
     * <pre>
     * rho_w = 999.842594 + 6.793952e-2 t - 9.095290e-3 t^2 + 1.001685e-4 t^3 - 1.120083e-6 t^4 + 6.536332e-9 t^5
     * </pre>
     *
     * with t on IPTS-68.
     *
     * @param temperature ITS-90
     * @return density of the water
     * @source Bigg 1967, Br. J. Appl. Phys. 18, 521-537; UNESCO 1983, Tech. Pap. Mar. Sci. 44, reference pure water
     * @validity 0 to 40 degC
     * @checkvalue 25 degC on IPTS-68: 997.04796 kg/m^3
     */
    @Unit("kg/m^3")
    public static double ofPureWater(@Unit("degC") double temperature) {
        Bounds.waterTemperature(temperature);
        double t = TemperatureScale.ipts68(temperature);
        return 999.842594
                + t * (6.793952e-2 + t * (-9.095290e-3 + t * (1.001685e-4 + t * (-1.120083e-6 + t * 6.536332e-9))));
    }
}
