package org.tidewright.husbandry.estimate;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.plan.model.NewWater;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.WaterKept;
import org.tidewright.plan.quantity.Amount;

/** What a plan lets expect of its water, and of the water that is mixed for it. */
final class Expectations {
    private static final double DAY = 86_400;

    /** A use the keeper states may be old: known to a quarter at best; a guess. */
    private static final double STATED_USE = 0.25;

    /** Doses are set to what is used, to within about a third; common practice. */
    private static final double DOSED_USE = 0.3;

    /** New water is what the plan says to a share of what its own level may differ; a guess. */
    private static final double NEW_WATER = 0.3;

    private Expectations() {}

    static Map<WaterQuantity, Inputs.Expected> of(Plan plan, List<Solution> planned) {
        Map<WaterQuantity, Inputs.Expected> expected = new EnumMap<>(WaterQuantity.class);
        Map<WaterQuantity, Double> kept = kept(plan.water());
        for (WaterQuantity quantity : WaterQuantity.values()) {
            Priors priors = Priors.of(quantity);
            Double level = kept.get(quantity);
            Known known = level == null
                    ? new Known(priors.usualLevel(), 2 * priors.levelError())
                    : new Known(level, priors.levelError());
            expected.put(quantity, new Inputs.Expected(known, new Known(0, priors.useError())));
        }
        Inputs.Expected alkalinity = expected.get(WaterQuantity.ALKALINITY);
        if (alkalinity != null) {
            expected.put(
                    WaterQuantity.ALKALINITY, new Inputs.Expected(alkalinity.level(), use(plan, planned, alkalinity)));
        }
        return expected;
    }

    /** Of alkalinity: as stated, else what the plan's doses make up for. */
    private static Known use(Plan plan, List<Solution> planned, Inputs.Expected alkalinity) {
        double anyUse = alkalinity.use().standardError();
        if (plan.inhabitants() != null && plan.inhabitants().alkalinityUse() != null) {
            Amount stated = plan.inhabitants().alkalinityUse();
            double use = stated.in("mol/(m^3*s)") * DAY;
            double doubt = Math.max(stated.doubtIn("mol/(m^3*s)") * DAY, STATED_USE * use);
            return new Known(use, doubt);
        }
        double dosed = planned.stream()
                .mapToDouble(
                        solution -> solution.amount(0, 1) * Math.max(0, solution.effectOn(WaterQuantity.ALKALINITY)))
                .sum();
        return new Known(dosed, Math.hypot(anyUse, DOSED_USE * dosed));
    }

    /** Of the plan's new water; of what it does not state, what is usual. */
    static Map<WaterQuantity, Known> newWater(Plan plan) {
        Map<WaterQuantity, Double> stated = plan.newWater() == null ? Map.of() : mixed(plan.newWater());
        Map<WaterQuantity, Known> water = new EnumMap<>(WaterQuantity.class);
        for (WaterQuantity quantity : List.of(
                WaterQuantity.SALINITY, WaterQuantity.ALKALINITY, WaterQuantity.CALCIUM, WaterQuantity.MAGNESIUM)) {
            Priors priors = Priors.of(quantity);
            Double level = stated.get(quantity);
            water.put(
                    quantity,
                    level == null
                            ? new Known(priors.usualLevel(), priors.levelError())
                            : new Known(level, NEW_WATER * priors.levelError()));
        }
        for (WaterQuantity quantity :
                List.of(WaterQuantity.NITRATE, WaterQuantity.NITRITE, WaterQuantity.AMMONIA, WaterQuantity.PHOSPHATE)) {
            double level = stated.getOrDefault(quantity, 0.0);
            water.put(quantity, new Known(level, 0.1 * Priors.of(quantity).levelError()));
        }
        return water;
    }

    /** The same where the journal says more of one change; what it says was measured, and is as sure as the plan. */
    static Map<WaterQuantity, Known> newWater(Map<WaterQuantity, Known> planned, Map<WaterQuantity, Double> measured) {
        if (measured.isEmpty()) {
            return planned;
        }
        Map<WaterQuantity, Known> water = new EnumMap<>(planned);
        measured.forEach((quantity, level) -> water.computeIfPresent(
                quantity,
                (key, before) ->
                        new Known(level, NEW_WATER * Priors.of(quantity).levelError())));
        return water;
    }

    private static Map<WaterQuantity, Double> kept(WaterKept water) {
        Map<WaterQuantity, Double> kept = new HashMap<>();
        put(kept, WaterQuantity.SALINITY, water.salinity());
        put(kept, WaterQuantity.TEMPERATURE, water.temperature());
        put(kept, WaterQuantity.ALKALINITY, water.alkalinity());
        put(kept, WaterQuantity.CALCIUM, water.calcium());
        put(kept, WaterQuantity.MAGNESIUM, water.magnesium());
        put(kept, WaterQuantity.NITRATE, water.nitrate());
        put(kept, WaterQuantity.NITRITE, water.nitrite());
        put(kept, WaterQuantity.AMMONIA, water.ammonia());
        put(kept, WaterQuantity.PHOSPHATE, water.phosphate());
        return kept;
    }

    private static Map<WaterQuantity, Double> mixed(NewWater water) {
        Map<WaterQuantity, Double> mixed = new HashMap<>();
        put(mixed, WaterQuantity.SALINITY, water.salinity());
        put(mixed, WaterQuantity.ALKALINITY, water.alkalinity());
        put(mixed, WaterQuantity.CALCIUM, water.calcium());
        put(mixed, WaterQuantity.MAGNESIUM, water.magnesium());
        put(mixed, WaterQuantity.NITRATE, water.nitrate());
        put(mixed, WaterQuantity.PHOSPHATE, water.phosphate());
        return mixed;
    }

    private static void put(Map<WaterQuantity, Double> levels, WaterQuantity quantity, @Nullable Amount amount) {
        if (amount != null) {
            levels.put(quantity, amount.in(quantity.held()));
        }
    }
}
