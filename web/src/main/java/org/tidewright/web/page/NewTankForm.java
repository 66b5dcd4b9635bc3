package org.tidewright.web.page;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.newtank.NewTankOrder;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.twin.forecast.NewTank.Seed;

/**
 * The form of the new tank's page, and the order it makes.
 *
 * @param test test dose; null where it begins with a fish
 */
public record NewTankForm(
        Choice seed,
        Choice begin,
        @Nullable Choice test,
        Entry temperature,
        Entry fish,
        Entry mass,
        NewTankOrder order) {

    /** Reads it from a query over what the plan suggests. */
    public static NewTankForm read(Levers.Query query, Plan plan, UnitSystem units) {
        NewTankOrder usual = NewTankOrder.usual(plan);
        Measure.Unit degree = Measure.TEMPERATURE.unit(units);
        Choice seed = Choice.read(
                query,
                "seed",
                "Brought in on the first day",
                value(usual.seed()),
                List.of("none", "nothing", "some", "a seed", "ripe", "live rock"));
        Choice begin = Choice.read(
                query,
                "begin",
                "Begun with",
                "ammonium",
                List.of("ammonium", "ammonium chloride", "fish", "a first fish"));
        Choice test = Choice.is(begin, "fish")
                ? null
                : Choice.read(query, "test", "Test dose, mg/L N", "1", List.of("1", "1", "2", "2"));
        Entry temperature = Entry.read(
                query,
                "temperature_" + degree.suffix(),
                "Water, " + degree.symbol(),
                degree.shown(usual.temperature()),
                degree.shown(18),
                degree.shown(31),
                false);
        Entry fish = Entry.read(query, "fish", "Fish to come", usual.fish(), 1, 8, true);
        Entry mass = Entry.read(query, "mass_g", "Each weighs, g", 1000 * usual.massOfOne(), 0.5, 500, false);
        return new NewTankForm(
                seed,
                begin,
                test,
                temperature,
                fish,
                mass,
                new NewTankOrder(
                        switch (seed.chosen()) {
                            case "none" -> Seed.NONE;
                            case "some" -> Seed.SOME;
                            default -> Seed.RIPE;
                        },
                        Choice.is(begin, "fish"),
                        Choice.is(test, "2") ? 2 : 1,
                        (temperature.value() - degree.zero()) / degree.factor(),
                        (int) fish.value(),
                        mass.value() / 1000));
    }

    private static String value(Seed seed) {
        return switch (seed) {
            case NONE -> "none";
            case SOME -> "some";
            case RIPE -> "ripe";
        };
    }
}
