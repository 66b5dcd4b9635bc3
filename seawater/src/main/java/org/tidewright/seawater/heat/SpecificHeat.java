package org.tidewright.seawater.heat;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.range.FittedRange;
import org.tidewright.seawater.unit.TemperatureScale;
import org.tidewright.seawater.unit.Unit;

/**
 * Specific heat of seawater at constant pressure, at one atmosphere. Differs from TEOS-10 by at most 4.5 J/(kg K) at
 * practical salinities 5 to 42 and 0 to 40 degC.
 */
public final class SpecificHeat {
    /** The range of the measurements behind the equation. */
    public static final FittedRange FIT = new FittedRange(0, 35, 0, 40);

    private SpecificHeat() {}

    /**
     * Specific heat of seawater.
     *
     * <pre>
     * cp = cp0 + A S + B S^(3/2)
     * cp0 = 4217.4 - 3.720283 t + 0.1412855 t^2 - 2.654387e-3 t^3 + 2.093236e-5 t^4
     * A = -7.643575 + 0.1072763 t - 1.38385e-3 t^2
     * B = 0.1770383 - 4.07718e-3 t + 5.148e-5 t^2
     * </pre>
     *
     * with t on IPTS-68. (The first term of A is -7.64357 in some transcriptions; -7.643575 is the one that goes with
     * the published check values' program. The difference is 2e-4 J/(kg K).)
     *
     * @param temperature in-situ temperature, ITS-90
     * @param practicalSalinity PSS-78
     * @return specific heat, per kilogram of seawater
     * @source Millero, Perron and Desnoyers 1973, J. Geophys. Res. 78, 4499-4507 (doi 10.1029/JC078i021p04499); UNESCO
     *     1983, Tech. Pap. Mar. Sci. 44, specific heat at zero pressure
     * @validity 0 to 35 degC, S 0 to 40: {@link #FIT}; standard error 0.5 J/(kg K)
     * @checkvalue S = 35, 30 degC on IPTS-68: 4000.7 J/(kg K)
     */
    @Unit("J/(kg*K)")
    public static double ofSeawater(@Unit("degC") double temperature, @Unit("1") double practicalSalinity) {
        Bounds.waterTemperature(temperature);
        Bounds.practicalSalinity(practicalSalinity);
        double t = TemperatureScale.ipts68(temperature);
        double s = practicalSalinity;
        double cp0 = 4217.4 + t * (-3.720283 + t * (0.1412855 + t * (-2.654387e-3 + t * 2.093236e-5)));
        double a = -7.643575 + t * (0.1072763 + t * -1.38385e-3);
        double b = 0.1770383 + t * (-4.07718e-3 + t * 5.148e-5);
        return cp0 + s * (a + b * Math.sqrt(s));
    }
}
