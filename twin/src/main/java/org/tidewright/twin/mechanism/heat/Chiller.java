package org.tidewright.twin.mechanism.heat;

import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Mechanism;
import org.tidewright.twin.contract.Transfers;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.mechanism.power.Supply;

/**
 * A chiller with its thermostat, averaged over its cycles as {@link HeldHeater} is. What it takes from the water and what
 * it draws from the socket both warm the room.
 *
 * @param cooling taken from the water while it runs
 * @param power drawn while it runs
 */
public record Chiller(
        String name,
        Body water,
        Body room,
        @Unit("W") double cooling,
        @Unit("W") double power,
        @Unit("degC") double setpoint,
        @Unit("K") double band,
        Supply supply)
        implements Mechanism {
    @Override
    public void act(View now, Transfers out) {
        double above = (now.temperature(water) - setpoint + band / 2) / band;
        double share = Math.max(0, Math.min(1, above));
        if (share > 0 && supply.isOn(now)) {
            supply.draw(now, out, share * power, 0, water, room);
            out.heat(water, room, share * cooling);
        }
    }
}
