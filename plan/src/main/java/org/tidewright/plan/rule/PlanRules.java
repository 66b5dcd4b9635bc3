package org.tidewright.plan.rule;

import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.tidewright.plan.fault.Fault;
import org.tidewright.plan.fault.Places;
import org.tidewright.plan.model.Limits;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.quantity.Amount;

/** All rules over a plan. */
public final class PlanRules {
    private PlanRules() {}

    /**
     * Everything that does not fit together.
     *
     * @param places where a path stands in the text
     */
    public static List<Fault> check(Plan plan, Function<String, Places.Place> places) {
        Findings findings = new Findings(places);
        wholeLoop(plan, findings);
        DisplayRules.check(plan, findings);
        SpotRules.check(plan, findings);
        OverflowRules.check(plan, findings);
        SumpRules.check(plan, findings);
        ReturnRules.check(plan, findings);
        NameRules.check(plan, findings);
        RegimeRules.check(plan, findings);
        DosingRules.check(plan, findings);
        ProgrammeRules.check(plan, findings);
        InhabitantRules.check(plan, findings);
        TargetRules.check(plan, findings);
        QuarantineRules.check(plan, findings);
        limits(plan, findings);
        return findings.faults();
    }

    /** Overflow, sump and return line make one loop: all of them or none. */
    private static void wholeLoop(Plan plan, Findings findings) {
        boolean any = plan.overflow() != null || plan.sump() != null || plan.returnLine() != null;
        if (!any) {
            if (plan.refugium() != null || plan.topOff() != null) {
                String path = plan.refugium() != null ? "refugium" : "top_off";
                findings.add(path, "a " + path + " without a sump", "a sump it works with", "Add a sump or remove it.");
            }
            return;
        }
        missing(plan.overflow() == null, "overflow", findings);
        missing(plan.sump() == null, "sump", findings);
        missing(plan.returnLine() == null, "return_line", findings);
    }

    private static void missing(boolean absent, String block, Findings findings) {
        if (absent) {
            findings.add(
                    block,
                    "no block “" + block + "”",
                    "overflow, sump and return_line together, or none of them",
                    "Describe the missing part, or remove the others for a tank without a sump.");
        }
    }

    private static void limits(Plan plan, Findings findings) {
        Limits limits = plan.limits();
        if (limits == null) {
            return;
        }
        inOrder(findings, limits.harmColder(), limits.actColder(), "limits.harm_colder", "act_colder");
        inOrder(findings, limits.actColder(), limits.actWarmer(), "limits.act_colder", "act_warmer");
        inOrder(findings, limits.actWarmer(), limits.harmWarmer(), "limits.act_warmer", "harm_warmer");
        inOrder(findings, limits.harmOxygen(), limits.actOxygen(), "limits.harm_oxygen", "act_oxygen");
    }

    private static void inOrder(
            Findings findings, @Nullable Amount lower, @Nullable Amount upper, String path, String upperName) {
        if (lower == null || upper == null) {
            return;
        }
        String unit = path.endsWith("oxygen") ? "1" : "degC";
        if (lower.in(unit) > upper.in(unit)) {
            findings.add(path, lower.toString(), "no more than " + upperName + ", " + upper, "");
        }
    }
}
