package org.tidewright.twin;

import org.tidewright.plan.Examples;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.text.PlanReading;
import org.tidewright.plan.text.PlanText;
import org.tidewright.testkit.WorkedExample;

/** Plans the tests run on. */
public final class TestPlans {
    private TestPlans() {}

    /** The system of the worked examples. */
    public static Plan workedExample() {
        return read(WorkedExample.text());
    }

    /** The same with pieces of its text exchanged: each must be there. */
    public static Plan workedExample(String... replacements) {
        return read(changed(WorkedExample.text(), replacements));
    }

    /** An example that comes with the program. */
    public static Plan example(String name) {
        return read(Examples.text(name));
    }

    /** A plan that must be sound. */
    public static Plan read(String text) {
        PlanReading reading = PlanText.read(text);
        if (reading instanceof PlanReading.Sound sound) {
            return sound.plan();
        }
        throw new AssertionError(reading + "\n" + text);
    }

    /** Text with pieces exchanged: old, new, old, new … */
    public static String changed(String text, String... replacements) {
        String changed = text;
        for (int i = 0; i < replacements.length; i += 2) {
            if (!changed.contains(replacements[i])) {
                throw new AssertionError("the plan holds no “" + replacements[i] + "”");
            }
            changed = changed.replace(replacements[i], replacements[i + 1]);
        }
        return changed;
    }
}
