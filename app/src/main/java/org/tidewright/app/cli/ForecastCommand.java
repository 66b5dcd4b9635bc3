package org.tidewright.app.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.tidewright.app.forecast.ForecastChart;
import org.tidewright.app.forecast.ForecastCsv;
import org.tidewright.app.forecast.TerminalPlot;
import org.tidewright.husbandry.advice.FigureText;
import org.tidewright.husbandry.forecast.ChangeText;
import org.tidewright.husbandry.forecast.ForecastReport;
import org.tidewright.husbandry.json.ForecastJson;
import org.tidewright.plan.fault.Spelling;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.plan.text.PlanDocument;
import org.tidewright.twin.forecast.Change;
import org.tidewright.twin.forecast.Forecast;
import org.tidewright.twin.forecast.Quantity;
import org.tidewright.twin.system.Levers;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code tidewright forecast}. */
@Command(
        name = "forecast",
        mixinStandardHelpOptions = true,
        description = {
            "Says what will happen to a system over days or months, and what would if something were changed.",
            "",
            "A change is a lever, what it is moved to, and, where you like, from when and for how long.",
            "",
            "Exits with 0 when every quantity stays within the usual bounds, 1 when one leaves them, 2 when the plan or"
                    + " a change is not valid."
        },
        footer = {
            "",
            "Examples:",
            "  tidewright forecast my.yaml --days 90 --change 'feed +50 %%'",
            "  tidewright forecast my.yaml --days 7 --change 'return pump off from day 2 22:00 for 8 h' --plot oxygen",
            "  tidewright forecast my.yaml --change 'light bar hours 7 h' --change 'water changes 200 %%' --csv course.csv",
            "  tidewright forecast my.yaml --draws 200 --plot nitrate",
            "  tidewright forecast my.yaml --levers",
            "",
            "It starts from the water your plan states, at the usual values of what is not known exactly; --draws varies"
                    + " these, and what your plan states with ±."
        })
public final class ForecastCommand implements Callable<Integer> {
    private static final double LONGEST = 3660;
    private static final double SECONDS_A_DAY = 86_400;
    private static final int SAMPLES_A_DAY = 24;
    private static final int MOST_SAMPLES = 20_000;
    private static final int LEAST_DRAWS = 20;
    private static final int MOST_DRAWS = 2000;

