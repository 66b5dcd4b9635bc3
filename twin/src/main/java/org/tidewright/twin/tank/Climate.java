package org.tidewright.twin.tank;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tidewright.plan.model.AirPump;
import org.tidewright.plan.model.Backup;
import org.tidewright.plan.model.CirculationPump;
import org.tidewright.plan.model.Cover;
import org.tidewright.plan.model.Glass;
import org.tidewright.plan.model.Heater;
import org.tidewright.plan.model.Names;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.Room;
import org.tidewright.seawater.gas.SchmidtNumber;
import org.tidewright.seawater.heat.MoistAir;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Basis;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.contract.Shape;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.contract.Watch;
import org.tidewright.twin.law.heat.TankHeatCapacity;
import org.tidewright.twin.mechanism.gas.AirStone;
import org.tidewright.twin.mechanism.gas.SurfaceOxygen;
import org.tidewright.twin.mechanism.heat.CoveredSurface;
import org.tidewright.twin.mechanism.heat.DeviceHeat;
import org.tidewright.twin.mechanism.heat.OpenSurface;
import org.tidewright.twin.mechanism.heat.RoomEnvelope;
import org.tidewright.twin.mechanism.heat.WallLoss;
import org.tidewright.twin.mechanism.heat.Weather;
import org.tidewright.twin.mechanism.power.Supply;
import org.tidewright.twin.mechanism.water.Circulation;
import org.tidewright.twin.run.Network;
import org.tidewright.twin.run.State;

/**
 * Heat and oxygen of a plan while the mains are off: display and sump as two bodies that part when the flow stops, the
 * refugium as a third, the room and the weather around them.
 */
public final class Climate {
    /** Name of the body that all sections of the sump make together. */
    public static final String SUMP = "sump";

    /** Name of the room among the bodies. */
    public static final String ROOM = "room";

    private final Plan plan;
    private final Water water;
    private final Network.Builder builder;
    private final PowerSupplies supplies;
    private final Body room;
    private final Body air;
    private final Body life;
    private final Body display;
    private final @Nullable Body sump;
    private final @Nullable Body refugium;
    private final Volumes volumes;
    private final Parameter wallFactor;
    private final double airVapourPressure;
    private final Network network;

    /**
     * Water in each body when the run begins.
     *
     * @param sump 0 where there is none
     * @param refugium 0 where there is none
     */
    public record Volumes(
            @Unit("m^3") double display,
            @Unit("m^3") double sump,
            @Unit("m^3") double refugium) {}

    /**
     * The climate of a plan in an outage.
     *
     * @param volumes where the drain-down has left the water
     * @param backupUsed whether battery and generator serve
     * @param watches what else the run is to note
     */
    public static Climate of(Plan plan, Volumes volumes, Weather weather, boolean backupUsed, WatchMaker watches) {
        return new Climate(plan, volumes, weather, backupUsed, watches);
    }

    /** Makes watches over the display. */
    @FunctionalInterface
    public interface WatchMaker {
        List<Watch> over(Body display);
    }

    private Climate(Plan plan, Volumes volumes, Weather weather, boolean backupUsed, WatchMaker watches) {
        this.plan = plan;
        this.volumes = volumes;
        this.water = Water.of(plan);
        builder = new Network.Builder(water.density(), water.specificHeat());
        Room described = plan.room();
        double roomCapacity =
                described.floorArea().in("m^2") * described.construction().capacityPerArea();
        room = builder.body(ROOM, Shape.none(), 0, roomCapacity);
        air = builder.body("air");
        life = builder.body("life");
        Body outdoors = builder.body("outdoors");
        builder.add(new RoomEnvelope(room, outdoors, weather, roomLoss(described)));
        airVapourPressure = MoistAir.vapourPressure(
                described.temperature().in("degC"), described.humidity().in("1"));
        wallFactor = builder.parameter(
                "heat loss of the tanks, factor",
                "1",
                1,
                0.75,
                1.3,
                Basis.FROM_MEMORY,
                "films by Churchill and Chu 1975 and radiation; what stands around the tank is not described");
        supplies = new PowerSupplies(builder, room, backupUsed ? plan.backup() : null);

        Vessels vessels = Vessels.of(plan);
        display = vesselBody(vessels.display(), plan.display().glass(), volumes.display(), displaySolids(), 0);
        surfaces(display, plan.display().cover(), surface(vessels), stirrersOf(Names.DISPLAY, true));
        sump = plan.sump() == null ? null : sumpBody(vessels);
        refugium = plan.refugium() == null ? null : refugiumBody(vessels);
        Breathing.add(plan, water, builder, life, display, volumes.display(), sump, volumes.sump());
        devices(plan);
        watches.over(display).forEach(builder::watch);
        network = builder.build();
    }

