package org.tidewright.twin.system;

import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.Room;
import org.tidewright.plan.source.Basis;
import org.tidewright.seawater.heat.MoistAir;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.contract.Shape;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.mechanism.air.RoomAir;
import org.tidewright.twin.mechanism.air.Ventilation;
import org.tidewright.twin.mechanism.air.Weather;
import org.tidewright.twin.mechanism.heat.HouseHeating;
import org.tidewright.twin.mechanism.heat.RoomEnvelope;
import org.tidewright.twin.run.Network;
import org.tidewright.twin.run.State;
import org.tidewright.twin.tank.RunningHeat;

/** The room: its fabric, which the house heats or cools, and its air, which people and windows change. */
final class Surroundings {
    /** Height of a room where the plan states no volume of air; common practice. */
    private static final double USUAL_HEIGHT = 2.4;

    /** Air changes of a dwelling with its windows shut, 0.3 to 1 per hour; common practice. */
    private static final double USUAL_CHANGES = 0.5 / 3600;

    /** Carbon dioxide in clean air, 2024 mean, NOAA Global Monitoring Laboratory. */
    private static final double OUTDOORS = 423e-6;

    private static final double ATMOSPHERE = 101_325;
    private static final double DAY = 86_400;

    /** The house follows its thermostat within the hour. */
    private static final double HEATING_TIME = 1800;

    /** Heating and cooling of dwellings, sized at 50 to 150 W/m² of floor; common practice. */
    private static final double HEATING_PER_FLOOR = 100;

    private static final double FRESH_DENSITY = 997.05;

    /** Where the tank gives off more vapour than ventilation could carry away, some is still outdoors. */
    private static final double DRIEST_OUTDOORS = 0.2;

    private final Room described;
    private final Body fabric;
    private final RoomAir air;
    private final Setting changes;
    private final Setting temperature;
    private final Setting heating;
    private final double vapourWithin;
    private final double carbonDioxideOutdoors;
    private final double usualChanges;
    private final double unnamed;

    Surroundings(Plan plan, Network.Builder builder, Levers levers, World world, Weather weather) {
        described = plan.room();
        double usual = described.temperature().in("degC");
        double capacity =
                described.floorArea().in("m^2") * described.construction().capacityPerArea();
        fabric = builder.body("room", Shape.none(), 0, capacity);
        Body airBody = builder.pool("air of the room", Stock.WATER, Stock.HEAT, Stock.INORGANIC_CARBON);
        air = new RoomAir(airBody, fabric, volume());
        vapourWithin = MoistAir.vapourPressure(usual, described.humidity().in("1"));
        usualChanges = described.airChanges() == null
                ? USUAL_CHANGES
                : described.airChanges().in("1/s");
        unnamed = described.people().isEmpty() ? keeping(described.usualCarbonDioxide(), usual) : 0;
        changes =
                levers.amount("air changes", "of the room; an open window makes 3 to 10 an hour", "1/s", usualChanges);
        temperature = levers.amount("room temperature", "what its heating and cooling hold", "degC", usual);
        heating = levers.onOff("room heating", "heating and cooling of the room");
        builder.add(new RoomEnvelope(fabric, world.outdoors(), weather, heatLoss(builder)));
        double most = HEATING_PER_FLOOR * described.floorArea().in("m^2");
        builder.add(new HouseHeating(world.house(), fabric, temperature, heating, capacity / HEATING_TIME, most));
        double vapourOutdoors = vapourOutdoors(plan, usual);
        // Its share of the air is told of dry air; vapour takes a per cent or two of the room.
        carbonDioxideOutdoors = shareOutdoors() * (ATMOSPHERE - vapourOutdoors);
        builder.add(new Ventilation(air, world.outdoors(), changes, weather, vapourOutdoors, carbonDioxideOutdoors));
    }

    /** People who on the mean of the day keep the room's air at a share of carbon dioxide. */
    private double keeping(@Unit("1") double carbonDioxide, @Unit("degC") double usual) {
        return air.amountFor(excess(carbonDioxide), usual) * usualChanges / Breath.CARBON_DIOXIDE;
    }

    /** Partial pressure in the room above that outdoors at a share of carbon dioxide in dry air. */
    private @Unit("Pa") double excess(@Unit("1") double carbonDioxide) {
        return Math.max(0, carbonDioxide - shareOutdoors()) * (ATMOSPHERE - vapourWithin);
    }

    /** Carbon dioxide in the dry air outdoors. */
    private @Unit("1") double shareOutdoors() {
        return described.carbonDioxideOutdoors() == null
                ? OUTDOORS
                : described.carbonDioxideOutdoors().in("1");
    }

    /** People who are always there for those the plan does not name, as a mean of the day; 0 where it names any. */
    @Unit("1")
    double unnamed() {
        return unnamed;
    }

    private double volume() {
        return described.airVolume() == null
                ? described.floorArea().in("m^2") * USUAL_HEIGHT
                : described.airVolume().in("m^3");
    }

    /**
     * The vapour outdoors that lets the room have its stated humidity with the tank and the people in it: what the plan says
     * is measured beside the tank.
     */
    private double vapourOutdoors(Plan plan, double usual) {
        double evaporated = RunningHeat.of(plan)
                .evaporation(
                        plan.water().temperature().in("degC"),
                        usual,
                        described.humidity().in("1"));
        double given = evaporated / FRESH_DENSITY + (unnamed + meanPeople()) * Breath.VAPOUR;
        double above = given / (air.waterFor(1, usual) * usualChanges);
        return Math.max(DRIEST_OUTDOORS * vapourWithin, vapourWithin - above);
    }

    /** People in the room in the mean of a day. */
    private double meanPeople() {
        return described.people().stream()
                .mapToDouble(group -> group.count() * group.daily().in("s") / DAY)
                .sum();
    }

    private Parameter heatLoss(Network.Builder builder) {
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

    void fill(State state) {
        double usual = described.temperature().in("degC");
        state.set(fabric, Stock.HEAT, fabric.solidHeatCapacity() * usual);
        state.set(air.air(), Stock.WATER, air.waterFor(vapourWithin, usual));
        double excess = unnamed > 0 ? excess(described.usualCarbonDioxide()) : 0;
        state.set(air.air(), Stock.INORGANIC_CARBON, air.amountFor(carbonDioxideOutdoors + excess, usual));
    }

    Body fabric() {
        return fabric;
    }

    RoomAir air() {
        return air;
    }

    Setting changes() {
        return changes;
    }

    Setting temperature() {
        return temperature;
    }

    Setting heating() {
        return heating;
    }

    /** Partial pressure of carbon dioxide outdoors. */
    @Unit("atm")
    double carbonDioxideOutdoors() {
        return carbonDioxideOutdoors / ATMOSPHERE;
    }
}
