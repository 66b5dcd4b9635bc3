package org.tidewright.twin.mechanism.heat;

import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Mechanism;
import org.tidewright.twin.contract.Transfers;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.mechanism.power.Supply;

/**
 * A heater with its thermostat, averaged over its cycles. A thermostat with band d about a setpoint keeps a heater on for
 * the share of time that the loss asks for, whatever the mean temperature within the band; here the share falls evenly
 * from one at the band's lower end to none at its upper end, so that heat and mean temperature agree with {@link Heater}
 * to within the band and no run has to stop at every click.
 *
 * @param setpoint middle of its band
 * @param band between switching on and off
 */
public record HeldHeater(
        String name,
        Body water,
        Body room,
        @Unit("W") double power,
        @Unit("degC") double setpoint,
        @Unit("K") double band,
        Supply supply)
        implements Mechanism {
    @Override
    public void act(View now, Transfers out) {
        double below = (setpoint + band / 2 - now.temperature(water)) / band;
        double share = Math.max(0, Math.min(1, below));
        if (share > 0) {
            supply.draw(now, out, share * power, 1, water, room);
        }
    }
}
