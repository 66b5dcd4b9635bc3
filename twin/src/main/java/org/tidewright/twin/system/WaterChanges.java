package org.tidewright.twin.system;

import java.util.List;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Routine;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.contract.Transfers;
import org.tidewright.twin.run.Network;

/** Water changes: old water out of the display or the last section, as much of the keeper's new water in. */
final class WaterChanges {
    private final Setting factor;

    /**
     * A change that comes again.
     *
     * @param volume each time
     * @param timeOfDay since midnight
     */
    record Change(
            String name,
            @Unit("m^3") double volume,
            @Unit("s") double timeOfDay,
            int everyDays) {}

    WaterChanges(Network.Builder builder, Levers levers, World world, Body from, Brew newWater, List<Change> changes) {
        factor = levers.factor("water changes", "volume of every change");
        for (Change change : changes) {
            builder.add(new Routine(
                    change.name(), Routine.daily(change.timeOfDay(), change.everyDays()), (now, switches) -> {
                        Transfers out = switches.atOnce();
                        double volume = Math.min(now.value(factor) * change.volume(), 0.9 * now.volume(from));
                        out.water(from, world.waste(), volume);
                        newWater.pour(out, world.store(), from, volume);
                    }));
        }
    }

    /** Setting: factor on the volume of every change. */
    Setting factor() {
        return factor;
    }
}
