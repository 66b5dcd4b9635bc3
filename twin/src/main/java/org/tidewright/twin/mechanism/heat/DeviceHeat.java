package org.tidewright.twin.mechanism.heat;

import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Mechanism;
import org.tidewright.twin.contract.Transfers;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.mechanism.power.Supply;

/**
 * A device's electrical power, which ends as heat in the water and the room.
 *
 * @param share of it that ends in the water: all of a submerged pump's
 */
public record DeviceHeat(
        Body water,
        Body room,
        @Unit("W") double power,
        @Unit("1") double share,
        Supply supply) implements Mechanism {
    @Override
    public void act(View now, Transfers out) {
        supply.draw(now, out, power, share, water, room);
    }
}
