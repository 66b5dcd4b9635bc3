package org.tidewright.app.cli;

import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.tidewright.app.folder.KeptFolder;
import org.tidewright.app.plans.PlanFolder;
import org.tidewright.plan.text.PlanDocument;
import org.tidewright.web.WebServer;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code tidewright serve}. */
@Command(
        name = "serve",
        mixinStandardHelpOptions = true,
        description = "Serves the pages for the systems in a folder, to this machine alone unless told otherwise.",
        footer = {"", "Examples:", "  tidewright serve", "  tidewright serve --folder ~/reef --add my.yaml"})
public final class ServeCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Option(
            names = "--folder",
            paramLabel = "DIR",
            description = "folder of the systems (default: tidewright in your home)")
    private Path folder = Path.of(System.getProperty("user.home", "."), "tidewright");

    @Option(names = "--add", paramLabel = "PLAN", description = "add a system from a plan file first")
    private @Nullable Path add;

    @Mixin
    private Listening listening = new Listening();

    @Override
    public Integer call() {
        PlanFolder plans = new PlanFolder(folder);
        if (add != null) {
            Optional<PlanDocument> document =
                    PlanArgument.read(add, spec.commandLine().getErr());
            if (document.isEmpty()) {
                return ExitCode.INVALID;
            }
            String id = PlanFolder.idFor(document.get().plan().name());
            if (plans.keep(id, 0, document.get().text()).isEmpty()) {
                spec.commandLine()
                        .getErr()
                        .println("tidewright: there is already a system “" + id + "” in " + folder
                                + "; change it on its plan page, or rename the one to be added.");
                return ExitCode.INVALID;
            }
        }
        if (plans.ids().isEmpty()) {
            spec.commandLine()
                    .getErr()
                    .println("tidewright: there is no system in " + folder + ". Add one: tidewright serve --folder "
                            + folder + " --add my.yaml");
            return ExitCode.INVALID;
        }
        // Opened only now: what was refused leaves no folder behind.
        KeptFolder kept = new KeptFolder(folder, Clock.system(ZoneId.systemDefault()));
        Optional<WebServer> server = listening.start(kept, spec.commandLine());
        if (server.isEmpty()) {
            return ExitCode.INVALID;
        }
        String startTime =
                StartTime.toFirstPage(listening.shownAddress(), server.get().port());
        listening.untilStopped(server.get(), startTime, spec.commandLine());
        return ExitCode.HOLDS;
    }
}
