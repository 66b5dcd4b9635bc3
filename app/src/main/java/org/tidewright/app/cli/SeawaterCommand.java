package org.tidewright.app.cli;

import java.io.FilterWriter;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.tidewright.app.sheet.SheetCsv;
import org.tidewright.app.sheet.SolvedFile;
import org.tidewright.app.sheet.UnusableCsv;
import org.tidewright.husbandry.sheet.KnownField;
import org.tidewright.husbandry.sheet.KnownText;
import org.tidewright.seawater.carbonate.BoronRatio;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code tidewright seawater}. */
@Command(
        name = "seawater",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Computes everything about a water from the few numbers known of it, one water or a CSV file of many.",
            "",
            "Temperature and salinity, and any two of alkalinity, inorganic carbon, pH and carbon dioxide, give all the"
                    + " rest. Where more than two are given, the first two of this list decide.",
            "",
            "Exits with 0 when done, 1 when some rows of a file were refused, 2 when nothing could be read."
        },
        footer = {
            "",
            "Examples:",
            "  tidewright seawater --salinity 35 --temperature 25 --alkalinity \"8 dKH\" --ph 8.1",
            "  tidewright seawater --salinity \"53 mS/cm\" --temperature \"77 F\" --alkalinity \"2.9 meq/L\" \\",
            "                      --ph \"8.25 NBS\" --ammonia \"0.1 mg/L N\" --all",
            "  tidewright seawater --in points.csv --out solved.csv",
            "  tidewright seawater --in - --out - --boron lee < points.csv",
            "",
            "Columns read from a CSV file: temperature_c, practical_salinity or conductivity_ms_cm, any two of",
            "total_alkalinity_umol_kg, dic_umol_kg, ph_total, pco2_uatm, and total_phosphate_umol_kg,",
            "total_silicate_umol_kg, total_ammonia_umol_kg where known. All others are kept as they are."
        })
public final class SeawaterCommand implements Callable<Integer> {
    /** Standard input or output. */
    private static final String STANDARD = "-";

    private static final int MOST_BAD_ROWS_TOLD = 20;

    /** Boron's two ratios as they are named on the command line. */
    private enum Boron {
        UPPSTROM(BoronRatio.UPPSTROM_1974),
        LEE(BoronRatio.LEE_2010);

        private final BoronRatio ratio;

        Boron(BoronRatio ratio) {
            this.ratio = ratio;
        }
    }

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private KnownOptions known = new KnownOptions();

    @Option(names = "--boron", paramLabel = "uppstrom|lee", description = "ratio of boron to salinity; else uppstrom")
    private Boron boron = Boron.UPPSTROM;

    @Option(names = "--all", description = "also what the water is made of, and the constants used")
    private boolean all;

    @Option(names = "--json", description = "print one JSON object, units in the names")
    private boolean json;

    @Option(names = "--in", paramLabel = "FILE", description = "a CSV file to solve; - is standard input")
    private @Nullable String in;

    @Option(names = "--out", paramLabel = "FILE", description = "where the solved file goes; else standard output")
    private @Nullable String out;

    @Override
    public Integer call() {
        PrintWriter err = spec.commandLine().getErr();
        Map<KnownField, String> typed = known.typed();
        if (in == null && out != null) {
            err.println("tidewright: --out needs --in: name the CSV file to solve, or - for standard input.");
            return ExitCode.INVALID;
        }
        if (in != null && (!typed.isEmpty() || json || all)) {
            err.println("tidewright: --in solves a CSV file, the other options one water; give one or the other.");
            return ExitCode.INVALID;
        }
        if (in != null) {
            return file(in, out == null ? STANDARD : out, err);
        }
        if (typed.isEmpty()) {
            err.println("tidewright: nothing is known of the water. For example:"
                    + " tidewright seawater --salinity 35 --temperature 25 --alkalinity \"8 dKH\" --ph 8.1");
            return ExitCode.INVALID;
        }
        return oneWater(typed, err);
    }

    private int oneWater(Map<KnownField, String> typed, PrintWriter err) {
        KnownText water = KnownText.read(typed);
        if (!water.faults().isEmpty()) {
            water.faults()
                    .forEach(fault ->
                            err.println(plain("tidewright: " + fault.field().words() + ": " + fault.words())));
            return ExitCode.INVALID;
        }
        SheetPrint print;
        try {
            print = new SheetPrint(typed, water, water.sheet(boron.ratio), boron.ratio);
        } catch (IllegalArgumentException refused) {
            err.println("tidewright: " + refused.getMessage());
            return ExitCode.INVALID;
        }
        PrintWriter answer = spec.commandLine().getOut();
        if (json) {
            answer.println(print.json());
        } else {
            print.table(new Prose(answer), all);
        }
        return ExitCode.HOLDS;
    }

    private static String plain(String words) {
        return words.replace('\u00a0', ' ').replace('\u202f', ' ');
    }

    private int file(String from, String to, PrintWriter err) {
        boolean standardIn = from.equals(STANDARD);
        Path spooled = null;
        try {
            Path source = Path.of(from);
            if (standardIn) {
                spooled = Files.createTempFile("tidewright-seawater", ".csv");
                Files.copy(System.in, spooled, StandardCopyOption.REPLACE_EXISTING);
                source = spooled;
            }
            SheetCsv csv = new SheetCsv(source, standardIn ? "standard input" : from, boron.ratio, new BadRows(err));
            SheetCsv.Outcome outcome = to.equals(STANDARD)
                    ? csv.solve(() -> unclosed(spec.commandLine().getOut()))
                    : SolvedFile.write(csv, source, Path.of(to));
            if (outcome.badRows() > 0) {
                err.println(outcome.badRows() + " of " + outcome.rows()
                        + " rows were refused and stand as they were; all others are solved.");
                return ExitCode.DOES_NOT_HOLD;
            }
            return ExitCode.HOLDS;
        } catch (UnusableCsv unusable) {
            err.println("tidewright: " + unusable.getMessage() + ". Nothing was written.");
        } catch (NoSuchFileException missing) {
            err.println("tidewright: there is no file or folder " + missing.getFile() + ". Nothing was written.");
        } catch (AccessDeniedException denied) {
            err.println("tidewright: " + denied.getFile() + " may not be used; look at its permissions."
                    + " Nothing was written.");
        } catch (IOException | UncheckedIOException failed) {
            err.println("tidewright: " + failed.getMessage() + ". No file was changed.");
        } finally {
            deleteQuietly(spooled);
        }
        return ExitCode.INVALID;
    }

    /** Standard output outlives the file that is written to it. */
    private static Writer unclosed(PrintWriter out) {
        return new FilterWriter(out) {
            @Override
            public void close() throws IOException {
                flush();
            }
        };
    }

    private static void deleteQuietly(@Nullable Path file) {
        try {
            if (file != null) {
                Files.deleteIfExists(file);
            }
        } catch (IOException left) {
            // A leftover in a temporary place harms nobody; the answer matters more.
        }
    }

    /** Tells the first bad rows; a file of nothing else must not flood the terminal. */
    private static final class BadRows implements Consumer<String> {
        private final PrintWriter err;
        private int told;

        BadRows(PrintWriter err) {
            this.err = err;
        }

        @Override
        public void accept(String words) {
            told++;
            if (told <= MOST_BAD_ROWS_TOLD) {
                err.println(words);
            } else if (told == MOST_BAD_ROWS_TOLD + 1) {
                err.println("More rows are refused; only the first " + MOST_BAD_ROWS_TOLD + " are told.");
            }
        }
    }
}
