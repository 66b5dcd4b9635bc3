package org.tidewright.twin.law.nutrient;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * One nutrient in one mixed body of water with a constant load and a first-order loss, in closed form: a check on the
 * twin and a first answer without it.
 *
 * @param load what comes in less what constant sinks take, greater or less than 0
 * @param volume of the water
 * @param loss specific rate of what goes in proportion, greater than 0
 * @source mass balance, V dN/dt = L - k V N
 */
public record NutrientBox(
        @Unit("mol/s") double load,
        @Unit("m^3") double volume,
        @Unit("1/s") double loss) {
    public NutrientBox {
        Bounds.finite(load, "mol/s", "load");
        Bounds.positive(volume, "m^3", "volume");
        Bounds.positive(loss, "1/s", "specific loss");
    }

    /**
     * Where it settles.
     *
     * <pre>L / (k V)</pre>
     *
     * @source the box's equation with no change
     * @validity constant load
     */
    @Unit("mol/m^3")
    public double steady() {
        return load / (loss * volume);
    }

    /**
     * Concentration after a time.
     *
     * <pre>N(t) = N_ss + (N_0 - N_ss) e^(-k t)</pre>
     *
     * @param start N_0
     * @param time t
     * @source solution of the box's equation
     * @validity constant load
     */
    @Unit("mol/m^3")
    public double after(@Unit("mol/m^3") double start, @Unit("s") double time) {
        Bounds.notNegative(start, "mol/m^3", "concentration at the start");
        Bounds.notNegative(time, "s", "time");
        return steady() + (start - steady()) * Math.exp(-loss * time);
    }

    /**
     * Specific rate of a regular water change.
     *
     * <pre>-ln(1 - w) / period</pre>
     *
     * @param share w of the water changed, below 1
     * @param period between changes
     * @return share of what is dissolved per time
     * @source what is left after each change, spread over the period
     * @validity new water without the nutrient
     */
    @Unit("1/s")
    public static double waterChange(@Unit("1") double share, @Unit("s") double period) {
        Bounds.within(share, "1", 0, 0.999, "share of the water changed");
        Bounds.within(period, "s", 1, 1e10, "period");
        return -Math.log1p(-share) / period;
    }
}
