package org.tidewright.app.cli;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.time.ZoneId;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.tidewright.app.folder.KeptFolder;
import org.tidewright.husbandry.exchange.JournalCsv;
import org.tidewright.husbandry.exchange.JournalJson;
import org.tidewright.husbandry.exchange.KeptSystem;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.husbandry.journal.Line;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** {@code tidewright export}. */
@Command(
        name = "export",
        mixinStandardHelpOptions = true,
        description = {
            "Writes the whole log of a system, every revision of every line, into one JSON file or a folder of CSV files.",
            "",
            "tidewright restore reads either back, identical. Files that are there already are not written over."
        },
        footer = {
            "",
            "Examples:",
            "  tidewright export --json harbour-room.json",
            "  tidewright export --system harbour-room --csv harbour-room-log"
        })
public final class ExportCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @ArgGroup(multiplicity = "1")
    private Target target = new Target();

    private static final class Target {
        @Option(names = "--json", paramLabel = "FILE", description = "one file, photos included")
        private @Nullable Path json;

        @Option(
                names = "--csv",
                paramLabel = "DIR",
                description = "a folder with a file for each kind of line, without photos")
        private @Nullable Path csv;
    }

    @Mixin
    private FolderOptions options = new FolderOptions();

    @Override
    public Integer call() throws IOException {
        FolderOptions.Chosen chosen = options.chosen(spec.commandLine());
        try (KeptFolder folder = new KeptFolder(options.folder(), Clock.system(ZoneId.systemDefault()))) {
            KeptSystem system = folder.system(chosen.id());
            if (target.json != null) {
                try (OutputStream out = create(target.json)) {
                    JournalJson.write(system, out);
                }
                told(target.json);
            } else if (target.csv != null) {
                Path into = Files.createDirectories(target.csv);
                JournalCsv.write(system, file -> create(into.resolve(file)));
                told(into);
                leftOut(system);
            }
        } catch (FileAlreadyExistsException there) {
            throw new ParameterException(
                    spec.commandLine(),
                    there.getFile() + " is there already; choose another name, or move it away.",
                    there);
        }
        return ExitCode.HOLDS;
    }

    private static OutputStream create(Path file) throws IOException {
        return new BufferedOutputStream(
                Files.newOutputStream(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE));
    }

    /** Tables hold no pictures: whoever takes them for a copy of all must know. */
    private void leftOut(KeptSystem system) {
        long photos = system.journal().everything(system.name()).stream()
                .map(Line::event)
                .filter(event -> event instanceof Event.Observation seen && seen.photo() != null)
                .map(event -> ((Event.Observation) event).photo())
                .distinct()
                .count();
        if (photos > 0) {
            spec.commandLine()
                    .getErr()
                    .println((photos == 1 ? "One photo is" : photos + " photos are")
                            + " left out; tidewright export --json takes photos along.");
        }
    }

    private void told(Path written) {
        spec.commandLine().getErr().println("Written to " + written + ".");
    }
}
