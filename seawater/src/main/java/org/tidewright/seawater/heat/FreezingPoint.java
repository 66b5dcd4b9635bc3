package org.tidewright.seawater.heat;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.range.FittedRange;
import org.tidewright.seawater.unit.TemperatureScale;
import org.tidewright.seawater.unit.Unit;

/** Where seawater begins to freeze: what stored salt water and a tank in a cold room must stay above. */
public final class FreezingPoint {
    /** The salinities of the measurements; they were made at the freezing point itself. */
    public static final FittedRange FIT = new FittedRange(-3, 0, 4, 40);

    private FreezingPoint() {}

    /**
     * Freezing point of air-saturated seawater at one atmosphere.
     *
     * <pre>t_f = -0.0575 S + 1.710523e-3 S^(3/2) - 2.154996e-4 S^2</pre>
     *
     * on IPTS-68, converted.
     *
     * @param practicalSalinity PSS-78
     * @return temperature, ITS-90
     * @source Millero 1978 in UNESCO 1983, Tech. Pap. Mar. Sci. 44
     * @validity S 4 to 40: {@link #FIT}; 0.003 degC of the measurements, from memory
     * @checkvalue S 35: -1.922 degC on IPTS-68
     */
    @Unit("degC")
    public static double ofSeawater(@Unit("1") double practicalSalinity) {
        Bounds.practicalSalinity(practicalSalinity);
        double s = practicalSalinity;
        return TemperatureScale.fromIpts68(s * (-0.0575 + 1.710523e-3 * Math.sqrt(s) - 2.154996e-4 * s));
    }
}
