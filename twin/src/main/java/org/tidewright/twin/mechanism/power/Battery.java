package org.tidewright.twin.mechanism.power;

import java.util.List;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Mechanism;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.contract.Transfers;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.contract.Watch;

/**
 * A battery with its inverter and charger. While it stands in for the mains its inverter draws some power by itself, and
 * it ends when the energy is used up. Once the mains are back the charger fills it with a constant power, which falls
 * evenly over the last {@link #LAST} of it as chargers do; what the charger loses warms the room.
 *
 * @param store body whose heat stock is the energy left
 * @param room that inverter and charger warm
 * @param mains source from which it is charged; while that is on the inverter takes nothing
 * @param on setting: 1 while it can give power
 * @param idle power the inverter draws by itself
 * @param capacity nominal energy
 * @param usable share of that which can be used: what counts as full
 */
public record Battery(
        Body store,
        Body room,
        Supply.Source mains,
        Setting on,
        Parameter idle,
        @Unit("J") double capacity,
        Parameter usable)
        implements Mechanism {
    /** Event that the battery is empty. */
    public static final String EMPTY = "the battery is empty";

    /** Event that an empty battery can give power again. */
    public static final String READY = "the battery gives power again";

    /** Nominal energy over charging power: five hours, 4 to 10; common practice. */
    private static final double CHARGED_IN = 5 * 3600;

    /** Share of what the charger draws that the battery gives back, 0.8 (lead-acid) to 0.95; common practice. */
    private static final double CHARGED = 0.9;

    /** Share of a full battery over which charging dies away at a held voltage, 0.1 to 0.3; common practice. */
    private static final double LAST = 0.2;

    /** Share of a full battery at which one that was empty serves again; common practice. */
    private static final double SERVES = 0.1;

    @Override
    public String name() {
        return "battery";
    }

    @Override
    public void act(View now, Transfers out) {
        if (now.value(mains.on()) <= 0) {
            if (now.value(on) > 0) {
                out.heat(store, room, now.value(idle));
            }
            return;
        }
        double missing = full(now) - now.stock(store, Stock.HEAT);
        if (missing > 0) {
            double power = capacity / CHARGED_IN * Math.min(1, missing / (LAST * full(now)));
            out.heat(mains.store(), store, power);
            out.heat(mains.store(), room, power * (1 / CHARGED - 1));
        }
    }

    private double full(View now) {
        return now.value(usable) * capacity;
    }

    @Override
    public List<Watch> watches() {
        return List.of(
                new Watch(
                        EMPTY,
                        Watch.Crossing.FALLING,
                        now -> now.stock(store, Stock.HEAT),
                        (now, switches) -> switches.set(on, 0)),
                new Watch(
                        READY,
                        Watch.Crossing.RISING,
                        now -> now.value(on) > 0 ? -1 : now.stock(store, Stock.HEAT) - SERVES * full(now),
                        (now, switches) -> switches.set(on, 1)));
    }
}
