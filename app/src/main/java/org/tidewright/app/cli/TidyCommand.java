package org.tidewright.app.cli;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.tidewright.plan.text.PlanDocument;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code tidewright tidy}. */
@Command(
        name = "tidy",
        mixinStandardHelpOptions = true,
        description =
                "Prints a plan with its keys in their usual order and its numbers in one spelling, comments kept.",
        footer = {"", "Example:", "  tidewright tidy my.yaml > tidied.yaml"})
public final class TidyCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "PLAN", description = "the plan file; it is not changed")
    private Path file = Path.of("");

    @Override
    public Integer call() {
        Optional<PlanDocument> document =
                PlanArgument.read(file, spec.commandLine().getErr());
        if (document.isEmpty()) {
            return ExitCode.INVALID;
        }
        spec.commandLine().getOut().print(document.get().textWith(document.get().plan()));
        spec.commandLine().getOut().flush();
        return ExitCode.HOLDS;
    }
}
