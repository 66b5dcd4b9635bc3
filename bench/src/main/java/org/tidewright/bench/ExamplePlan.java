package org.tidewright.bench;

import org.tidewright.plan.Examples;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.text.PlanReading;
import org.tidewright.plan.text.PlanText;

/** The example plans, read. */
final class ExamplePlan {
    private ExamplePlan() {}

    static Plan named(String name) {
        return read(Examples.text(name));
    }

    static Plan read(String text) {
        return ((PlanReading.Sound) PlanText.read(text)).plan();
    }
}
