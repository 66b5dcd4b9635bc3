package org.tidewright.app.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.concurrent.Callable;
import org.tidewright.app.folder.KeptFolder;
import org.tidewright.husbandry.exchange.JournalCsv;
import org.tidewright.husbandry.exchange.JournalJson;
import org.tidewright.husbandry.exchange.KeptSystem;
import org.tidewright.husbandry.exchange.Restoring;
import org.tidewright.plan.fault.Fault;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code tidewright restore}. */
@Command(
        name = "restore",
        mixinStandardHelpOptions = true,
        description = {
            "Reads the log of a system back from what tidewright export wrote, all or nothing.",
            "",
            "Lines that are there already are passed over; nothing is overwritten."
        },
        footer = {
            "",
            "Examples:",
            "  tidewright restore harbour-room.json",
            "  tidewright restore harbour-room-log --system harbour-room"
        })
public final class RestoreCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "COPY", description = "the JSON file, or the folder of CSV files")
    private Path copy = Path.of("");

    @Mixin
    private FolderOptions options = new FolderOptions();

    @Override
    public Integer call() throws IOException {
        FolderOptions.Chosen chosen = options.chosen(spec.commandLine());
        if (!Files.isReadable(copy)) {
            throw new ParameterException(
                    spec.commandLine(), "there is no file or folder " + copy + " that can be read.");
        }
        try (KeptFolder folder = new KeptFolder(options.folder(), Clock.system(ZoneId.systemDefault()))) {
            KeptSystem system = folder.system(chosen.id());
            Restoring came = Files.isDirectory(copy)
                    ? JournalCsv.restore(
                            file -> Files.exists(copy.resolve(file)) ? Files.newInputStream(copy.resolve(file)) : null,
                            system)
                    : JournalJson.restore(() -> Files.newInputStream(copy), system);
            return tell(came, chosen.id());
        }
    }

    private int tell(Restoring came, String system) {
        Prose prose = new Prose(spec.commandLine().getOut());
        if (came instanceof Restoring.Done done) {
            prose.paragraph(done.newLines() + " of " + done.lines() + " revisions are new in the log of “" + system
                    + "”; " + done.probeValues() + " values of probes and " + done.photos() + " photos are kept.");
            spec.commandLine().getOut().flush();
            return ExitCode.HOLDS;
        }
        Restoring.Faulty faulty = (Restoring.Faulty) came;
        prose.line("Nothing was written: " + faulty.count() + (faulty.count() == 1 ? " fault." : " faults."));
        for (Fault fault : faulty.faults()) {
            prose.paragraph("– ", "  ", (fault.line() > 0 ? "line " + fault.line() + ", " : "") + fault.sentence());
        }
        spec.commandLine().getOut().flush();
        return ExitCode.INVALID;
    }
}
