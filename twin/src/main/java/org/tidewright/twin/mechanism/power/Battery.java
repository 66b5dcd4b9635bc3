package org.tidewright.twin.mechanism.power;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Mechanism;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.contract.Transfers;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.contract.Watch;

/**
 * A battery with its inverter: what the inverter draws by itself while it stands in for the mains, and the end when the
 * energy is used up. It is not charged again.
 *
 * @param store body whose heat stock is the energy left
 * @param room that the inverter warms
 * @param mains setting: 1 while the mains give power, when the inverter takes nothing from the battery; null where they
 *     never do
 * @param on setting: 1 while it can give power
 * @param idle power the inverter draws by itself
 */
public record Battery(Body store, Body room, @Nullable Setting mains, Setting on, Parameter idle) implements Mechanism {
    /** Event that the battery is empty. */
    public static final String EMPTY = "the battery is empty";

    @Override
    public void act(View now, Transfers out) {
        boolean standsIn = mains == null || now.value(mains) <= 0;
        if (standsIn && now.value(on) > 0) {
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
