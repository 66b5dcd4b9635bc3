package org.tidewright.twin.law.gas;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.TemperatureScale;
import org.tidewright.seawater.unit.Unit;

/** Oxygen a fish uses. */
public final class FishRespiration {
    /** Swimming about its day, over resting: 1.5 to 3; from memory. */
    @Unit("1")
    public static final double ROUTINE = 2;

    /** The most a fish can use, over resting: 4 to 6; from memory. */
    @Unit("1")
    public static final double UTMOST = 5;

    private static final double MILLIMOLES_PER_HOUR = 1e-3 / 3600; // mol/s
    private static final double REFERENCE_MASS = 0.050; // kg

    private FishRespiration() {}

    /**
     * Resting uptake of a teleost that lives at a temperature.
     *
     * <pre>ln R = 15.7 - 5.02 (1000 / T),  R in mmol O2/h of a 50 g fish;  times (M / 50 g)^0.80</pre>
     *
     * The exponent is disputed (0.63 to 0.89); for fish of 1 to 50 g it matters less than activity does.
     *
     * @param mass M of the fish
     * @param temperature it is used to, ITS-90
     * @return amount per time
     * @source Clarke and Johnston 1999, J. Anim. Ecol. 68, 893-905
     * @validity 69 species, 0 to 30 degC
     * @checkvalue a fish at 30 degC uses about six times as much as one at 0 degC; Q10 between species 1.83
     */
    @Unit("mol/s")
    public static double resting(@Unit("kg") double mass, @Unit("degC") double temperature) {
        Bounds.within(mass, "kg", 0, 1000, "mass of the fish");
        Bounds.waterTemperature(temperature);
        double ofFiftyGrams = Math.exp(15.7 - 5.02 * (1000 / TemperatureScale.kelvin(temperature)));
        return ofFiftyGrams * MILLIMOLES_PER_HOUR * Math.pow(mass / REFERENCE_MASS, 0.80);
    }

    /**
     * Uptake of a fish taken from the temperature it is used to, as in an outage.
     *
     * <pre>R(T) = a R(T_used) 2.4^((T - T_used) / 10 K)</pre>
     *
     * @param mass of the fish
     * @param used temperature it is used to, ITS-90
     * @param temperature now, ITS-90
     * @param activity a, 1 at rest, {@link #ROUTINE}, half as much again to double after a meal
     * @return amount per time
     * @source Clarke and Johnston 1999, within-species Q10 of 2.4
     * @validity as {@link #resting}; below harm
     */
    @Unit("mol/s")
    public static double active(
            @Unit("kg") double mass,
            @Unit("degC") double used,
            @Unit("degC") double temperature,
            @Unit("1") double activity) {
        Bounds.within(activity, "1", 0, 10, "activity");
        return activity * resting(mass, used) * Q10.factor(Q10.WITHIN_A_FISH_SPECIES, temperature, used);
    }
}
