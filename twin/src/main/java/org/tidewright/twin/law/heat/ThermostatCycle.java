package org.tidewright.twin.law.heat;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * One round of a heater that switches within a band.
 *
 * @param on time the heater is on
 * @param off time it is off
 */
public record ThermostatCycle(
        @Unit("s") double on, @Unit("s") double off) {

    /**
     * The cycle of a thermostat with hysteresis.
     *
     * <pre>t_on = C d / (P - q),  t_off = C d / q</pre>
     *
     * @param capacity C of the water it heats
     * @param band d between switching on and off
     * @param power P of the heater, more than it must replace
     * @param deficit q, heat lost less all other heat, above zero: else the heater never comes on
     * @return on and off times
     * @source heat balance, the loss taken as constant within the band
     * @validity a band small against the difference to the room
     */
    public static ThermostatCycle of(
            @Unit("J/K") double capacity, @Unit("K") double band, @Unit("W") double power, @Unit("W") double deficit) {
        Bounds.within(capacity, "J/K", 1, 1e12, "heat capacity");
        Bounds.within(band, "K", 1e-3, 20, "band of the thermostat");
        Bounds.within(power, "W", 1e-3, 1e7, "heater power");
        if (!(deficit > 0 && deficit < power)) {
            throw new IllegalArgumentException("heat to replace " + deficit + " W is outside 0 to " + power
                    + " W, the heater's power: it would not cycle");
        }
        double heat = capacity * band;
        return new ThermostatCycle(heat / (power - deficit), heat / deficit);
    }

    /**
     * From one switching on to the next.
     *
     * @return time of one round
     * @source sum of the two times
     */
    @Unit("s")
    public double period() {
        return on + off;
    }

    /**
     * Share of the time the heater is on: the deficit over its power.
     *
     * @return duty, 0 to 1
     * @source steady state of the heat balance
     */
    @Unit("1")
    public double duty() {
        return on / period();
    }
}
