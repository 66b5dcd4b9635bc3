package org.tidewright.twin.tank;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tidewright.plan.model.Backup;
import org.tidewright.plan.model.Names;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.source.Basis;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.law.power.Generator;
import org.tidewright.twin.mechanism.power.Battery;
import org.tidewright.twin.mechanism.power.Supply;
import org.tidewright.twin.run.Network;
import org.tidewright.twin.run.Run;
import org.tidewright.twin.run.State;

/** Where the plan's devices draw their power: the mains while there are any, else its battery and generator. */
public final class PowerSupplies {
    /** Fuel a small petrol set burns at no load, L/h: 0.15 to 0.30; from memory. */
    private static final double GENERATOR_IDLE = 0.22e-3 / 3600;

    /** Fuel it burns per energy, L/kWh: 0.35 to 0.50; from memory. */
    private static final double GENERATOR_PER_ENERGY = 0.42e-3 / 3.6e6;

    private final @Nullable Backup backup;
    private final @Nullable Source battery;
    private final @Nullable Source generator;
    private final Supply.Source mains;
    private final Network.Builder builder;
    private final Map<String, Setting> works = new LinkedHashMap<>();
    private double generatorLoad;

    /** A source with the parameter that says how much of its store can be used. */
    private record Source(Supply.Source supply, @Nullable Parameter usable, List<String> feeds) {}

    /** The mains first; each device has a setting that says whether it works. */
    public PowerSupplies(Network.Builder builder, Body room, @Nullable Backup backup, Supply.Source mains) {
        this.builder = builder;
        this.backup = backup;
        this.mains = mains;
        battery = backup == null || backup.battery() == null ? null : battery(builder, room, mains, backup.battery());
        generator = backup == null || backup.generator() == null ? null : generator(builder, backup.generator());
    }

    private static Source battery(Network.Builder builder, Body room, Supply.Source mains, Backup.Battery described) {
        boolean leadAcid = described.chemistry() == Backup.Chemistry.LEAD_ACID;
        Body store = builder.body("battery");
        Setting on = builder.setting("battery gives power", 1);
        Parameter usable = builder.parameter(
                "usable share of the battery",
                "1",
                leadAcid ? 0.45 : 0.65,
                leadAcid ? 0.3 : 0.5,
                leadAcid ? 0.6 : 0.8,
                Basis.COMMON_PRACTICE,
                "depth of discharge, cold and age together");
        Parameter inverter = builder.parameter(
                "share the inverter passes on",
                "1",
                0.88,
                0.8,
                0.92,
                Basis.FROM_MEMORY,
                "small inverters and converters");
        Parameter idle = builder.parameter(
                "power the inverter draws by itself",
                "W",
                4,
                1,
                12,
                Basis.FROM_MEMORY,
                "small inverters, converters less");
        builder.add(
                new Battery(store, room, mains, on, idle, described.capacity().in("J"), usable));
        return new Source(new Supply.Source(store, on, inverter), usable, described.feeds());
    }

    private static Source generator(Network.Builder builder, Backup.Generator described) {
        Body store = builder.body("generator");
        Setting on = builder.setting("generator gives power", 0);
        return new Source(new Supply.Source(store, on, null), null, described.feeds());
    }

    /** Where a device draws its power. */
    public Supply of(String device) {
        List<Supply.Source> sources = new ArrayList<>();
        sources.add(mains);
        for (Source source : new @Nullable Source[] {battery, generator}) {
            if (source != null && source.feeds().contains(device)) {
                sources.add(source.supply());
            }
        }
        return new Supply(sources, works.computeIfAbsent(device, name -> builder.setting(name + " works", 1)));
    }

    /** Whether battery or generator feeds a device. */
    public boolean isBacked(String device) {
        return (battery != null && battery.feeds().contains(device))
                || (generator != null && generator.feeds().contains(device));
    }

    /** Setting: 1 while there are mains. */
    public Setting mains() {
        return mains.on();
    }

    /** Setting: 1 while the battery can give power; null without one. */
    public @Nullable Setting batteryOn() {
        return battery == null ? null : battery.supply().on();
    }

    /** The settings that stop a device, by its name. */
    public Map<String, Setting> works() {
        return works;
    }

    /** Sums what the generator feeds, heaters at full power. */
    public void generatorLoad(Plan plan) {
        if (generator == null) {
            return;
        }
        List<String> feeds = generator.feeds();
        double sum = 0;
        if (feeds.contains(Names.RETURN_PUMP) && plan.returnLine() != null) {
            sum += plan.returnLine().pump().power().in("W");
        }
        sum += plan.heaters().stream()
                .filter(device -> feeds.contains(device.name()))
                .mapToDouble(device -> device.power().in("W"))
                .sum();
        sum += plan.lights().stream()
                .filter(device -> feeds.contains(device.name()))
                .mapToDouble(device -> device.power().in("W"))
                .sum();
        sum += plan.circulationPumps().stream()
                .filter(device -> feeds.contains(device.name()))
                .mapToDouble(device -> device.power().in("W"))
                .sum();
        sum += plan.airPumps().stream()
                .filter(device -> feeds.contains(device.name()))
                .mapToDouble(device -> device.power().in("W"))
                .sum();
        sum += plan.gear().stream()
                .filter(device -> feeds.contains(device.name()))
                .mapToDouble(
                        device -> device.power() == null ? 0 : device.power().in("W"))
                .sum();
        generatorLoad = sum;
    }

    /** Fills the stores: the battery with what can be used of it. */
    public void fill(State state, @Unit("*") double[] parameters) {
        if (battery != null && backup != null && backup.battery() != null && battery.usable() != null) {
            double energy = backup.battery().capacity().in("J");
            state.set(
                    battery.supply().store(),
                    Stock.HEAT,
                    energy * parameters[battery.usable().index()]);
        }
    }

    /**
     * Orders the generator's start and its end, when its fuel is used up.
     *
     * @param failed when the mains did
     */
    public void schedule(Run run, @Unit("s") double failed) {
        if (generator == null || backup == null || backup.generator() == null) {
            return;
        }
        double start = failed + backup.generator().startedAfter().in("s");
        run.setAt(start, generator.supply().on(), 1);
        run.setAt(start + generatorRunTime(), generator.supply().on(), 0);
    }

    /** How long the fuel lasts with all loads on; 0 without a generator. */
    public @Unit("s") double generatorRunTime() {
        if (backup == null || backup.generator() == null) {
            return 0;
        }
        double rate = Generator.fuelRate(GENERATOR_IDLE, GENERATOR_PER_ENERGY, generatorLoad);
        return backup.generator().fuel().in("m^3") / rate;
    }

    /** What the generator is to carry, heaters at full power. */
    public @Unit("W") double generatorLoad() {
        return generatorLoad;
    }
}
