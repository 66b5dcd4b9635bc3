package org.tidewright.twin.law.carbonate;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/** Water saturated with calcium hydroxide. */
public final class Limewater {
    private Limewater() {}

    /**
     * Alkalinity of saturated limewater; half as much calcium.
     *
     * <pre>A = 2 0.0203 mol/L e^(-0.0072 (T - 25 degC))</pre>
     *
     * @param temperature T, ITS-90
     * @return charge per volume
     * @source 0.0203 mol/L at 25 degC: Bates, Bower and Smith 1956, J. Res. NBS 56, 305; slope of -0.7 % per kelvin from
     *     handbook tables, from memory
     * @validity 0 to 40 degC, clear and settled
     */
    @Unit("mol/m^3")
    public static double alkalinity(@Unit("degC") double temperature) {
        Bounds.waterTemperature(temperature);
        return 40.6 * Math.exp(-0.0072 * (temperature - 25));
    }
}
