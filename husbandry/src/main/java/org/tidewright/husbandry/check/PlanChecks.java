package org.tidewright.husbandry.check;

import java.util.ArrayList;
import java.util.List;
import org.tidewright.husbandry.advice.Check;
import org.tidewright.husbandry.advice.Holding;
import org.tidewright.husbandry.advice.Report;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.husbandry.advice.Sources;
import org.tidewright.plan.model.Plan;

/** Every check of a plan, the wet ones first. */
public final class PlanChecks {
    private PlanChecks() {}

    public static Report of(Plan plan) {
        Situation situation = new Situation(plan);
        Sources sources = new Sources();
        List<Check> checks = new ArrayList<>();
        checks.addAll(PowerCutCheck.check(situation, sources));
        if (plan.hasSump()) {
            checks.add(RunningLevelCheck.check(situation, sources));
            checks.add(RestartCheck.check(situation, sources));
            checks.add(LostDrainCheck.check(situation, sources));
            checks.add(OverflowCheck.check(situation, sources));
            checks.addAll(DrainCheck.check(situation, sources));
            checks.addAll(TopOffCheck.check(situation, sources));
        }
        checks.addAll(HeaterCheck.check(situation, sources));
        checks.add(WeightCheck.check(situation, sources));
        checks.add(GlassCheck.check(situation, sources));
        return new Report(lead(checks), List.copyOf(checks), sources.all(), Cautions.of(plan));
    }

    private static Sentence lead(List<Check> checks) {
        List<Check> failing = checks.stream()
                .filter(check -> check.holding() == Holding.FAILS)
                .toList();
        if (failing.isEmpty()) {
            Check first = checks.get(0);
            return Sentence.of("Nothing presses. ", first.sentence());
        }
        Sentence lead = failing.get(0).sentence();
        int others = failing.size() - 1;
        if (others == 0) {
            return lead;
        }
        return lead.then(Sentence.of(
                others == 1 ? "One other check does not hold either." : others + " other checks do not hold either."));
    }
}