    public Network network() {
        return network;
    }

    public Body display() {
        return display;
    }

    /** Null where there is no sump. */
    public @Nullable Body sump() {
        return sump;
    }

    public Body room() {
        return room;
    }

    public Water water() {
        return water;
    }

    public PowerSupplies supplies() {
        return supplies;
    }

    /**
     * All bodies at the moment the power goes.
     *
     * @param parameters as the run will use them: the battery's usable energy is one
     */
    public State start(@Unit("*") double[] parameters) {
        State state = new State(network);
        fill(state, display, volumes.display());
        if (sump != null) {
            fill(state, sump, volumes.sump());
        }
        if (refugium != null) {
            fill(state, refugium, volumes.refugium());
        }
        double roomTemperature = plan.room().temperature().in("degC");
        state.set(room, Stock.HEAT, room.solidHeatCapacity() * roomTemperature);
        supplies.fill(state, parameters);
        return state;
    }

    private void fill(State state, Body body, double volume) {
        state.fill(body, volume, water.temperature(), water.salinity(), water.oxygen());
    }

    // ── bodies and their surfaces ──

    private Body sumpBody(Vessels vessels) {
        Vessels.Vessel whole = wholeSump(vessels);
        double rock = requireNonNull(plan.sump()).sections().stream()
                .mapToDouble(section ->
                        section.rock() == null ? 0 : section.rock().dryMass().in("kg"))
                .sum();
        Body body = vesselBody(whole, plan.sump().glass(), volumes.sump(), rock, 0);
        surfaces(body, plan.sump().cover(), whole.length() * whole.width(), stirrersOf(SUMP, true));
        Supply returnPump = supplies.of(Names.RETURN_PUMP);
        builder.add(new Circulation(display, body, running(vessels).displayFlow(), returnPump));
        return body;
    }

    private Body refugiumBody(Vessels vessels) {
        Vessels.Vessel vessel = requireNonNull(vessels.refugium());
        double solids = massOf(requireNonNull(plan.refugium()).rock())
                + massOf(plan.refugium().sand());
        Body body = vesselBody(vessel, plan.refugium().glass(), volumes.refugium(), solids, vessel.bottomHeight());
        surfaces(body, plan.refugium().cover(), vessel.length() * vessel.width(), stirrersOf(vessel.name(), true));
        builder.add(new Circulation(
                body, requireNonNull(sump), running(vessels).refugiumFlow(), supplies.of(Names.RETURN_PUMP)));
        return body;
    }

    private RunningState running(Vessels vessels) {
        return RunningState.of(plan, vessels, water.viscosity());
    }

    /** All sections as one vessel. */
    private Vessels.Vessel wholeSump(Vessels vessels) {
        Vessels.Vessel first = vessels.sections().get(0).vessel();
        double length = vessels.sections().stream()
                .mapToDouble(section -> section.vessel().length())
                .sum();
        return new Vessels.Vessel(
                SUMP,
                Shape.upright(length * first.width(), 0, 0),
                first.bottomHeight(),
                first.rimLevel(),
                length,
                first.width());
    }

