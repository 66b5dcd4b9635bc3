package org.tidewright.twin.system;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tidewright.plan.model.Light;
import org.tidewright.plan.model.Names;
import org.tidewright.plan.model.Plan;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Layout;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.contract.Watch;
import org.tidewright.twin.law.biota.BodyComposition;
import org.tidewright.twin.mechanism.air.RoomAir;
import org.tidewright.twin.mechanism.air.Weather;
import org.tidewright.twin.mechanism.light.Lamps;
import org.tidewright.twin.mechanism.power.Supply;
import org.tidewright.twin.mechanism.water.Circulation;
import org.tidewright.twin.run.Network;
import org.tidewright.twin.run.Run;
import org.tidewright.twin.run.State;
import org.tidewright.twin.tank.Basins;
import org.tidewright.twin.tank.PowerSupplies;
import org.tidewright.twin.tank.RunningVolumes;
import org.tidewright.twin.tank.Vessels;
import org.tidewright.twin.tank.Water;

/**
 * The complete twin of a plan: display, sump and refugium with everything in and around them, as one network. Time zero
 * is midnight.
 */
public final class SystemTwin {
    private static final double DAY = 86_400;

    private final Plan plan;
    private final Water water;
    private final Network network;
    private final World world;
    private final Surroundings room;
    private final Basins basins;
    private final Pools pools;
    private final Levers levers;
    private final Lamps overDisplay;
    private final FirstState firstState;
    private final Limes limes;
    private final PowerSupplies supplies;
    private final @Nullable Setting unnamedBreathe;

    /** Notes what happens in a water: made while its network is. */
    @FunctionalInterface
    public interface WatchMaker {
        List<Watch> over(Body display);
    }

    /** The twin of a plan by its own regime, in weather that stands at the room's temperature. */
    public static SystemTwin of(Plan plan) {
        return of(plan, Weather.constant(plan.room().temperature().in("degC")), true, display -> List.of());
    }

    /**
     * The twin of a plan by its own regime.
     *
     * @param weather along its clock
     * @param backupUsed whether the plan's battery and generator stand by
     * @param watches what else its runs are to note
     */
    public static SystemTwin of(Plan plan, Weather weather, boolean backupUsed, WatchMaker watches) {
        return new SystemTwin(plan, weather, backupUsed, watches);
    }

    private SystemTwin(Plan plan, Weather weather, boolean backupUsed, WatchMaker watches) {
        this.plan = plan;
        water = Water.of(plan);
        Network.Builder builder = new Network.Builder(Layout.OF_ALL, water.density(), water.specificHeat());
        Stated stated = new Stated(builder);
        KeptWater.InDraw kept = KeptWater.of(plan.water(), water.density(), stated);
        Rocks rocks = Rocks.of(plan, stated);
        levers = new Levers(builder);
        world = World.in(builder);
        room = new Surroundings(plan, builder, levers, world, weather);
        basins = new Basins(plan, water, RunningVolumes.of(plan), builder);
        pools = Pools.in(builder);
        Setting mains = levers.onOff("power", "the mains");
        supplies = new PowerSupplies(
                builder,
                room.fabric(),
                backupUsed ? plan.backup() : null,
                new Supply.Source(world.mains(), mains, null));
        basins.addWalls(builder, room.fabric());
        basins.addRims(builder, world.floor());
        circulation(builder);
        LightPlan lamps = new LightPlan(plan, builder, stated, levers, supplies, basins, room.fabric());
        overDisplay = lamps.over(Names.DISPLAY);
        Devices devices = new Devices(plan, builder, levers, world, supplies, basins, room);
        surfaces(builder, devices);
        TopOffs topOffs = new TopOffs(plan, builder, levers, world, supplies, basins);
        Regime regime = new Regime(plan, builder, world, room, pools, basins, water, levers, mains);
        AlgaeBeds algaeBeds = new AlgaeBeds(plan, builder, stated, kept, levers, world, pools, basins, lamps);
        Bacteria bacteria = new Bacteria(plan, builder, rocks, world, pools, basins);
        new Filters(plan, builder, levers, world, supplies, basins, room, bacteria, stated);
        Life life = new Life(plan, builder, world, pools, basins, lamps.over(Names.DISPLAY), levers);
        limes = new Limes(
                plan, builder, stated, levers, world, pools, basins, water, supplies, overDisplay, life.corals());
        unnamedBreathe = plan.inhabitants() == null ? UnnamedAnimals.add(builder, world, basins, water) : null;
        watches.over(basins.display().body()).forEach(builder::watch);
        network = builder.build();
        supplies.works().forEach((device, works) -> levers.add(device, "whether it runs", works));
        firstState = new FirstState(
                plan,
                water,
                kept,
                network,
                room,
                basins,
                pools,
                regime.feeding().perSecond(),
                bacteria,
                supplies,
                topOffs,
                algaeBeds,
                life,
                regime.dosing());
    }

