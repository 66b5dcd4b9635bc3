package org.tidewright.twin.law.power;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * A battery's printed energy and what is left of it at the socket.
 *
 * @param inverter share of the battery's energy that the inverter or converter passes on, 0.80 to 0.92; 1 for a pump on
 *     the battery itself
 * @param idle what the inverter draws by itself, 3 to 15 W
 * @param depth of discharge allowed: lead-acid 0.5 for long life, 0.8 in an emergency; lithium iron phosphate 0.8 to
 *     0.9
 * @param cold share of the capacity left at the battery's temperature: lead-acid 1 % less per kelvin below 25 degC
 * @param age share of the capacity left after years, 0.8 at the end of its service
 */
public record BatteryEnergy(
        @Unit("1") double inverter,
        @Unit("W") double idle,
        @Unit("1") double depth,
        @Unit("1") double cold,
        @Unit("1") double age) {

    public BatteryEnergy {
        Bounds.within(inverter, "1", 0.01, 1, "efficiency of the inverter");
        Bounds.within(idle, "W", 0, 1e4, "idle draw of the inverter");
        Bounds.within(depth, "1", 0.01, 1, "depth of discharge");
        Bounds.within(cold, "1", 0.01, 1.2, "factor for cold");
        Bounds.within(age, "1", 0.01, 1.2, "factor for age");
    }

    /**
     * Share of the printed energy that may be drawn: depth, cold and age together.
     *
     * @return share
     * @source product of independent losses
     */
    @Unit("1")
    public double usable() {
        return depth * cold * age;
    }

    /**
     * What the battery gives while the socket takes a load.
     *
     * @param load at the socket
     * @return the load through the inverter and its idle draw
     * @source energy balance of the inverter
     */
    @Unit("W")
    public double draw(@Unit("W") double load) {
        Bounds.within(load, "W", 0, 1e6, "load");
        return load / inverter + idle;
    }

    /**
     * Printed energy a battery needs to carry a load for a time.
     *
     * <pre>E = P t / (eta DoD k_cold k_age) + P_idle t / (DoD k_cold k_age)</pre>
     *
     * @param load P at the socket
     * @param time t
     * @return printed energy
     * @source energy balance; factors from memory and common practice
     * @validity loads that draw the battery in hours, not minutes: see {@link Peukert} for lead-acid
     */
    @Unit("J")
    public double needed(@Unit("W") double load, @Unit("s") double time) {
        Bounds.within(time, "s", 0, 1e9, "time");
        return draw(load) * time / usable();
    }

    /**
     * How long a battery carries a load, the inverse of {@link #needed}.
     *
     * @param printed energy on its label
     * @param load at the socket; load or idle draw above zero
     * @return time
     * @source energy balance
     * @validity as {@link #needed}
     */
    @Unit("s")
    public double runTime(@Unit("J") double printed, @Unit("W") double load) {
        Bounds.within(printed, "J", 0, 1e12, "printed energy");
        double draw = draw(load);
        Bounds.within(draw, "W", 1e-6, 1e7, "draw from the battery");
        return printed * usable() / draw;
    }
}
