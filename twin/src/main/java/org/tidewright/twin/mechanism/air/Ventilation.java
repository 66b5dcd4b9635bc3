package org.tidewright.twin.mechanism.air;

import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Mechanism;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.contract.Transfers;
import org.tidewright.twin.contract.View;

/**
 * Outdoor air that takes the place of room air: dn/dt = q (n out - n), the well-mixed room. What it carries of heat is in
 * the room's heat loss.
 *
 * @param changes setting: air changes, 1/s
 * @param vapourOutdoors its vapour pressure
 * @param carbonDioxideOutdoors its partial pressure of carbon dioxide, Pa
 */
public record Ventilation(
        RoomAir room,
        Body outdoors,
        Setting changes,
        @Unit("Pa") double vapourOutdoors,
        @Unit("Pa") double carbonDioxideOutdoors)
        implements Mechanism {
    @Override
    public String name() {
        return "ventilation";
    }

    @Override
    public void act(View now, Transfers out) {
        double rate = now.value(changes);
        double temperature = now.temperature(room.room());
        double water = room.waterFor(vapourOutdoors, temperature) - now.stock(room.air(), Stock.WATER);
        double carbon =
                room.amountFor(carbonDioxideOutdoors, temperature) - now.stock(room.air(), Stock.INORGANIC_CARBON);
        out.move(Stock.WATER, outdoors, room.air(), rate * water);
        out.move(Stock.INORGANIC_CARBON, outdoors, room.air(), rate * carbon);
    }
}
