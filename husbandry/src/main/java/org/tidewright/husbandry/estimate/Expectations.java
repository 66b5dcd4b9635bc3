package org.tidewright.husbandry.estimate;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
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

    /** What comes is set to what is used, to within about a third; common practice. */
    private static final double BALANCED_USE = 0.3;

    /** Quantities with a use of their own; calcium and magnesium follow alkalinity, the others a room and its devices. */
    private static final Set<WaterQuantity> BALANCED =
            EnumSet.of(WaterQuantity.ALKALINITY, WaterQuantity.NITRATE, WaterQuantity.PHOSPHATE);

    /** New water is what the plan says, to a share of what kept systems differ by; a guess. */
    static final double NEW_WATER = 0.2;

    /** The same of nutrients, of which there should be none in it; a guess. */
    static final double NUTRIENTS_OF_NEW_WATER = 0.02;

    private Expectations() {}

    /**
     * Of levels and uses. A kept system is about in balance: what it uses is what comes, by doses and by new water.
     *
     * @param solutions as they are dosed
     * @param renewals as they are made
     * @param days over which both are seen
     */
    static Map<WaterQuantity, Inputs.Expected> of(
            Plan plan, List<Solution> solutions, List<Renewal> renewals, double days) {
        Map<WaterQuantity, Double> kept = kept(plan.water());
        Map<WaterQuantity, Inputs.Expected> expected = new EnumMap<>(WaterQuantity.class);
        for (WaterQuantity quantity : WaterQuantity.values()) {
            Priors priors = Priors.of(quantity);
            Double level = kept.get(quantity);
            Known stated = level == null ? null : new Known(level, priors.statedError());
            double comes = BALANCED.contains(quantity)
                    ? coming(quantity, solutions, days)
                            + renewed(
                                    quantity,
                                    level == null ? priors.usualLevel().value() : level,
                                    renewals,
                                    days)
                    : 0;
            Known use = new Known(comes, Math.hypot(priors.useError(), BALANCED_USE * comes));
            expected.put(
                    quantity,
                    new Inputs.Expected(stated, quantity == WaterQuantity.ALKALINITY ? statedUse(plan, use) : use));
        }
        return expected;
    }

    private static double coming(WaterQuantity quantity, List<Solution> solutions, double days) {
        return solutions.stream()
                        .mapToDouble(solution -> solution.amount(0, days) * solution.effectOn(quantity))
                        .sum()
                / days;
    }

    private static double renewed(WaterQuantity quantity, double level, List<Renewal> renewals, double days) {
        double sum = 0;
        for (Renewal renewal : renewals) {
            Known water = renewal.newWater().get(quantity);
            if (water != null && renewal.time() >= 0 && renewal.time() < days) {
                sum += renewal.share() * (water.value() - level);
            }
        }
        return sum / days;
    }

    /** Of alkalinity as the plan states it, if it does. */
    private static Known statedUse(Plan plan, Known otherwise) {
        if (plan.inhabitants() == null || plan.inhabitants().alkalinityUse() == null) {
            return otherwise;
        }
        Amount stated = plan.inhabitants().alkalinityUse();
        double use = stated.in("mol/(m^3*s)") * DAY;
        double doubt = Math.max(stated.doubtIn("mol/(m^3*s)") * DAY, STATED_USE * use);
        return new Known(use, doubt);
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
                            ? priors.usualLevel()
                            : new Known(level, NEW_WATER * priors.usualLevel().standardError()));
        }
        for (WaterQuantity quantity :
                List.of(WaterQuantity.NITRATE, WaterQuantity.NITRITE, WaterQuantity.AMMONIA, WaterQuantity.PHOSPHATE)) {
            double level = stated.getOrDefault(quantity, 0.0);
            water.put(
                    quantity,
                    new Known(
                            level,
                            NUTRIENTS_OF_NEW_WATER
                                    * Priors.of(quantity).usualLevel().standardError()));
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
                (key, before) -> new Known(
                        level, NEW_WATER * Priors.of(quantity).usualLevel().standardError())));
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
