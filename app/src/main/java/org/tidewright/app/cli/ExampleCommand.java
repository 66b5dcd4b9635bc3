package org.tidewright.app.cli;

import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.tidewright.plan.Examples;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code tidewright example}. */
@Command(
        name = "example",
        mixinStandardHelpOptions = true,
        description = "Prints an example plan of an invented system, to be changed into your own.",
        footer = {
            "",
            "Examples:",
            "  tidewright example                        lists the examples",
            "  tidewright example harbour-room > my.yaml"
        })
public final class ExampleCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(arity = "0..1", paramLabel = "NAME", description = "one of the examples; without it they are listed")
    private @Nullable String name;

    @Override
    public Integer call() {
        if (name == null) {
            Examples.NAMES.forEach(spec.commandLine().getOut()::println);
            return ExitCode.HOLDS;
        }
        if (!Examples.NAMES.contains(name)) {
            throw new ParameterException(
                    spec.commandLine(),
                    "found the example “" + name + "”; expected one of " + String.join(", ", Examples.NAMES));
        }
        spec.commandLine().getOut().print(Examples.text(name));
        spec.commandLine().getOut().flush();
        return ExitCode.HOLDS;
    }
}
