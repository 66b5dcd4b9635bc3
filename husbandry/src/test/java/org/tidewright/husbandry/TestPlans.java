package org.tidewright.husbandry;

import org.tidewright.plan.Examples;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.text.PlanReading;
import org.tidewright.plan.text.PlanText;
import org.tidewright.testkit.ChangedText;
import org.tidewright.testkit.WorkedExample;
import org.tidewright.testkit.WorkedTank;

/** Plans the tests run on; pieces of their text can be exchanged: old, new, old, new … */
public final class TestPlans {
    private TestPlans() {}

    /** The system of the worked examples. */
    public static Plan workedExample(String... replacements) {
        return read(WorkedExample.text(), replacements);
    }

    /** The 400 L tank of the worked examples of heat, open, in a room of 21 °C. */
    public static Plan workedTank(String... replacements) {
        return read(WorkedTank.text(21, 12, 40, "open"), replacements);
    }

    /** An example that comes with the program. */
    public static Plan example(String name, String... replacements) {
        return read(Examples.text(name), replacements);
    }

    private static Plan read(String text, String... replacements) {
        PlanReading reading = PlanText.read(ChangedText.of(text, replacements));
        if (reading instanceof PlanReading.Sound sound) {
            return sound.plan();
        }
        throw new AssertionError(reading);
    }
}
