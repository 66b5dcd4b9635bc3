package org.tidewright.twin.mechanism.heat;

import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Mechanism;
import org.tidewright.twin.contract.Transfers;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.mechanism.power.Supply;

/**
 * A fan over the water with its thermostat, averaged over its cycles as {@link HeldHeater} is. It cools by what evaporates
 * in its breeze; its own power warms the room.
 *
 * @param airSpeed over the water at full speed
 * @param setpoint middle of the band over which it speeds up
 */
public record Fan(
        String name,
        Body water,
        Body room,
        @Unit("m/s") double airSpeed,
        @Unit("W") double power,
        @Unit("degC") double setpoint,
        @Unit("K") double band,
        Supply supply)
        implements Mechanism, AirAbove.Breeze {
    @Override
    public void act(View now, Transfers out) {
        double share = share(now);
        if (share > 0) {
            supply.draw(now, out, share * power, 0, water, room);
        }
    }

    @Override
    public double speed(View now) {
        return share(now) * airSpeed;
    }

    private double share(View now) {
        double above = (now.temperature(water) - setpoint + band / 2) / band;
        double called = Math.max(0, Math.min(1, above));
        return called > 0 && supply.isOn(now) ? called : 0;
    }
}
