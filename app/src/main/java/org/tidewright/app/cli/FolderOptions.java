package org.tidewright.app.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tidewright.app.plans.PlanFolder;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.text.PlanReading;
import org.tidewright.plan.text.PlanText;
import picocli.CommandLine;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** Which folder, and which of its systems. */
final class FolderOptions {
    @Option(
            names = "--folder",
            paramLabel = "DIR",
            description = "folder of the systems (default: tidewright in your home)")
    private Path folder = Path.of(System.getProperty("user.home", "."), "tidewright");

    @Option(
            names = "--system",
            paramLabel = "ID",
            description = "the system, by the name of its folder; may be left out where there is only one")
    private @Nullable String system;

    Path folder() {
        return folder;
    }

    /** A system and its plan as it stands. */
    record Chosen(String id, Plan plan) {}

    /** The system asked for, or the only one. */
    Chosen chosen(CommandLine line) {
        PlanFolder plans = new PlanFolder(folder);
        List<String> ids = Files.isDirectory(folder) ? plans.ids() : List.of();
        if (ids.isEmpty()) {
            throw new ParameterException(
                    line,
                    "there is no system in " + folder + ". Add one: tidewright serve --folder " + folder
                            + " --add my.yaml");
        }
        String id = system != null ? system : ids.get(0);
        if (system == null && ids.size() > 1) {
            throw new ParameterException(
                    line,
                    "there are several systems in " + folder + "; say which: --system "
                            + String.join(" or --system ", ids));
        }
        String text = plans.newest(id)
                .orElseThrow(() -> new ParameterException(
                        line, "--system: found “" + id + "”; expected one of " + String.join(", ", ids)))
                .text();
        if (PlanText.read(text) instanceof PlanReading.Sound sound) {
            return new Chosen(id, sound.plan());
        }
        throw new ParameterException(line, "the plan of “" + id + "” has faults: tidewright check tells which.");
    }
}
