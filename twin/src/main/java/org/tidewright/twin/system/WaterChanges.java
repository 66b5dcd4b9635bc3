package org.tidewright.twin.system;

import java.util.List;
import org.tidewright.plan.model.Plan;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Routine;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.contract.Transfers;
import org.tidewright.twin.run.Network;

/**
 * Water changes: old water out of the display, as much of the keeper's new water in, and with the old a share of the waste
 * that lies on the ground where the keeper siphons it.
 */
final class WaterChanges {
    private static final double DAY = 86_400;

    private final Setting factor;

    /**
     * A change that comes again.
     *
     * @param volume each time
     * @param timeOfDay since midnight
     * @param siphoned share of the waste on the ground that goes along
     */
    record Change(
            String name,
            @Unit("m^3") double volume,
            @Unit("s") double timeOfDay,
            int everyDays,
            @Unit("1") double siphoned) {}

    /**
     * All of them.
     *
     * @param ground waste that lies there
     */
    WaterChanges(
            Network.Builder builder,
            Levers levers,
            World world,
            Body from,
            Body ground,
            Brew newWater,
            List<Change> changes) {
        factor = levers.factor("water changes", "volume of every change");
        Setting siphoning = changes.stream().anyMatch(change -> change.siphoned() > 0)
                ? levers.factor("siphoning", "waste siphoned off the ground at every change")
                : builder.setting("siphoning", 1);
        for (Change change : changes) {
            builder.add(new Routine(
                    change.name(), Routine.daily(change.timeOfDay(), change.everyDays()), (now, switches) -> {
                        Transfers out = switches.atOnce();
                        double volume = Math.min(now.value(factor) * change.volume(), 0.9 * now.volume(from));
                        out.water(from, world.waste(), volume);
                        newWater.pour(out, world.store(), from, volume);
                        double siphoned = volume > 0 ? Math.min(1, now.value(siphoning) * change.siphoned()) : 0;
                        for (Stock stock : siphoned > 0 ? ground.held() : List.<Stock>of()) {
                            out.move(stock, ground, world.waste(), siphoned * now.stock(ground, stock));
                        }
                    }));
        }
    }

    /** Those of a plan. */
    static List<Change> of(Plan plan) {
        return plan.waterChanges().stream()
                .map(change -> new Change(
                        change.name(),
                        change.volume().in("m^3"),
                        change.at().toSecondOfDay(),
                        Regime.days(change.every()),
                        change.siphoned() == null ? 0 : change.siphoned().in("1")))
                .toList();
    }

    /** Share of what lies on the ground that a plan's siphoning takes in the mean, per time. */
    static @Unit("1/s") double siphonedPerTime(Plan plan) {
        return of(plan).stream()
                .mapToDouble(change -> change.siphoned() / (change.everyDays() * DAY))
                .sum();
    }

    /** Setting: factor on the volume of every change. */
    Setting factor() {
        return factor;
    }
}
