package org.tidewright.twin.law.gas;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/** How a rate of life rises with temperature. */
public final class Q10 {
    /** Corals, sand and rock; common practice. */
    @Unit("1")
    public static final double COMMUNITY = 2.0;

    /** One fish taken from the temperature it is used to; Clarke and Johnston 1999. */
    @Unit("1")
    public static final double WITHIN_A_FISH_SPECIES = 2.4;

    private Q10() {}

    /**
     * Factor on a rate known at another temperature.
     *
     * <pre>Q10^((T - T_ref) / 10 K)</pre>
     *
     * @param q10 factor for ten kelvin
     * @param temperature at which the rate is wanted, ITS-90
     * @param reference at which it is known, ITS-90
     * @return factor
     * @source definition of Q10
     * @validity some ten kelvin either way, below harm
     */
    @Unit("1")
    public static double factor(
            @Unit("1") double q10, @Unit("degC") double temperature, @Unit("degC") double reference) {
        Bounds.within(q10, "1", 0.5, 10, "Q10");
        Bounds.waterTemperature(temperature);
        Bounds.waterTemperature(reference);
        return Math.exp(Math.log(q10) * (temperature - reference) / 10);
    }
}
