package org.tidewright.app;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import org.tidewright.app.cli.AdviseCommand;
import org.tidewright.app.cli.ArrivalsCommand;
import org.tidewright.app.cli.CheckCommand;
import org.tidewright.app.cli.ConsiderCommand;
import org.tidewright.app.cli.DemoCommand;
import org.tidewright.app.cli.ExampleCommand;
import org.tidewright.app.cli.ExitCode;
import org.tidewright.app.cli.ExportCommand;
import org.tidewright.app.cli.ForecastCommand;
import org.tidewright.app.cli.ImportCommand;
import org.tidewright.app.cli.NoteCommand;
import org.tidewright.app.cli.QuarantineCommand;
import org.tidewright.app.cli.RehearseCommand;
import org.tidewright.app.cli.RestoreCommand;
import org.tidewright.app.cli.SchemaCommand;
import org.tidewright.app.cli.SeawaterCommand;
import org.tidewright.app.cli.ServeCommand;
import org.tidewright.app.cli.TidyCommand;
import org.tidewright.app.cli.Version;
import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The program's entry: finds the command and runs it. */
@Command(
        name = "tidewright",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = "Try a decision, or a failure, on a computed twin of your own reef tank before it happens.",
        synopsisSubcommandLabel = "COMMAND",
        footer = {
            "",
            "Start here:",
            "  tidewright demo                        an invented system, in the terminal and the browser",
            "  tidewright example harbour-room > my.yaml   a plan to change into your own",
            "  tidewright check my.yaml               does it stay dry, and by how much?",
            "  tidewright rehearse my.yaml --hours 24 --outdoor 0C",
            "",
            "tidewright COMMAND --help shows examples of each command."
        },
        subcommands = {
            DemoCommand.class,
            CheckCommand.class,
            RehearseCommand.class,
            ForecastCommand.class,
            NoteCommand.class,
            AdviseCommand.class,
            ConsiderCommand.class,
            ArrivalsCommand.class,
            QuarantineCommand.class,
            ImportCommand.class,
            ExportCommand.class,
            RestoreCommand.class,
            ServeCommand.class,
            ExampleCommand.class,
            TidyCommand.class,
            SchemaCommand.class,
            SeawaterCommand.class,
            AutoComplete.GenerateCompletion.class
        })
public final class Main {
    private Main() {}

    public static void main(String[] arguments) {
        // Sentences carry signs such as ± and °: never at the mercy of the platform's own charset.
        PrintStream out = utf8(FileDescriptor.out);
        PrintStream err = utf8(FileDescriptor.err);
        System.exit(run(out, err, arguments));
    }

    /** Runs one command line and answers with its exit code. */
    public static int run(PrintStream out, PrintStream err, String... arguments) {
        CommandLine line = new CommandLine(new Main())
                .setOut(new PrintWriter(out, true, StandardCharsets.UTF_8))
                .setErr(new PrintWriter(err, true, StandardCharsets.UTF_8))
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setExecutionExceptionHandler((failure, command, parsed) -> {
                    command.getErr().println("tidewright: " + ExitCode.words(failure));
                    return ExitCode.INTERNAL;
                });
        line.setParameterExceptionHandler((failure, wrong) -> {
            CommandLine command = failure.getCommandLine();
            command.getErr().println("tidewright: " + failure.getMessage());
            CommandLine.UnmatchedArgumentException.printSuggestions(failure, command.getErr());
            command.getErr().println("Try: " + command.getCommandSpec().qualifiedName() + " --help");
            return ExitCode.INVALID;
        });
        if (arguments.length == 0) {
            line.usage(line.getOut());
            return ExitCode.HOLDS;
        }
        return line.execute(arguments);
    }

    private static PrintStream utf8(FileDescriptor descriptor) {
        return new PrintStream(new FileOutputStream(descriptor), true, StandardCharsets.UTF_8);
    }
}
