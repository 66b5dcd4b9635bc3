package org.tidewright.app.cli;

import org.jspecify.annotations.Nullable;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.UnitSystem;
import picocli.CommandLine.Option;

/** How an answer is to be told. */
final class AnswerOptions {
    @Option(names = "--json", description = "print one JSON object, numbers metric, units in the names")
    private boolean json;

    @Option(
            names = "--units",
            paramLabel = "metric|us",
            description = "units of the sentences; the plan's own if not given")
    private @Nullable UnitSystem units;

    boolean asJson() {
        return json;
    }

    UnitSystem units(Plan plan) {
        return units == null ? plan.units() : units;
    }
}
