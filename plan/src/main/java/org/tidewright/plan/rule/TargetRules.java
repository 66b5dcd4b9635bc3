package org.tidewright.plan.rule;

import org.jspecify.annotations.Nullable;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.Targets;
import org.tidewright.plan.quantity.Amount;

/** Targets begin below where they end. */
final class TargetRules {
    private TargetRules() {}

    static void check(Plan plan, Findings findings) {
        Targets targets = plan.targets();
        if (targets == null) {
            return;
        }
        inOrder(findings, "temperature", "degC", targets.temperatureFrom(), targets.temperatureTo());
        inOrder(findings, "salinity", "1", targets.salinityFrom(), targets.salinityTo());
        inOrder(findings, "alkalinity", "mol/m^3", targets.alkalinityFrom(), targets.alkalinityTo());
        inOrder(findings, "calcium", "kg/m^3", targets.calciumFrom(), targets.calciumTo());
        inOrder(findings, "magnesium", "kg/m^3", targets.magnesiumFrom(), targets.magnesiumTo());
        inOrder(findings, "nitrate", "kg/m^3", targets.nitrateFrom(), targets.nitrateTo());
        inOrder(findings, "phosphate", "kg/m^3", targets.phosphateFrom(), targets.phosphateTo());
    }

    private static void inOrder(
            Findings findings, String quantity, String unit, @Nullable Amount from, @Nullable Amount to) {
        if (from != null && to != null && from.in(unit) >= to.in(unit)) {
            findings.add(
                    "targets." + quantity + "_from",
                    from.toString(),
                    "less than " + quantity + "_to, " + to,
                    "A reading is never exact: leave room between the two.");
        }
    }
}
