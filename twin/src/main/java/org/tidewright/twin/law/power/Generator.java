package org.tidewright.twin.law.power;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/** Size and thirst of an engine-driven generator. It runs outdoors only; the connection is an electrician's work. */
public final class Generator {
    /** Common practice: a quarter in hand. */
    @Unit("1")
    public static final double RESERVE = 1.25;

    private Generator() {}

    /**
     * Least continuous power.
     *
     * <pre>P = reserve (P_running + largest single start extra)</pre>
     *
     * @param running sum of what runs
     * @param startExtra what the hungriest motor draws on starting above its running power: 2 to 6 times that for
     *     induction motors
     * @param reserve see {@link #RESERVE}
     * @return power
     * @source common practice; starting factors from memory
     * @validity loads started one after another, the largest first
     */
    @Unit("W")
    public static double power(@Unit("W") double running, @Unit("W") double startExtra, @Unit("1") double reserve) {
        Bounds.within(running, "W", 0, 1e6, "running power");
        Bounds.within(startExtra, "W", 0, 1e6, "start extra");
        Bounds.within(reserve, "1", 1, 5, "reserve");
        return reserve * (running + startExtra);
    }

    /**
     * Fuel burnt.
     *
     * <pre>F = a + b P</pre>
     *
     * @param idle a, what it burns at no load; 0.15 to 0.30 L/h for small petrol sets
     * @param perEnergy b, what each unit of energy adds; 0.35 to 0.50 L/kWh
     * @param load P
     * @return volume per time
     * @source straight line through part-load measurements; coefficients from memory
     * @validity up to the rated power
     */
    @Unit("m^3/s")
    public static double fuelRate(@Unit("m^3/s") double idle, @Unit("m^3/J") double perEnergy, @Unit("W") double load) {
        Bounds.within(idle, "m^3/s", 0, 1e-3, "fuel at no load");
        Bounds.within(perEnergy, "m^3/J", 0, 1e-6, "fuel per energy");
        Bounds.within(load, "W", 0, 1e6, "load");
        return idle + perEnergy * load;
    }
}
