package org.tidewright.twin.mechanism.heat;

import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Mechanism;
import org.tidewright.twin.contract.Transfers;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.mechanism.light.Lamp;

/**
 * The power of a lamp that follows its clock, which ends as heat in the water and the room.
 *
 * @param power at full light
 * @param toWater share of it that ends in the water
 */
public record LampHeat(
        Lamp lamp,
        Body water,
        Body room,
        @Unit("W") double power,
        @Unit("1") double toWater) implements Mechanism {
    @Override
    public String name() {
        return lamp.name();
    }

    @Override
    public void act(View now, Transfers out) {
        double share = lamp.share(now);
        if (share > 0) {
            lamp.supply().draw(now, out, share * power, toWater, water, room);
        }
    }
}
