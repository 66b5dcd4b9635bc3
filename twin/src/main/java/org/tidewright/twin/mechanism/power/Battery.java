package org.tidewright.twin.mechanism.power;

import java.util.List;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Mechanism;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.contract.Transfers;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.contract.Watch;

/**
 * A battery with its inverter: what the inverter draws by itself, and the end when the energy is used up.
 *
 * @param store body whose heat stock is the energy left
 * @param room that the inverter warms
 * @param on setting: 1 while it gives power
 * @param idle power the inverter draws by itself
 */
public record Battery(Body store, Body room, Setting on, Parameter idle) implements Mechanism {
    /** Event that the battery is empty. */
    public static final String EMPTY = "the battery is empty";

    @Override
    public void act(View now, Transfers out) {
        if (now.value(on) > 0) {
            out.heat(store, room, now.value(idle));
        }
    }

    @Override
    public List<Watch> watches() {
        return List.of(new Watch(
                EMPTY,
                Watch.Crossing.FALLING,
                now -> now.stock(store, Stock.HEAT),
                (now, switches) -> switches.set(on, 0)));
    }
}
