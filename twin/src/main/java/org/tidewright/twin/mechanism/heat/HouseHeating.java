package org.tidewright.twin.mechanism.heat;

import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Mechanism;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.contract.Transfers;
import org.tidewright.twin.contract.View;

/**
 * The building's own heating and cooling, which hold the room at a temperature while they have power: a proportional
 * controller, so strong that the room stands within a tenth of a kelvin as long as it can give what that asks.
 *
 * @param temperature setting: what it holds, °C
 * @param running setting: 1 while it works
 * @param most heat it can give, and take
 */
public record HouseHeating(
        Body house,
        Body room,
        Setting temperature,
        Setting running,
        @Unit("W/K") double strength,
        @Unit("W") double most)
        implements Mechanism {
    @Override
    public String name() {
        return "heating of the house";
    }

    @Override
    public void act(View now, Transfers out) {
        double lack = now.value(temperature) - now.temperature(room);
        out.heat(house, room, now.value(running) * Math.max(-most, Math.min(most, strength * lack)));
    }
}
