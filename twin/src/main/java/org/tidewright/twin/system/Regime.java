package org.tidewright.twin.system;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tidewright.plan.model.NewWater;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.quantity.Amount;
import org.tidewright.seawater.gas.OxygenSolubility;
import org.tidewright.twin.contract.Routine;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.law.carbonate.OccupantCarbonDioxide;
import org.tidewright.twin.law.nutrient.ElementMass;
import org.tidewright.twin.mechanism.air.People;
import org.tidewright.twin.run.Network;
import org.tidewright.twin.tank.Basins;
import org.tidewright.twin.tank.Water;

/** How the keeper runs it: meals, doses, water changes, and when there are people in the room. */
final class Regime {
    private static final double DAY = 86_400;

    /** Of an adult of 70 kg who sits, mol/s. */
    private static final double CARBON_DIOXIDE_OF_ONE = OccupantCarbonDioxide.rate(
            OccupantCarbonDioxide.Person.MAN_30_TO_60.basalMetabolicRate(70), OccupantCarbonDioxide.SITTING);

    /** Breath and skin of one, 50 g an hour; common practice. */
    static final double VAPOUR_OF_ONE = 50e-6 / 3600;

    private final Feeding feeding;

    Regime(
            Plan plan,
            Network.Builder builder,
            World world,
            Surroundings room,
            Pools pools,
            Basins basins,
            Water water,
            Levers levers,
            Setting mains) {
        feeding = new Feeding(builder, levers, world, pools, basins.display().body(), meals(plan));
        new Dosing(plan, builder, levers, world, basins, mains);
        new WaterChanges(builder, levers, world, basins.display().body(), newWater(plan, water), changes(plan));
        people(plan, builder, levers, world, room);
    }

    private static List<Feeding.Meal> meals(Plan plan) {
        List<Feeding.Meal> meals = new ArrayList<>();
        for (org.tidewright.plan.model.Feeding fed : plan.feeding()) {
            double mass = fed.mass().in("kg");
            Ration ration = new Ration(
                    mass * fed.food().carbon() / ElementMass.CARBON,
                    mass * fed.food().nitrogen() / ElementMass.NITROGEN,
                    mass * fed.food().phosphorus() / ElementMass.PHOSPHORUS);
            for (LocalTime time : fed.times()) {
                meals.add(new Feeding.Meal(fed.name(), ration, time.toSecondOfDay(), days(fed.every())));
            }
        }
        return meals;
    }

    private static int days(@Nullable Amount every) {
        return every == null ? 1 : (int) Math.max(1, Math.round(every.in("s") / DAY));
    }

    private static List<WaterChanges.Change> changes(Plan plan) {
        return plan.waterChanges().stream()
                .map(change -> new WaterChanges.Change(
                        change.name(), change.volume().in("m^3"), change.at().toSecondOfDay(), days(change.every())))
                .toList();
    }

    /** What the keeper mixes; where the plan does not say, seawater of its salinity as the sea has it. */
    static Brew newWater(Plan plan, Water water) {
        NewWater mixed = plan.newWater();
        double salinity = mixed == null ? water.salinity() : mixed.salinity().in("1");
        double temperature = mixed == null || mixed.temperature() == null
                ? water.temperature()
                : mixed.temperature().in("degC");
        KeptWater sea = KeptWater.ofSea(salinity, water.density());
        Map<Stock, Double> holds = new EnumMap<>(Stock.class);
        holds.put(Stock.SALT, sea.salt());
        holds.put(Stock.HEAT, water.density() * water.specificHeat() * temperature);
        holds.put(Stock.OXYGEN, OxygenSolubility.perVolume(temperature, salinity));
        holds.put(
                Stock.ALKALINITY,
                mixed == null ? sea.alkalinity() : or(mixed.alkalinity(), "mol/m^3", 1, sea.alkalinity()));
        holds.put(
                Stock.CALCIUM,
                mixed == null ? sea.calcium() : or(mixed.calcium(), "kg/m^3", KeptWater.CALCIUM_MASS, sea.calcium()));
        holds.put(
                Stock.MAGNESIUM,
                mixed == null
                        ? sea.magnesium()
                        : or(mixed.magnesium(), "kg/m^3", KeptWater.MAGNESIUM_MASS, sea.magnesium()));
        holds.put(Stock.NITRATE, mixed == null ? 0 : or(mixed.nitrate(), "kg/m^3", KeptWater.NITRATE_MASS, 0));
        holds.put(Stock.PHOSPHATE, mixed == null ? 0 : or(mixed.phosphate(), "kg/m^3", KeptWater.PHOSPHATE_MASS, 0));
        holds.put(
                Stock.INORGANIC_CARBON,
                KeptWater.carbonUnderAir(
                        temperature, salinity, holds.getOrDefault(Stock.ALKALINITY, 0.0), water.density()));
        return new Brew(holds);
    }

    private static double or(@Nullable Amount stated, String unit, double perMole, double otherwise) {
        return stated == null ? otherwise : stated.in(unit) / perMole;
    }

    private static void people(Plan plan, Network.Builder builder, Levers levers, World world, Surroundings room) {
        // A run begins at midnight: whose stay leads past it is there already, and who comes at midnight has come.
        double atMidnight = plan.room().people().stream()
                .filter(group -> group.from().equals(LocalTime.MIDNIGHT)
                        || group.from().toSecondOfDay() + group.daily().in("s") > DAY)
                .mapToDouble(org.tidewright.plan.model.Room.People::count)
                .sum();
        Setting present = levers.amount("people in the room", "how many there are now", "1", atMidnight);
        builder.add(new People(world.people(), room.air().air(), present, CARBON_DIOXIDE_OF_ONE, VAPOUR_OF_ONE));
        for (org.tidewright.plan.model.Room.People group : plan.room().people()) {
            double from = group.from().toSecondOfDay();
            double until = (from + group.daily().in("s")) % DAY;
            builder.add(new Routine(
                    "people come",
                    Routine.daily(from, 1),
                    (now, switches) -> switches.set(present, now.value(present) + group.count()),
                    false));
            builder.add(new Routine(
                    "people leave",
                    Routine.daily(until, 1),
                    (now, switches) -> switches.set(present, Math.max(0, now.value(present) - group.count())),
                    false));
        }
    }

    Feeding feeding() {
        return feeding;
    }
}
