package org.tidewright.app.cli;

import java.util.concurrent.Callable;
import org.tidewright.plan.schema.PlanSchema;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** {@code tidewright schema}. */
@Command(
        name = "schema",
        mixinStandardHelpOptions = true,
        description = "Prints the JSON Schema of the plan file, so that an editor can help while you type.",
        footer = {
            "",
            "Example:",
            "  tidewright schema > tidewright-plan.schema.json",
            "  and at the top of the plan: # yaml-language-server: $schema=./tidewright-plan.schema.json"
        })
public final class SchemaCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public Integer call() {
        spec.commandLine().getOut().print(PlanSchema.text());
        spec.commandLine().getOut().flush();
        return ExitCode.HOLDS;
    }
}
