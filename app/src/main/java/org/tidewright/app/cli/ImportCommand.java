package org.tidewright.app.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.tidewright.app.folder.KeptFolder;
import org.tidewright.husbandry.spreadsheet.Mapping;
import org.tidewright.husbandry.spreadsheet.MappingReading;
import org.tidewright.husbandry.spreadsheet.MappingText;
import org.tidewright.husbandry.spreadsheet.Preview;
import org.tidewright.husbandry.spreadsheet.Proposal;
import org.tidewright.husbandry.spreadsheet.Spreadsheet;
import org.tidewright.husbandry.spreadsheet.Taking;
import org.tidewright.husbandry.spreadsheet.UnusableSheet;
import org.tidewright.plan.fault.Fault;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code tidewright import}. */
@Command(
        name = "import",
        mixinStandardHelpOptions = true,
        description = {
            "Takes your own spreadsheet, saved as CSV, into the log of a system.",
            "",
            "Without --mapping it only looks: it prints what it takes each column for, with the reasons, and what would come of"
                    + " it. Save that text, change what is wrong, answer what is asked, and give it back with --mapping. Nothing"
                    + " is written before --keep, and then all of it or nothing.",
            "",
            "Exits with 0 when all can be taken, 1 when something must be answered or mended first, 2 when a file is not valid."
        },
        footer = {
            "",
            "Examples:",
            "  tidewright import old-log.csv > mapping.txt",
            "  tidewright import old-log.csv --mapping mapping.txt",
            "  tidewright import old-log.csv --mapping mapping.txt --keep",
            "",
            "docs/formats/spreadsheet.md tells what sheets and mappings are understood."
        })
