package org.tidewright.bench;

import java.util.Map;
import org.tidewright.plan.Examples;
import org.tidewright.plan.model.Plan;

/** Courses of the harbour room that are held against the same equations in another language. */
enum Scenario {
    /** As the example says. */
    USUAL(Map.of()),

    /**
     * Hungry days in a room as warm and damp as a greenhouse: fish burn their own flesh, vapour settles on the water, and
     * heat goes through panes either way.
     */
    LEAN_AND_CLOSE(Map.of(
            "temperature: 21 °C", "temperature: 27 °C",
            "humidity: 50 %", "humidity: 96 %",
            "mass: 0.5 g", "mass: 0.01 g",
            "mass: 2 g", "mass: 0.03 g",
            "mass: 0.4 g", "mass: 0.01 g"));

    private final Map<String, String> edits;

    Scenario(Map<String, String> edits) {
        this.edits = edits;
    }

    Plan plan() {
        String text = Examples.text("harbour-room");
        for (Map.Entry<String, String> edit : edits.entrySet()) {
            if (!text.contains(edit.getKey())) {
                throw new IllegalStateException("the example says nothing of “" + edit.getKey() + "” any more");
            }
            text = text.replace(edit.getKey(), edit.getValue());
        }
        return ExamplePlan.read(text);
    }

    /** By its name in lower case, words parted by hyphens. */
    static Scenario named(String name) {
        return valueOf(name.toUpperCase(java.util.Locale.ROOT).replace('-', '_'));
    }
}
