package org.tidewright.husbandry.burden;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import org.tidewright.plan.model.Feeding;
import org.tidewright.plan.model.Food;
import org.tidewright.plan.model.Inhabitants;
import org.tidewright.plan.model.Inhabitants.GrowthStage;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.quantity.Amount;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.forecast.Variant;
import org.tidewright.twin.law.biota.StockingLoad;
import org.tidewright.twin.law.gas.FishRespiration;

/**
 * A plan with animals added, or without some of those it has, and with the food that goes with them. Food is shared out as
 * breath is, by mass to the 0.8: small fish eat more for their mass.
 */
final class Joined {
    private static final double DAY = 86_400;
    private static final double REFERENCE = 25;
    private static final String ADDED = "added";

    private Joined() {}

    /** A plan that names nobody as one in which nobody lives. */
    static Plan resident(Plan plan) {
        return plan.inhabitants() == null ? living(plan, List.of(), plan.feeding()) : plan;
    }

    /** With them as they come. */
    static Plan young(Plan plan, Addition addition) {
        return with(plan, addition, addition.mass(), addition.isGrowing() ? GrowthStage.GROWING : GrowthStage.ADULT);
    }

    /** With them as they are when grown. */
    static Plan grown(Plan plan, Addition addition) {
        return with(plan, addition, addition.grown(), GrowthStage.ADULT);
    }

    private static Plan with(Plan plan, Addition addition, double mass, GrowthStage stage) {
        List<Inhabitants.Fish> fish = new ArrayList<>(fish(plan));
        fish.add(new Inhabitants.Fish(ADDED, null, Amount.of(mass, "kg"), addition.count(), null, stage));
        double breath = addition.count() * resting(mass);
        if (addition.food() == null && isFedLikeOthers(plan)) {
            return living(plan, fish, fed(plan, 1 + breath / resting(plan)));
        }
        double young = addition.food() == null
                ? StockingLoad.RATION.usual() * DAY * addition.count() * addition.mass()
                : addition.food();
        List<Feeding> meals = new ArrayList<>(plan.feeding());
        double perDay = young * breath / (addition.count() * resting(addition.mass()));
        if (perDay > 0) {
            meals.add(new Feeding(
                    ADDED,
                    Food.DRY_PELLET,
                    Amount.of(perDay / 2, "kg"),
                    List.of(LocalTime.of(9, 0), LocalTime.of(18, 0)),
                    null));
        }
        return living(plan, fish, meals);
    }

    /** Whether there are animals that are fed, whose ration tells that of others. */
    static boolean isFedLikeOthers(Plan plan) {
        return resting(plan) > 0 && !plan.feeding().isEmpty();
    }

    /** With so much of its animals and their food left. */
    static Plan share(Plan plan, @Unit("1") double left) {
        if (left <= 0) {
            return living(plan, List.of(), List.of());
        }
        List<Inhabitants.Fish> fewer = fish(plan).stream()
                .map(each -> new Inhabitants.Fish(
                        each.name(),
                        each.species(),
                        Amount.of(left * each.massOfOne(), "kg"),
                        each.count(),
                        each.length(),
                        each.stage()))
                .toList();
        return living(plan, fewer, fed(plan, left));
    }

    /** Live mass of those the plan names. */
    static @Unit("kg") double mass(Plan plan) {
        return fish(plan).stream()
                .mapToDouble(each -> each.count() * each.massOfOne())
                .sum();
    }

    private static double resting(Plan plan) {
        return fish(plan).stream()
                .mapToDouble(each -> each.count() * resting(each.massOfOne()))
                .sum();
    }

    private static double resting(double mass) {
        return FishRespiration.resting(mass, REFERENCE);
    }

    private static List<Inhabitants.Fish> fish(Plan plan) {
        return plan.inhabitants() == null ? List.of() : plan.inhabitants().fish();
    }

    private static List<Feeding> fed(Plan plan, double factor) {
        return plan.feeding().stream()
                .map(each -> new Feeding(
                        each.name(),
                        each.food(),
                        Amount.of(factor * each.mass().in("kg"), "kg"),
                        each.times(),
                        each.every()))
                .toList();
    }

    private static Plan living(Plan plan, List<Inhabitants.Fish> fish, List<Feeding> meals) {
        Inhabitants now = plan.inhabitants();
        Inhabitants then = now == null
                ? new Inhabitants(fish, List.of(), null, List.of(), null, null, null)
                : new Inhabitants(
                        fish,
                        now.invertebrates(),
                        now.coralTissue(),
                        now.corals(),
                        now.corallineArea(),
                        now.alkalinityUse(),
                        now.counted());
        return Variant.of(plan).living(then, meals).plan();
    }
}
