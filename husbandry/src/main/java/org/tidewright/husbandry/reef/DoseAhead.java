package org.tidewright.husbandry.reef;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.tidewright.plan.model.Dosing;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.Salt;
import org.tidewright.seawater.unit.Unit;

/**
 * What a solution of the plan will have to bring once the corals have grown: today's dose, which is taken to hold the water
 * level, and what skeletons will take besides. Limewater is left as it is: how much of it a tank can take is set by what
 * evaporates.
 *
 * @param supplies alkalinity, calcium or magnesium
 * @param now dosed by the plan
 * @param then dosed after the time
 */
public record DoseAhead(
        String supplies,
        Dosing dosing,
        @Unit("m^3/s") double now,
        @Unit("m^3/s") Ranged then) {
    /** The solution that brings most of each of the three, where the plan has one. */
    public static List<DoseAhead> of(Plan plan, Growth growth, @Unit("y") double years) {
        Ranged alkalinity = growth.moreAlkalinity(years);
        if (alkalinity.value() <= 0) {
            return List.of();
        }
        Demand more = growth.demand(years).less(growth.demand(0));
        List<DoseAhead> doses = new ArrayList<>();
        add(doses, plan, "alkalinity", Salt::alkalinity, alkalinity);
        add(doses, plan, "calcium", Salt::calcium, alkalinity.times(more.calcium() / more.alkalinity()));
        add(doses, plan, "magnesium", Salt::magnesium, alkalinity.times(more.magnesium() / more.alkalinity()));
        return List.copyOf(doses);
    }

    private static void add(
            List<DoseAhead> doses, Plan plan, String supplies, ToDoubleFunction<Salt> part, Ranged more) {
        main(plan, part).ifPresent(dosing -> {
            double now = dosing.perDay().in("m^3/s");
            double strength = strength(dosing, part);
            doses.add(new DoseAhead(
                    supplies,
                    dosing,
                    now,
                    new Ranged(
                            now + more.value() / strength, now + more.low() / strength, now + more.high() / strength)));
        });
    }

    private static Optional<Dosing> main(Plan plan, ToDoubleFunction<Salt> part) {
        return plan.dosing().stream()
                .filter(dosing -> dosing.salt() != Salt.CALCIUM_HYDROXIDE
                        && dosing.salt().organicCarbon() == 0
                        && dosing.strength() != null
                        && part.applyAsDouble(dosing.salt()) > 0)
                .max(Comparator.comparingDouble(dosing -> dosing.perDay().in("m^3/s") * strength(dosing, part)));
    }

    /** Moles of what is wanted in a volume of the solution. */
    private static double strength(Dosing dosing, ToDoubleFunction<Salt> part) {
        return dosing.strength() == null
                ? 0
                : dosing.strength().in("kg/m^3") / dosing.salt().molarMass() * part.applyAsDouble(dosing.salt());
    }
}