    private Body vesselBody(Vessels.Vessel vessel, Glass glass, double volume, double solidsMass, double bottomHeight) {
        Body body = builder.body(
                vessel.name(), vessel.shape(), bottomHeight, solidHeatCapacity(vessel, glass, volume, solidsMass));
        double wetted = Math.min(vessel.rimLevel(), vessel.shape().level(volume));
        double conductance = Panes.conductance(
                vessel,
                glass,
                wetted,
                water.temperature(),
                plan.room().temperature().in("degC"));
        builder.add(new WallLoss(body, room, conductance, wallFactor));
        return body;
    }

    private double solidHeatCapacity(Vessels.Vessel vessel, Glass glass, double volume, double solidsMass) {
        double all = TankHeatCapacity.of(
                volume, water.temperature(), water.salinity(), solidsMass, Panes.mass(vessel, glass));
        return Math.max(0, all - water.density() * water.specificHeat() * volume);
    }

    private void surfaces(Body body, Cover cover, @Unit("m^2") double area, List<Supply> stirrers) {
        boolean open = cover == Cover.OPEN;
        if (open) {
            Parameter activity = builder.parameter(
                    "evaporation, activity of the surface of the " + body.name(),
                    "1",
                    0.5,
                    0.4,
                    0.7,
                    Basis.PUBLISHED,
                    "still pools: 0.50–0.57 over 477 unoccupied hours (E3S Web Conf. 2022), 0.74 (Smith, Löf and Jones 1998)");
            builder.add(new OpenSurface(body, room, air, area, airVapourPressure, activity));
        } else {
            builder.add(new CoveredSurface(body, room, area));
        }
        Parameter still = builder.parameter(
                "oxygen through the still surface of the " + body.name(),
                "m/s",
                cmPerHour(1.2),
                cmPerHour(0.5),
                cmPerHour(3),
                Basis.FROM_MEMORY,
                "0.5–4 cm/h with the pumps off; low-wind lakes 1.5–3.1 cm/h (Cole et al. 2010)");
        Parameter stirred = builder.parameter(
                "oxygen through the stirred surface of the " + body.name(),
                "m/s",
                cmPerHour(6),
                cmPerHour(4),
                cmPerHour(10),
                Basis.FROM_MEMORY,
                "one small pump at the surface");
        Parameter covered = builder.parameter(
                "oxygen past the cover of the " + body.name() + ", factor",
                "1",
                open ? 1 : 0.7,
                open ? 1 : 0.4,
                1,
                Basis.FROM_MEMORY,
                open ? "nothing lies over it" : "a lid keeps the air under it from changing");
        builder.add(new SurfaceOxygen(
                body, air, area, SchmidtNumber.ofOxygen(water.temperature()), still, stirred, covered, stirrers));
    }

    private static double cmPerHour(double velocity) {
        return velocity / 100 / 3600;
    }

    private double surface(Vessels vessels) {
        double level = vessels.display().shape().level(volumes.display());
        return vessels.display().shape().surface(level);
    }

    private double displaySolids() {
        return massOf(plan.display().rock()) + massOf(plan.display().sand());
    }

    private static double massOf(org.tidewright.plan.model.@Nullable Rock rock) {
        return rock == null ? 0 : rock.dryMass().in("kg");
    }

    private static double massOf(org.tidewright.plan.model.@Nullable Sand sand) {
        return sand == null ? 0 : sand.dryMass().in("kg");
    }

    private Parameter roomLoss(Room described) {
        if (described.heatLoss() != null) {
            double stated = described.heatLoss().in("W/K");
            return builder.parameter(
                    "heat loss of the room", "W/K", stated, 0.75 * stated, 1.3 * stated, Basis.YOUR_PLAN, "as stated");
        }
        double floor = described.floorArea().in("m^2");
        return builder.parameter(
                "heat loss of the room",
                "W/K",
                2 * floor,
                1 * floor,
                4 * floor,
                Basis.COMMON_PRACTICE,
                "1–4 W/K per square metre of floor; the plan does not say");
    }

