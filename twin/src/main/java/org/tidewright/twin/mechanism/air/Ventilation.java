package org.tidewright.twin.mechanism.air;

import org.tidewright.seawater.heat.MoistAir;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Mechanism;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.contract.Transfers;
import org.tidewright.twin.contract.View;

/**
 * Outdoor air that takes the place of room air: dn/dt = q (n out - n), the well-mixed room. What it carries of heat is in
 * the room's heat loss. In the cold it brings no more vapour than it can hold.
 *
 * @param changes setting: air changes, 1/s
 * @param weather the temperature outdoors
 * @param vapourOutdoors its vapour pressure while it is warm enough
 * @param carbonDioxideOutdoors its partial pressure of carbon dioxide, Pa
 */
public record Ventilation(
        RoomAir room,
        Body outdoors,
        Setting changes,
        Weather weather,
        @Unit("Pa") double vapourOutdoors,
        @Unit("Pa") double carbonDioxideOutdoors)
        implements Mechanism {
    /** Below -40 °C air holds next to nothing, and laws of its vapour end. */
    private static final double DRY = -40;

    @Override
    public String name() {
        return "ventilation";
    }

    @Override
    public void act(View now, Transfers out) {
        double rate = now.value(changes);
        double temperature = now.temperature(room.room());
        double dewed = MoistAir.vapourPressure(Math.max(DRY, weather.temperature(now.time())), 1);
        double vapour = Math.min(vapourOutdoors, dewed);
        double water = room.waterFor(vapour - room.vapourPressure(now), temperature);
        double carbon =
                room.amountFor(carbonDioxideOutdoors, temperature) - now.stock(room.air(), Stock.INORGANIC_CARBON);
        out.move(Stock.WATER, outdoors, room.air(), rate * water);
        out.move(Stock.INORGANIC_CARBON, outdoors, room.air(), rate * carbon);
    }
}
