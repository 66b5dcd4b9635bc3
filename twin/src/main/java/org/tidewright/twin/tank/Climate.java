package org.tidewright.twin.tank;

import static java.util.Objects.requireNonNull;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tidewright.plan.model.Cover;
import org.tidewright.plan.model.Names;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.Room;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Basis;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Layout;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.contract.Shape;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.contract.Watch;
import org.tidewright.twin.mechanism.heat.RoomEnvelope;
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
    private final Basins basins;
    private final Network network;

    /**
     * The climate of a plan in an outage.
     *
     * @param volumes where the drain-down has left the water
     * @param backupUsed whether battery and generator serve
     * @param watches what else the run is to note
     */
    public static Climate of(
            Plan plan, Basins.Volumes volumes, Weather weather, boolean backupUsed, WatchMaker watches) {
        return new Climate(plan, volumes, weather, backupUsed, watches);
    }

    /** Makes watches over the display. */
    @FunctionalInterface
    public interface WatchMaker {
        List<Watch> over(Body display);
    }

    private Climate(Plan plan, Basins.Volumes volumes, Weather weather, boolean backupUsed, WatchMaker watches) {
        this.plan = plan;
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
        supplies = new PowerSupplies(builder, room, backupUsed ? plan.backup() : null);
        surfaces = new WaterSurfaces(plan, water, builder, room, air);
        devices = new BackedDevices(plan, water, builder, supplies, room, air);

        basins = new Basins(plan, water, volumes, builder);
        display = basins.display().body();
        basins.addWalls(builder, room);
        addSurfaces();
        addCirculation();
        Body sump = sump();
        Breathing.add(plan, water, builder, life, display, volumes.display(), sump, volumes.sump());
        devices.add(basins.bodies());
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
        return basins.sump() == null ? null : basins.sump().body();
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
        for (Basins.Basin basin : basins.all()) {
            state.fill(basin.body(), basin.volume(), water.temperature(), water.salinity(), water.oxygen());
        }
        double roomTemperature = plan.room().temperature().in("degC");
        state.set(room, Stock.HEAT, room.solidHeatCapacity() * roomTemperature);
        supplies.fill(state, parameters);
        return state;
    }

    private void addSurfaces() {
        Basins.Basin tank = basins.display();
        surfaces.add(tank.body(), plan.display().cover(), tank.surface(), devices.stirrersOf(Names.DISPLAY));
        Basins.Basin sump = basins.sump();
        if (sump != null) {
            Cover cover = requireNonNull(plan.sump()).cover();
            surfaces.add(sump.body(), cover, sump.surface(), devices.stirrersOf(Vessels.SUMP));
        }
        Basins.Basin refugium = basins.refugium();
        if (refugium != null) {
            Cover cover = requireNonNull(plan.refugium()).cover();
            surfaces.add(
                    refugium.body(),
                    cover,
                    refugium.surface(),
                    devices.stirrersOf(plan.refugium().name()));
        }
    }

    private void addCirculation() {
        Body sump = sump();
        if (sump == null) {
            return;
        }
        Supply returnPump = supplies.of(Names.RETURN_PUMP);
        builder.add(Circulation.level(display, sump, basins.running().displayFlow(), returnPump));
        Basins.Basin refugium = basins.refugium();
        if (refugium != null) {
            builder.add(
                    Circulation.level(refugium.body(), sump, basins.running().refugiumFlow(), returnPump));
        }
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
