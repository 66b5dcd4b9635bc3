package org.tidewright.twin;

import org.tidewright.plan.Examples;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.text.PlanReading;
import org.tidewright.plan.text.PlanText;
import org.tidewright.testkit.ChangedText;
import org.tidewright.testkit.WorkedExample;
import org.tidewright.testkit.WorkedTank;

/** Plans the tests run on. */
public final class TestPlans {
    private TestPlans() {}

    /** The system of the worked examples. */
    public static Plan workedExample() {
        return read(WorkedExample.text());
    }

    /** The same with pieces of its text exchanged: each must be there. */
    public static Plan workedExample(String... replacements) {
        return read(ChangedText.of(WorkedExample.text(), replacements));
    }

    /** An example that comes with the program. */
    public static Plan example(String name) {
        return read(Examples.text(name));
    }

    /** The 400 L tank of the worked examples of heat, without a sump, its room at 50 % humidity. */
    public static Plan workedTank(double room, double floor, double heatLoss, String cover) {
        return read(WorkedTank.text(room, floor, heatLoss, cover));
    }

    /** A plan that must be sound. */
    public static Plan read(String text) {
        PlanReading reading = PlanText.read(text);
        if (reading instanceof PlanReading.Sound sound) {
            return sound.plan();
        }
        throw new AssertionError(reading + "\n" + text);
    }
}
