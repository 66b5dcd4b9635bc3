package org.tidewright.twin.system;

import java.util.List;
import org.tidewright.plan.source.Basis;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.contract.Routine;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.contract.Transfers;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.law.biota.BodyComposition;
import org.tidewright.twin.law.biota.Digestion;
import org.tidewright.twin.run.Network;

/** Meals: most is eaten as long as there are fish with room for it, the rest drifts and rots. */
final class Feeding {
    private static final double DAY = 86_400;

    /** Carbon of a meal that is none. */
    private static final double TRACE = 1e-12;

    private final Setting factor;
    private final List<Meal> meals;

    /**
     * A meal that comes again.
     *
     * @param ration each time
     * @param timeOfDay since midnight
     * @param everyDays 1 for daily
     */
    record Meal(String name, Ration ration, @Unit("s") double timeOfDay, int everyDays) {}

    Feeding(Network.Builder builder, Levers levers, World world, Pools pools, Body water, List<Meal> meals) {
        this.meals = List.copyOf(meals);
        factor = levers.factor("feed", "every meal");
        Parameter uneaten = builder.parameter(
                "food that is not eaten",
                "1",
                Digestion.NITROGEN_ADULT.uneaten(),
                0.01,
                0.3,
                Basis.COMMON_PRACTICE,
                "a twentieth, 0–30 %");
        for (Meal meal : meals) {
            builder.add(new Routine(meal.name(), Routine.daily(meal.timeOfDay(), meal.everyDays()), (now, switches) -> {
                Transfers out = switches.atOnce();
                Ration served = meal.ration().times(now.value(factor));
                double eaten = Math.min(1 - now.value(uneaten), room(now, pools) / Math.max(TRACE, served.carbon()));
                serve(out, world.store(), pools.stomach(), served.times(eaten));
                serve(out, world.store(), water, served.times(1 - eaten));
            }));
        }
    }

    /** Carbon that would fill the stomachs of the fish there are. */
    private static double room(View now, Pools pools) {
        double mass = now.stock(pools.fish(), Stock.ORGANIC_NITROGEN) / BodyComposition.NITROGEN;
        return Math.max(0, mass * Digestion.FULL - now.stock(pools.stomach(), Stock.ORGANIC_CARBON));
    }

    private static void serve(Transfers out, Body from, Body to, Ration ration) {
        out.move(Stock.ORGANIC_CARBON, from, to, ration.carbon());
        out.move(Stock.ORGANIC_NITROGEN, from, to, ration.nitrogen());
        out.move(Stock.ORGANIC_PHOSPHORUS, from, to, ration.phosphorus());
    }

    /** Setting: factor on every meal. */
    Setting factor() {
        return factor;
    }

    /** Mean of what is served a second. */
    Ration perSecond() {
        Ration sum = Ration.NONE;
        for (Meal meal : meals) {
            sum = sum.plus(meal.ration().times(1 / (DAY * meal.everyDays())));
        }
        return sum;
    }
}