    /** What is kept of every draw until the last has run: 140 MB of all quantities. */
    private static final int MOST_DRAWN_SAMPLES = 1_000_000;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "PLAN", description = "the plan file")
    private Path file = Path.of("");

    @Option(names = "--days", paramLabel = "N", description = "how far it looks ahead, in days (default 90)")
    private double days = 90;

    @Option(
            names = "--change",
            paramLabel = "CHANGE",
            description = "what would be changed; may be given several times")
    private List<String> changes = new ArrayList<>();

    @Option(names = "--levers", description = "list what can be changed in this system, and do nothing else")
    private boolean listLevers;

    @Option(
            names = "--explain",
            paramLabel = "QUANTITY",
            description = "say what brought and took a quantity: nitrate, alkalinity, …")
    private @Nullable String explained;

    @Option(names = "--plot", paramLabel = "QUANTITY", description = "draw a quantity in the terminal; may be repeated")
    private List<String> plotted = new ArrayList<>();

    @Option(
            names = "--chart",
            paramLabel = "FILE",
            description = "draw the quantities of --plot, or nitrate, into a file ending in .svg or .png")
    private @Nullable Path chart;

    @Option(
            names = "--csv",
            paramLabel = "FILE",
            description = "write every sample as CSV to a file, or to - for the terminal")
    private @Nullable String csv;

    @Option(
            names = "--draws",
            paramLabel = "N",
            description =
                    "run it so many times, each with other values of what is not known exactly, and tell the bands"
                            + " in which nine of ten lie: 20 to 2000, better 200; one run where it is left out")
    private @Nullable Integer draws;

    @Option(
            names = "--samples",
            paramLabel = "N",
            description =
                    "samples in --csv, --json, --plot and --chart, evenly spread, 2 to 20000 (default one an hour)")
    private @Nullable Integer samples;

    @Mixin
    private AnswerOptions answer = new AnswerOptions();

    @Override
    public Integer call() {
        if (!(days > 0 && days <= LONGEST)) {
            throw wrong("--days: found " + days + "; expected more than 0 and at most " + (int) LONGEST);
        }
        checkNumbers();
        checkTargets();
        Optional<PlanDocument> document =
                PlanArgument.read(file, spec.commandLine().getErr());
        if (document.isEmpty()) {
            return ExitCode.INVALID;
        }
        Plan plan = document.get().plan();
        List<Quantity> drawn = plotted.stream().map(this::quantity).toList();
        Quantity toExplain = explained == null ? null : quantity(explained);
        Forecast forecast = Forecast.of(plan);
        if (listLevers) {
            ForecastPrint.levers(
                    new Prose(spec.commandLine().getOut()), forecast.twin().levers());
            return ExitCode.HOLDS;
        }
        List<Change> read = readChanges(forecast.twin().levers());
        ForecastReport report = ForecastReport.of(plan, forecast, days, samples(), read);
        if (draws != null) {
            report = report.drawn(
                    forecast.twin(), draws, new SlowProgress(spec.commandLine().getErr()));
        }
        tell(report, forecast, drawn, toExplain, answer.units(plan));
        return report.holds() ? ExitCode.HOLDS : ExitCode.DOES_NOT_HOLD;
    }

    private int samples() {
        if (samples != null) {
            return samples;
        }
        double hourly = Math.ceil(days * SAMPLES_A_DAY) + 1;
        return (int) Math.max(2, Math.min(hourly, draws == null ? MOST_SAMPLES : MOST_DRAWN_SAMPLES / draws));
    }

    private void checkNumbers() {
        if (draws != null && (draws < LEAST_DRAWS || draws > MOST_DRAWS)) {
            throw wrong("--draws: found " + draws + "; expected " + LEAST_DRAWS + " to " + MOST_DRAWS);
        }
        if (samples != null && (samples < 2 || samples > MOST_SAMPLES)) {
            throw wrong("--samples: found " + samples + "; expected 2 to " + MOST_SAMPLES);
        }
        if (draws != null && samples != null && (long) draws * samples > MOST_DRAWN_SAMPLES) {
            throw wrong("--samples: found " + samples + " in each of " + draws + " draws; expected at most "
                    + MOST_DRAWN_SAMPLES / draws + ", or fewer draws");
        }
    }

    private void tell(
            ForecastReport report,
            Forecast forecast,
            List<Quantity> drawn,
            @Nullable Quantity toExplain,
            UnitSystem units) {
        PrintWriter out = spec.commandLine().getOut();
        boolean csvToTerminal = "-".equals(csv);
        if (csvToTerminal) {
            out.print(ForecastCsv.text(report));
            out.flush();
        } else if (answer.asJson()) {
            out.println(ForecastJson.text(report, units));
        } else {
            Prose prose = new Prose(out);
            ForecastPrint.whole(prose, report, units);
            for (Quantity quantity : drawn) {
                TerminalPlot.lines(report, quantity, units).forEach(out::println);
                prose.blank();
            }
            if (toExplain != null) {
                ForecastPrint.account(prose, report, forecast.twin(), toExplain);
            }
        }
        if (csv != null && !csvToTerminal) {
            write(Path.of(csv), ForecastCsv.text(report).getBytes(StandardCharsets.UTF_8));
        }
        if (chart != null) {
            write(chart, drawing(report, drawn.isEmpty() ? List.of(Quantity.NITRATE) : drawn, units));
        }
    }

    private byte[] drawing(ForecastReport report, List<Quantity> drawn, UnitSystem units) {
        String name = String.valueOf(chart).toLowerCase(Locale.ROOT);
        if (name.endsWith(".svg")) {
            return ForecastChart.svg(report, drawn, units);
        } else if (name.endsWith(".png")) {
            return ForecastChart.png(report, drawn, units);
        }
        throw new IllegalStateException(name);
    }

    /** Refuses files that could not be written before anything is worked out. */
    private void checkTargets() {
        if (chart != null && !chart.toString().toLowerCase(Locale.ROOT).matches(".*\\.(svg|png)")) {
            throw wrong("--chart: found " + chart + "; expected a file ending in .svg or .png");
        }
        for (Path target : Stream.of(chart, csv == null || csv.equals("-") ? null : Path.of(csv))
                .filter(Objects::nonNull)
                .toList()) {
            Path folder = target.toAbsolutePath().getParent();
            if (folder == null || !Files.isDirectory(folder)) {
                throw wrong(target + " cannot be written: there is no folder " + folder + ". Make it first.");
            }
        }
    }

    private void write(Path target, byte[] content) {
        try {
            Files.write(target, content);
            spec.commandLine().getErr().println("Written to " + target + ".");
        } catch (IOException failed) {
            throw new ParameterException(
                    spec.commandLine(), target + " cannot be written: " + failed.getMessage(), failed);
        }
    }

    private List<Change> readChanges(Levers levers) {
        List<Change> read = new ArrayList<>();
        List<String> faults = new ArrayList<>();
        for (String text : changes) {
            try {
                Change change = ChangeText.read(text, levers);
                if (change.from() >= days * SECONDS_A_DAY) {
                    faults.add("--change “" + text + "”: it begins after the forecast ends; expected a day before "
                            + FigureText.number(days, 0) + ", or a longer --days.");
                }
                read.add(change);
            } catch (ChangeText.Unreadable unreadable) {
                faults.add("--change " + unreadable.getMessage());
            }
        }
        if (!faults.isEmpty()) {
            throw wrong(String.join(System.lineSeparator(), faults));
        }
        return read;
    }

    private Quantity quantity(String text) {
        String wanted = text.strip().toLowerCase(Locale.ROOT);
        List<String> names = new ArrayList<>();
        for (Quantity quantity : Quantity.values()) {
            String word = quantity.name().toLowerCase(Locale.ROOT).replace('_', ' ');
            if (wanted.equals(word) || wanted.equals(quantity.key()) || wanted.equals(quantity.words())) {
                return quantity;
            }
            names.add(word);
        }
        throw wrong("found the quantity “" + text + "”; expected one of " + String.join(", ", names) + ". "
                + Spelling.suggestion(wanted, names));
    }

    private ParameterException wrong(String message) {
        return new ParameterException(spec.commandLine(), message);
    }
}
