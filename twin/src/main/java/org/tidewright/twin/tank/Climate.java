package org.tidewright.twin.tank;

import static java.util.Objects.requireNonNull;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tidewright.plan.model.Glass;
import org.tidewright.plan.model.Names;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.Rock;
import org.tidewright.plan.model.Room;
import org.tidewright.plan.model.Sand;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Basis;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Layout;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.contract.Shape;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.contract.Watch;
import org.tidewright.twin.law.heat.TankHeatCapacity;
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
    /** Name of the room among the bodies. */
    public static final String ROOM = "room";

    private final Plan plan;
    private final Water water;
    private final Network.Builder builder;
    private final PowerSupplies supplies;
    private final WaterSurfaces surfaces;
    private final BackedDevices devices;
    private final Body room;
    private final Body display;
    private final @Nullable Body sump;
    private final @Nullable Body refugium;
    private final Volumes volumes;
    private final Parameter wallFactor;
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
        builder = new Network.Builder(Layout.OF_WATER_AND_HEAT, water.density(), water.specificHeat());
        Room described = plan.room();
        double roomCapacity =
                described.floorArea().in("m^2") * described.construction().capacityPerArea();
        room = builder.body(ROOM, Shape.none(), 0, roomCapacity);
        Body air = builder.body("air");
        Body life = builder.body("life");
        Body outdoors = builder.body("outdoors");
        builder.add(new RoomEnvelope(room, outdoors, weather, roomLoss(described)));
        wallFactor = builder.parameter(
                "heat loss of the tanks, factor",
                "1",
                1,
                0.75,
                1.3,
                Basis.FROM_MEMORY,
                "films by Churchill and Chu 1975 and radiation; what stands around the tank is not described");
        supplies = new PowerSupplies(builder, room, backupUsed ? plan.backup() : null);
        surfaces = new WaterSurfaces(plan, water, builder, room, air);
        devices = new BackedDevices(plan, water, builder, supplies, room, air);

        Vessels vessels = Vessels.of(plan);
        display = vesselBody(vessels.display(), plan.display().glass(), volumes.display(), displaySolids());
        surfaces.add(display, plan.display().cover(), surface(vessels), devices.stirrersOf(Names.DISPLAY));
        sump = plan.sump() == null ? null : sumpBody(vessels);
        refugium = plan.refugium() == null ? null : refugiumBody(vessels);
        Breathing.add(plan, water, builder, life, display, volumes.display(), sump, volumes.sump());
        devices.add(bodies());
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

    private Map<String, Body> bodies() {
        Map<String, Body> bodies = new HashMap<>();
        bodies.put(display.name(), display);
        if (sump != null) {
            bodies.put(sump.name(), sump);
        }
        if (refugium != null) {
            bodies.put(refugium.name(), refugium);
        }
        return bodies;
    }

    private void fill(State state, Body body, double volume) {
        state.fill(body, volume, water.temperature(), water.salinity(), water.oxygen());
    }

    // ── bodies and their surfaces ──

    private Body sumpBody(Vessels vessels) {
        Vessels.Vessel whole = vessels.wholeSump();
        double rock = requireNonNull(plan.sump()).sections().stream()
                .mapToDouble(section ->
                        section.rock() == null ? 0 : section.rock().dryMass().in("kg"))
                .sum();
        Body body = vesselBody(whole, plan.sump().glass(), volumes.sump(), rock);
        surfaces.add(body, plan.sump().cover(), whole.length() * whole.width(), devices.stirrersOf(Vessels.SUMP));
        Supply returnPump = supplies.of(Names.RETURN_PUMP);
        builder.add(new Circulation(display, body, running(vessels).displayFlow(), returnPump));
        return body;
    }

    private Body refugiumBody(Vessels vessels) {
        Vessels.Vessel vessel = requireNonNull(vessels.refugium());
        double solids = massOf(requireNonNull(plan.refugium()).rock())
                + massOf(plan.refugium().sand());
        Body body = vesselBody(vessel, plan.refugium().glass(), volumes.refugium(), solids);
        double area = vessel.length() * vessel.width();
        surfaces.add(body, plan.refugium().cover(), area, devices.stirrersOf(vessel.name()));
        builder.add(new Circulation(
                body, requireNonNull(sump), running(vessels).refugiumFlow(), supplies.of(Names.RETURN_PUMP)));
        return body;
    }

    private RunningState running(Vessels vessels) {
        return RunningState.of(plan, vessels, water.viscosity());
    }

    private Body vesselBody(Vessels.Vessel vessel, Glass glass, double volume, double solidsMass) {
        Body body = builder.body(
                vessel.name(),
                vessel.shape(),
                vessel.bottomHeight(),
                solidHeatCapacity(vessel, glass, volume, solidsMass));
        double wetted = Math.min(vessel.rimLevel(), vessel.shape().level(volume));
        builder.add(new WallLoss(
                body,
                room,
                Panes.transmittance(glass, wetted),
                vessel.rimLength() * wetted,
                Panes.bottomConductance(vessel),
                wallFactor));
        return body;
    }

    private double solidHeatCapacity(Vessels.Vessel vessel, Glass glass, double volume, double solidsMass) {
        double all = TankHeatCapacity.of(
                volume, water.temperature(), water.salinity(), solidsMass, Panes.mass(vessel, glass));
        return Math.max(0, all - water.density() * water.specificHeat() * volume);
    }

    private double surface(Vessels vessels) {
        double level = vessels.display().shape().level(volumes.display());
        return vessels.display().shape().surface(level);
    }

    private double displaySolids() {
        return massOf(plan.display().rock()) + massOf(plan.display().sand());
    }

    private static double massOf(@Nullable Rock rock) {
        return rock == null ? 0 : rock.dryMass().in("kg");
    }

    private static double massOf(@Nullable Sand sand) {
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
}
