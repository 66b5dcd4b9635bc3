package org.tidewright.twin.mechanism.heat;

import java.util.List;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Mechanism;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.contract.Transfers;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.contract.Watch;
import org.tidewright.twin.mechanism.power.Supply;

/**
 * A heater with its own thermostat in the water it stands in.
 *
 * @param setpoint middle of its band
 * @param band between switching on and off
 * @param heating setting: 1 while the thermostat calls
 */
public record Heater(
        String name,
        Body water,
        Body room,
        @Unit("W") double power,
        @Unit("degC") double setpoint,
        @Unit("K") double band,
        Supply supply,
        Setting heating)
        implements Mechanism {
    @Override
    public void act(View now, Transfers out) {
        if (now.value(heating) > 0) {
            supply.draw(now, out, power, 1, water, room);
        }
    }

    @Override
    public List<Watch> watches() {
        return List.of(
                new Watch(
                        name + " switches on",
                        Watch.Crossing.FALLING,
                        now -> now.value(heating) > 0 ? 1 : now.temperature(water) - setpoint + band / 2,
                        (now, switches) -> switches.set(heating, 1)),
                new Watch(
                        name + " switches off",
                        Watch.Crossing.RISING,
                        now -> now.value(heating) > 0 ? now.temperature(water) - setpoint - band / 2 : -1,
                        (now, switches) -> switches.set(heating, 0)));
    }
}