    // ── devices on back-up power ──

    /** Pumps whose running moves a body's surface; the return pump moves all that it feeds. */
    private List<Supply> stirrersOf(String place, boolean withReturn) {
        List<Supply> stirrers = new ArrayList<>();
        for (CirculationPump pump : plan.circulationPumps()) {
            if (bodyNameOf(pump.standsIn()).equals(place)) {
                stirrers.add(supplies.of(pump.name()));
            }
        }
        for (AirPump pump : plan.airPumps()) {
            if (bodyNameOf(pump.standsIn()).equals(place)) {
                stirrers.add(supplies.of(pump.name()));
            }
        }
        if (withReturn && plan.hasSump()) {
            stirrers.add(supplies.of(Names.RETURN_PUMP));
        }
        return stirrers;
    }

    private String bodyNameOf(String place) {
        return Names.sections(plan).contains(place) ? SUMP : place;
    }

    private Body bodyOf(String place) {
        String name = bodyNameOf(place);
        if (name.equals(SUMP)) {
            return requireNonNull(sump);
        }
        return name.equals(Names.DISPLAY) ? display : requireNonNull(refugium);
    }

    private void devices(Plan described) {
        for (Heater heater : described.heaters()) {
            heater(heater);
        }
        for (CirculationPump pump : described.circulationPumps()) {
            submerged(pump.standsIn(), pump.power().in("W"), supplies.of(pump.name()));
        }
        if (described.returnLine() != null) {
            builder.add(new DeviceHeat(
                    requireNonNull(sump),
                    room,
                    described.returnLine().pump().power().in("W"),
                    1,
                    supplies.of(Names.RETURN_PUMP)));
        }
        described.gear().forEach(gear -> {
            if (gear.power() != null) {
                submerged(gear.standsIn(), gear.power().in("W"), supplies.of(gear.name()));
            }
        });
        described.lights().forEach(light -> {
            double share =
                    light.heatToWater() == null ? 0.45 : light.heatToWater().in("1");
            Supply supply = supplies.of(light.name());
            builder.add(new DeviceHeat(bodyOf(light.over()), room, light.power().in("W"), share, supply));
        });
        for (AirPump pump : described.airPumps()) {
            airPump(pump);
        }
        supplies.generatorLoad(described);
    }

    private void submerged(String place, double power, Supply supply) {
        builder.add(new DeviceHeat(bodyOf(place), room, power, 1, supply));
    }

    private void heater(Heater heater) {
        double setpoint = heater.setpoint().in("degC");
        double band = heater.band() == null ? 0.3 : heater.band().in("K");
        Setting heating =
                builder.setting(heater.name() + " thermostat calls", water.temperature() < setpoint - band / 2 ? 1 : 0);
        builder.add(new org.tidewright.twin.mechanism.heat.Heater(
                heater.name(),
                bodyOf(heater.standsIn()),
                room,
                heater.power().in("W"),
                setpoint,
                band,
                supplies.of(heater.name()),
                heating));
    }

    private void airPump(AirPump pump) {
        Supply supply = supplies.of(pump.name());
        Parameter efficiency = builder.parameter(
                "oxygen off the bubbles of the " + pump.name(),
                "1/m",
                0.04,
                0.02,
                0.06,
                Basis.FROM_MEMORY,
                "2–4 % per metre of depth off coarse stones, 4–8 % off fine ones");
        builder.add(new AirStone(
                bodyOf(pump.standsIn()),
                air,
                pump.airFlow().in("m^3/s"),
                pump.depth().in("m"),
                efficiency,
                supply));
        builder.add(new DeviceHeat(bodyOf(pump.standsIn()), room, pump.power().in("W"), 0, supply));
    }

    /** The plan's back-up, for those who tell of it. */
    public @Nullable Backup backup() {
        return plan.backup();
    }
}
