package org.tidewright.husbandry.solution;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tidewright.husbandry.estimate.Inputs;
import org.tidewright.husbandry.estimate.Known;
import org.tidewright.husbandry.journal.Span;
import org.tidewright.husbandry.quantity.QuantityStudy;
import org.tidewright.husbandry.quantity.WaterStudy;
import org.tidewright.plan.model.Dosing;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.Salt;
import org.tidewright.plan.model.WaterChange;
import org.tidewright.plan.quantity.Amount;
import org.tidewright.plan.source.Basis;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.law.carbonate.Limewater;

/** What a plan doses and changes, and what a log says is used: the facts a solution for the system starts from. */
public final class OwnDosing {
    private static final double DAY = 86_400;

    private OwnDosing() {}

    /**
     * Water changed each time and how often.
     *
     * @param volume each time
     */
    public record Changes(
            @Unit("m^3") double volume, @Unit("s") double period) {}

    /** The first solution of a salt that the plan doses. */
    public static Optional<Dosing> of(Plan plan, Salt salt) {
        return plan.dosing().stream().filter(dosing -> dosing.salt() == salt).findFirst();
    }

    /** How strong it is; limewater's share of saturation at the temperature of the room. */
    public static Solution solution(Plan plan, Dosing dosing) {
        if (dosing.strength() != null) {
            return Solution.ofMass(dosing.salt(), dosing.strength().in("kg/m^3"));
        }
        double share = dosing.saturation() == null ? 1 : dosing.saturation().in("1");
        return Solution.of(
                dosing.salt(),
                share * Limewater.saturated(plan.room().temperature().in("degC")));
    }

    /** Salts that stay or build skeletons, by what the plan doses of them a day; what is eaten is left out. */
    public static Map<Salt, @Unit("mol/d") Double> mineralsPerDay(Plan plan) {
        Map<Salt, Double> dosed = new EnumMap<>(Salt.class);
        for (Dosing dosing : plan.dosing()) {
            Salt salt = dosing.salt();
            if (salt.ammonia() + salt.nitrate() + salt.phosphate() + salt.organicCarbon() == 0) {
                double perDay = DAY * dosing.perDay().in("m^3/s");
                dosed.merge(salt, perDay * solution(plan, dosing).amount(salt), Double::sum);
            }
        }
        return dosed;
    }

    /** All water changes of the plan as one: those of the first's rhythm, the others spread over it. */
    public static Optional<Changes> changes(Plan plan) {
        if (plan.waterChanges().isEmpty()) {
            return Optional.empty();
        }
        double period = plan.waterChanges().get(0).every().in("s");
        double volume = 0;
        for (WaterChange change : plan.waterChanges()) {
            volume += change.volume().in("m^3") * period / change.every().in("s");
        }
        return Optional.of(new Changes(volume, period));
    }

    /** Moles of magnesium among those of magnesium and calcium in what is laid down, by what lives there. */
    @Unit("1")
    public static double magnesiumShare(Plan plan) {
        return Inputs.of(plan, List.of(), Span.EVER).magnesiumShare();
    }

    /** What is used a day, by the log; of alkalinity by the plan where no log tells. */
    public static List<DailyUse> uses(Plan plan, WaterStudy study) {
        List<DailyUse> uses = new ArrayList<>();
        for (QuantityStudy each : study.quantities()) {
            Supply supply = Supply.of(each.quantity()).orElse(null);
            Known use = each.use();
            if (supply != null && use != null) {
                uses.add(new DailyUse(
                        supply,
                        supply.amount(use.value()),
                        supply.amount(use.standardError()),
                        Basis.YOUR_LOG,
                        "estimated from its readings and doses"));
            }
        }
        boolean told = uses.stream().anyMatch(use -> use.supply() == Supply.ALKALINITY);
        if (!told && plan.inhabitants() != null && plan.inhabitants().alkalinityUse() != null) {
            Amount use = plan.inhabitants().alkalinityUse();
            uses.add(new DailyUse(
                    Supply.ALKALINITY,
                    DAY * use.in("mol/(m^3*s)"),
                    DAY * use.doubtIn("mol/(m^3*s)"),
                    Basis.YOUR_PLAN,
                    "what its inhabitants use of alkalinity"));
        }
        return List.copyOf(uses);
    }
}
