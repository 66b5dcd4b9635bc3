package org.tidewright.twin.system;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.TopOff;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Routine;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.contract.Transfers;
import org.tidewright.twin.mechanism.water.TopOffFloat;
import org.tidewright.twin.run.Network;
import org.tidewright.twin.run.State;
import org.tidewright.twin.tank.Basins;
import org.tidewright.twin.tank.PowerSupplies;

/** Replacement of what evaporates: by pump and float from a reservoir, or by hand where there is none. */
final class TopOffs {
    private static final double DAY = 86_400;

    /** Distance between a float switch's two positions; common practice. */
    private static final double PLAY = 0.005;

    /** By hand the keeper brings the level back within the day. */
    private static final double FLOW_BY_HAND = 10e-3 / 3600;

    private final double capacity;
    private final double temperature;
    private final double heatPerVolume;
    private final Brew fill;
    private final Body reservoir;

    TopOffs(Plan plan, Network.Builder builder, Levers levers, World world, PowerSupplies supplies, Basins basins) {
        @Nullable TopOff described = plan.topOff();
        temperature = plan.room().temperature().in("degC");
        heatPerVolume = builder.heatPerVolume();
        reservoir = builder.pool("reservoir", Stock.WATER, Stock.HEAT, Stock.ALKALINITY, Stock.CALCIUM);
        double saturation = described == null || described.limewater() == null
                ? 0
                : described.limewater().in("1");
        fill = Dosing.limewater(saturation, temperature, heatPerVolume);
        double flow = described == null ? FLOW_BY_HAND : described.pumpFlow().in("m^3/s");
        Basins.Basin watched = basins.sump() == null ? basins.display() : basins.sump();
        double area = basins.sump() == null
                ? watched.surface()
                : basins.vessels().lastSection().vessel().length()
                        * basins.vessels().lastSection().vessel().width();
        Setting works = levers.floatSwitch("top-off", "its pump and float");
        @Nullable Setting mains = described == null ? null : supplies.mains();
        builder.add(new TopOffFloat(reservoir, watched.body(), watched.volume(), PLAY * area, flow, works, mains));
        // Where nobody says how often, the keeper never lets it run dry.
        capacity =
                described == null ? 0.02 : Math.max(1e-3, described.reservoir().in("m^3"));
        double every = described == null || described.refilledEvery() == null
                ? DAY
                : described.refilledEvery().in("s");
        Setting refilled = levers.onOff("reservoir refill", "somebody fills the reservoir");
        builder.add(new Routine(
                "reservoir refilled",
                (time, now) -> (Math.floor(time / every) + 1) * every,
                (now, switches) -> {
                    Transfers out = switches.atOnce();
                    double missing = now.value(refilled) * Math.max(0, capacity - now.volume(reservoir));
                    fill.pour(out, world.store(), reservoir, missing);
                },
                false));
    }

    void fill(State state) {
        state.set(reservoir, Stock.WATER, capacity);
        for (Stock stock : List.of(Stock.HEAT, Stock.ALKALINITY, Stock.CALCIUM)) {
            state.set(reservoir, stock, capacity * fill.of(stock));
        }
    }
}