    private void circulation(Network.Builder builder) {
        Basins.Basin sump = basins.sump();
        if (sump == null) {
            return;
        }
        Supply returnPump = supplies.of(Names.RETURN_PUMP);
        Body display = basins.display().body();
        builder.add(Circulation.overCrest(
                display,
                sump.body(),
                basins.running().displayFlow(),
                basins.display().volume(),
                basins.running().crestHead(),
                basins.display().surface(),
                drawsAir(sump),
                returnPump));
        Basins.Basin refugium = basins.refugium();
        if (refugium != null) {
            double crest = requireNonNull(plan.refugium()).crest().in("m");
            builder.add(Circulation.overCrest(
                    refugium.body(),
                    sump.body(),
                    basins.running().refugiumFlow(),
                    refugium.volume(),
                    basins.running().refugiumLevel() - crest,
                    refugium.surface(),
                    drawsAir(sump),
                    returnPump));
        }
    }

    /** Water in the sump when its last section has fallen to the pump's intake; the baffles keep the others as they are. */
    private double drawsAir(Basins.Basin sump) {
        Vessels.Vessel last = basins.vessels().lastSection().vessel();
        double[] levels = basins.running().sectionLevels();
        double intake = requireNonNull(plan.returnLine()).pump().intake().in("m");
        double fall = Math.max(0, levels[levels.length - 1] - intake);
        return Math.max(1e-3, sump.volume() - fall * last.length() * last.width());
    }

    private void surfaces(Network.Builder builder, Devices devices) {
        Surfaces surfaces = new Surfaces(builder, world, room, water);
        surfaces.add(
                basins.display(),
                plan.display().cover(),
                devices.breezeOver(Names.DISPLAY),
                devices.stirring(Names.DISPLAY));
        Basins.Basin sump = basins.sump();
        if (sump != null) {
            surfaces.add(
                    sump,
                    requireNonNull(plan.sump()).cover(),
                    devices.breezeOver(Vessels.SUMP),
                    devices.stirring(Vessels.SUMP));
        }
        Basins.Basin refugium = basins.refugium();
        if (refugium != null) {
            surfaces.add(
                    refugium,
                    requireNonNull(plan.refugium()).cover(),
                    devices.breezeOver(plan.refugium().name()),
                    devices.stirring(plan.refugium().name()));
        }
    }

    public Plan plan() {
        return plan;
    }

    public Network network() {
        return network;
    }

    /** The water as the plan keeps it. */
    public Water water() {
        return water;
    }

    public Body display() {
        return basins.display().body();
    }

    /** Null where there is none. */
    public @Nullable Body sump() {
        return basins.sump() == null ? null : basins.sump().body();
    }

    /** Display, sump and refugium, as many as there are. */
    public List<Body> waters() {
        List<Body> waters = new ArrayList<>();
        basins.all().forEach(basin -> waters.add(basin.body()));
        return waters;
    }

    public Body room() {
        return room.fabric();
    }

    /** What can be changed while it runs. */
    public Levers levers() {
        return levers;
    }

    /** All bodies at midnight of the first day, with the parameters a run will use. */
    public State start(@Unit("*") double[] parameters) {
        return firstState.of(parameters);
    }

    /**
     * All bodies on the day the system is filled, at midnight: clean, with the water the plan states, and with as many
     * nitrifiers as were brought in.
     *
     * @param ammoniaOxidisers as a share of the most its surfaces can carry
     * @param nitriteOxidisers likewise
     */
    public State newlyFilled(
            @Unit("*") double[] parameters, @Unit("1") double ammoniaOxidisers, @Unit("1") double nitriteOxidisers) {
        return firstState.newlyFilled(parameters, ammoniaOxidisers, nitriteOxidisers);
    }

    /** Gives a state as many nitrifiers as another has, with the ammonia and nitrite they leave where the plan states none. */
    public void bringNitrifiers(State from, State to) {
        firstState.bringNitrifiers(from, to);
    }

    /**
     * Raises nitrifiers of both guilds to what clears a dose within a day; never lowers them.
     *
     * @param dose of ammonia, and of nitrite
     * @param left at which it counts as cleared
     */
    public void raiseNitrifiers(
            State state, @Unit("*") double[] parameters, @Unit("mol/m^3") double dose, @Unit("mol/m^3") double left) {
        firstState.raiseNitrifiers(state, parameters, dose, left);
    }

    /**
     * A system that runs.
     *
     * @param parameters of the draw, with those found that make it do what the plan states
     */
    public record Settled(State state, @Unit("*") double[] parameters) {}