public final class ImportCommand implements Callable<Integer> {
    private static final int SHOWN = 20;
    private static final int ROWS_A_WORD = 100_000;
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM yyyy", Locale.ENGLISH);

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "SHEET", description = "the spreadsheet, saved as CSV")
    private Path file = Path.of("");

    @Option(names = "--mapping", paramLabel = "FILE", description = "what its columns are")
    private @Nullable Path mappingFile;

    @Option(names = "--keep", description = "write it into the log")
    private boolean keep;

    @Mixin
    private FolderOptions options = new FolderOptions();

    private final Clock clock = Clock.system(ZoneId.systemDefault());

    @Override
    public Integer call() throws IOException {
        FolderOptions.Chosen chosen = options.chosen(spec.commandLine());
        if (!Files.isReadable(file)) {
            throw new ParameterException(spec.commandLine(), "there is no file " + file + " that can be read.");
        }
        Spreadsheet sheet = new Spreadsheet(() -> Files.newInputStream(file));
        try {
            if (mappingFile == null) {
                return propose(sheet, chosen.id());
            }
            Mapping mapping = mapping(mappingFile);
            return keep ? keep(sheet, mapping, chosen.id()) : show(sheet, mapping, chosen.id());
        } catch (UnusableSheet unusable) {
            throw new ParameterException(spec.commandLine(), file + ": " + unusable.getMessage(), unusable);
        }
    }

    private int propose(Spreadsheet sheet, String system) throws IOException, UnusableSheet {
        if (keep) {
            throw new ParameterException(
                    spec.commandLine(),
                    "--keep needs --mapping: look at what is taken for what first, then say it is right.");
        }
        Proposal proposal = sheet.proposal(clock.getZone());
        PrintWriter out = spec.commandLine().getOut();
        out.print(proposal.text());
        out.flush();
        PrintWriter err = spec.commandLine().getErr();
        Preview preview = sheet.preview(proposal.mapping(), system);
        preview(new Prose(err), preview);
        err.flush();
        return preview.isSound(proposal.mapping()) ? ExitCode.HOLDS : ExitCode.DOES_NOT_HOLD;
    }

    private int show(Spreadsheet sheet, Mapping mapping, String system) throws IOException, UnusableSheet {
        Preview preview = sheet.preview(mapping, system);
        PrintWriter out = spec.commandLine().getOut();
        preview(new Prose(out), preview);
        out.flush();
        return preview.isSound(mapping) ? ExitCode.HOLDS : ExitCode.DOES_NOT_HOLD;
    }

    private void preview(Prose prose, Preview preview) {
        prose.blank();
        prose.paragraph(preview.rows() + " rows, " + preview.numbers() + " numbers" + span(preview) + ".");
        for (Preview.Summary series : preview.series()) {
            if (series.count() > 0) {
                String unit = series.unit().symbol().isEmpty()
                        ? ""
                        : " " + series.unit().symbol();
                prose.paragraph(
                        "  ",
                        "    ",
                        series.label() + ": " + series.measured().quantity().words() + ", "
                                + series.count() + (series.probe() == null ? " readings, " : " values of a probe, ")
                                + number(series.least()) + " to " + number(series.most()) + unit + ", the middle one "
                                + number(series.median()) + unit);
            }
        }
        questions(prose, preview.questions());
        bad(prose, preview.bad(), preview.badCount());
        preview.comesTwice().forEach(time -> prose.paragraph("– ", "  ", time));
    }

    private String span(Preview preview) {
        return preview.first() == null || preview.last() == null
                ? ""
                : ", " + day(preview.first()) + " to " + day(preview.last());
    }

    private String day(Instant at) {
        return DAY.format(at.atZone(clock.getZone()));
    }

    /** Five digits that count: a specific gravity needs them. */
    private static String number(double value) {
        return new BigDecimal(value)
                .round(new MathContext(5))
                .stripTrailingZeros()
                .toPlainString();
    }

    private static void questions(Prose prose, List<String> questions) {
        if (!questions.isEmpty()) {
            prose.blank();
            prose.line("To be answered in the mapping:");
            questions.forEach(question -> prose.paragraph("– ", "  ", question));
        }
    }

    private static void bad(Prose prose, List<Fault> bad, int count) {
        if (count > 0) {
            prose.blank();
            prose.line(count == 1 ? "One cell or row cannot be taken:" : count + " cells or rows cannot be taken:");
            bad.stream()
                    .limit(SHOWN)
                    .forEach(fault -> prose.paragraph("– ", "  ", "line " + fault.line() + ", " + fault.sentence()));
            if (count > SHOWN) {
                prose.line("  and " + (count - Math.min(SHOWN, bad.size())) + " more");
            }
        }
    }

    private int keep(Spreadsheet sheet, Mapping mapping, String system) throws IOException, UnusableSheet {
        PrintWriter err = spec.commandLine().getErr();
        Prose prose = new Prose(spec.commandLine().getOut());
        Taking taking = sheet.drafts(mapping, system, rows -> {
            if (rows > 0 && rows % ROWS_A_WORD == 0) {
                err.println(rows / 2 + " rows …");
                err.flush();
            }
        });
        if (taking instanceof Taking.Refused refused) {
            prose.line("Nothing was written.");
            questions(prose, refused.questions());
            bad(prose, refused.bad(), refused.badCount());
            spec.commandLine().getOut().flush();
            return ExitCode.DOES_NOT_HOLD;
        }
        Taking.Taken taken = (Taking.Taken) taking;
        try (KeptFolder folder = new KeptFolder(options.folder(), clock)) {
            int written = folder.bothLogs().writeAll(system, taken.drafts(), taken.values(), done -> {});
            long values = taken.values().values().stream().mapToLong(List::size).sum();
            prose.paragraph(written + " lines are new in the log of “" + system + "”"
                    + (written < taken.drafts().size()
                            ? "; " + (taken.drafts().size() - written) + " were there already"
                            : "")
                    + (values > 0 ? "; " + values + " values of probes are kept" : "") + ".");
        }
        spec.commandLine().getOut().flush();
        return ExitCode.HOLDS;
    }

    private Mapping mapping(Path from) throws IOException {
        if (!Files.isReadable(from)) {
            throw new ParameterException(
                    spec.commandLine(), "--mapping: there is no file " + from + " that can be read.");
        }
        MappingReading reading = MappingText.read(Files.readString(from));
        if (reading instanceof MappingReading.Read read) {
            return read.mapping();
        }
        StringBuilder told = new StringBuilder();
        for (Fault fault : ((MappingReading.Faulty) reading).faults()) {
            told.append(told.length() == 0 ? "" : System.lineSeparator())
                    .append(from)
                    .append(", line ")
                    .append(fault.line())
                    .append(": ")
                    .append(fault.sentence());
        }
        throw new ParameterException(spec.commandLine(), told.toString());
    }
}
