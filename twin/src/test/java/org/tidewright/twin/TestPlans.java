package org.tidewright.twin;

import java.util.Locale;
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

    /**
     * The 400 L tank of the worked examples of heat, without a sump, its room at 50 % humidity. It is square here, which
     * gives 400 L the 0.675 m² of surface and 1.98 m² of wetted panes of the examples.
     */
    public static Plan workedTank(double room, double floor, double heatLoss, String cover) {
        return read(String.format(Locale.ROOT, """
                tidewright_plan: 1
                name: Worked tank
                units: metric
                water: {salinity: 35, temperature: 25.5 °C}
                room:
                  temperature: %s °C
                  humidity: 50 %%
                  floor_area: %s m²
                  construction: medium
                  heat_loss: %s W/K
                display:
                  length: 0.8216 m
                  width: 0.8216 m
                  height: 0.65 m
                  bottom_height: 0.95 m
                  glass: {panes: 12 mm, bottom: 12 mm, top_edge: held}
                  cover: %s
                  rock: {dry_mass: 40 kg, displaces: 0.2 L/kg}
                  water_level: 0.6045 m
                stand: {mass: 80 kg, feet: 4, floor: suspended}
                """, room, floor, heatLoss, cover));
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