    /**
     * All bodies of a system that runs, once pools and air have come to rest with each other: after days of its own regime,
     * with the water then set to what the plan states, its carbon dioxide as it was found.
     */
    public Settled settled(@Unit("*") double[] parameters) {
        return new SettlingIn(this, firstState, limes).of(parameters, null);
    }

    /**
     * The same of a system that differs from another in how it is run: corals and coralline algae grow as those do under the
     * same conditions, and what they use follows.
     *
     * @param growth of the other, {@link #skeletonGrowth}
     */
    public Settled settled(@Unit("*") double[] parameters, @Unit("1") double growth) {
        return new SettlingIn(this, firstState, limes).of(parameters, growth);
    }

    /** Factor on the growth of skeletons that makes up a stated use; 1 where none is stated. */
    public @Unit("1") double skeletonGrowth(@Unit("*") double[] parameters) {
        return limes.matched() == null ? 1 : parameters[limes.matched().factor().index()];
    }

    /** Parameters of a draw in which skeletons grow by a factor that was found for another. */
    public @Unit("*") double[] growing(@Unit("*") double[] parameters, @Unit("1") double growth) {
        double[] grown = parameters.clone();
        if (limes.matched() != null) {
            grown[limes.matched().factor().index()] = growth;
        }
        return grown;
    }

    /**
     * The mains fail at a run's present, and with them what hangs on them: pumps, lights, doses, the house's heating and
     * cooling. The keeper's hands rest until they are back: nobody feeds, tops up or changes water. A plan that names no
     * animals now counts the breath of those it has.
     *
     * @param backupServes whether battery and generator, where there are any, take over
     */
    public void failMains(Run run, boolean backupServes) {
        for (String lever : List.of("power", "room heating", "feed", "top-off", "reservoir refill", "water changes")) {
            run.set(levers.get(lever).setting(), 0);
        }
        if (unnamedBreathe != null) {
            run.set(unnamedBreathe, 1);
        }
        if (backupServes) {
            supplies.schedule(run, run.time());
        } else if (supplies.batteryOn() != null) {
            run.set(requireNonNull(supplies.batteryOn()), 0);
        }
    }

    /**
     * The end of the longest dark over the display, when least oxygen is left: the time of day at which the lamps come on;
     * midnight where none do.
     */
    public static @Unit("s") double endOfNight(Plan plan) {
        double longest = -1;
        double end = 0;
        for (Light light : plan.lights()) {
            double start = LightPlan.startOf(light);
            double dark = light.over().equals(Names.DISPLAY) ? darkBefore(start, plan) : -1;
            if (dark > longest) {
                longest = dark;
                end = start;
            }
        }
        return end;
    }

    /** Light of all lamps over the display at full power, on the mean of what grows below. */
    public static @Unit("mol/(m^2*s)") double fullLight(Plan plan) {
        double surface =
                plan.display().length().in("m") * plan.display().width().in("m");
        return plan.lights().stream()
                .filter(light -> light.over().equals(Names.DISPLAY))
                .mapToDouble(light -> LightPlan.usual(light, surface))
                .sum();
    }

    /** How long all lamps over the display have been off when a time of day comes. */
    private static double darkBefore(double timeOfDay, Plan plan) {
        double shortest = DAY;
        for (Light light : plan.lights()) {
            if (light.over().equals(Names.DISPLAY)) {
                double since = (timeOfDay - LightPlan.startOf(light) + DAY) % DAY;
                double lasts = light.daily().in("s");
                shortest = Math.min(shortest, since == 0 ? DAY - lasts : Math.max(0, since - lasts));
            }
        }
        return shortest;
    }

    /** Where devices draw their power. */
    public PowerSupplies supplies() {
        return supplies;
    }

    /** Water in each basin while everything runs. */
    public Basins.Volumes runningVolumes() {
        return new Basins.Volumes(
                basins.display().volume(),
                basins.sump() == null ? 0 : basins.sump().volume(),
                basins.refugium() == null ? 0 : basins.refugium().volume());
    }

    /** Null where there is none. */
    public @Nullable Body refugium() {
        return basins.refugium() == null ? null : basins.refugium().body();
    }

    /** The air of the room, for reading. */
    public RoomAir roomAir() {
        return room.air();
    }

    /** Light on what grows in the display. */
    public @Unit("mol/(m^2*s)") double lightOverDisplay(View now) {
        return overDisplay.light(now);
    }

    /** Live mass of the fish, by their flesh without regard to how fat it is. */
    public @Unit("kg") double fish(View now) {
        return now.stock(pools.fish(), Stock.ORGANIC_NITROGEN) / BodyComposition.NITROGEN;
    }

    /** Water of the system while everything runs. */
    public @Unit("m^3") double volume() {
        return basins.all().stream().mapToDouble(Basins.Basin::volume).sum();
    }

    World world() {
        return world;
    }

    Pools pools() {
        return pools;
    }
}
