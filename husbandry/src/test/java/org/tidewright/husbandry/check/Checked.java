package org.tidewright.husbandry.check;

import static java.util.Objects.requireNonNull;

import java.util.List;
import org.tidewright.husbandry.advice.Check;
import org.tidewright.husbandry.advice.Doubt;
import org.tidewright.husbandry.advice.Holding;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.UnitSystem;

/**
 * One check of a plan, as a test looks at it.
 *
 * @param margin in the coherent unit of its measure; NaN where the check has none
 * @param doubt one standard error of the margin, zero where it has none
 * @param sentence in metric units
 */
record Checked(Holding holding, double margin, double doubt, String shown, String sentence) {

    /** The check of this name, which must be there. */
    static Checked of(Plan plan, String id) {
        List<Check> checks = PlanChecks.of(plan).checks();
        return checks.stream()
                .filter(check -> check.id().equals(id))
                .findFirst()
                .map(Checked::of)
                .orElseThrow(() -> new AssertionError("no check " + id + " among " + ids(plan)));
    }

    /** The names of all checks of a plan, in their order. */
    static List<String> ids(Plan plan) {
        return PlanChecks.of(plan).checks().stream().map(Check::id).toList();
    }

    private static Checked of(Check check) {
        boolean bare = check.margin() == null;
        Doubt doubt = bare ? new Doubt.None() : requireNonNull(check.margin()).doubt();
        return new Checked(
                check.holding(),
                bare ? Double.NaN : requireNonNull(check.margin()).value(),
                doubt instanceof Doubt.StandardError error ? error.size() : 0,
                plain(check.shown()),
                plain(check.sentence()));
    }

    /** The words with every no-break space as a plain one. */
    private static String plain(Sentence sentence) {
        return sentence.text(UnitSystem.METRIC).replaceAll("[\\u00a0\\u202f]", " ");
    }
}
