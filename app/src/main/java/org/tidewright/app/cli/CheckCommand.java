package org.tidewright.app.cli;

import static java.util.stream.Collectors.joining;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.tidewright.husbandry.advice.Check;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.FigureText;
import org.tidewright.husbandry.advice.Holding;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.advice.Report;
import org.tidewright.husbandry.check.PlanChecks;
import org.tidewright.husbandry.json.ReportJson;
import org.tidewright.husbandry.water.SystemWater;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.plan.text.PlanDocument;
import org.tidewright.twin.tank.Place;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code tidewright check}. */
@Command(
        name = "check",
        mixinStandardHelpOptions = true,
        description = {
            "Checks a plan: each check a sentence with its margin.",
            "",
            "Exits with 0 when all checks hold, 1 when some do not, 2 when the plan is not valid."
        },
        footer = {
            "",
            "Examples:",
            "  tidewright check my.yaml",
            "  tidewright check my.yaml --units us",
            "  tidewright check my.yaml --json > report.json"
        })
public final class CheckCommand implements Callable<Integer> {
    private static final int TITLE_WIDTH = 40;
    private static final String INDENT = "             ";

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "PLAN", description = "the plan file")
    private Path file = Path.of("");

    @Mixin
    private AnswerOptions answer = new AnswerOptions();

    @Override
    public Integer call() {
        Optional<PlanDocument> document =
                PlanArgument.read(file, spec.commandLine().getErr());
        if (document.isEmpty()) {
            return ExitCode.INVALID;
        }
        Plan plan = document.get().plan();
        UnitSystem told = answer.units(plan);
        Report report = PlanChecks.of(plan);
        if (answer.asJson()) {
            spec.commandLine().getOut().println(ReportJson.text(plan, report, told));
        } else {
            print(plan, report, told);
        }
        return report.holds() ? ExitCode.HOLDS : ExitCode.DOES_NOT_HOLD;
    }

    private void print(Plan plan, Report report, UnitSystem told) {
        Prose prose = new Prose(spec.commandLine().getOut());
        prose.line(plan.name());
        prose.paragraph("", "  ", volumes(plan, told));
        prose.blank();
        prose.paragraph(report.lead().text(told));
        prose.blank();
        for (Check check : report.checks()) {
            String margin = check.margin() == null
                    ? ""
                    : "margin " + FigureText.of(check.margin(), told).line();
            prose.line(String.format(
                    Locale.ROOT, "%-12s %-" + TITLE_WIDTH + "s %s", mark(check.holding()), check.title(), margin));
            prose.paragraph(INDENT, INDENT, check.sentence().text(told));
        }
        prose.blank();
        Listing.sources(prose, report.sources());
        Listing.cautions(prose, report.cautions());
    }

    /** {@code 514 L of water: display 391 L, overflow box 12.6 L, …} */
    private static String volumes(Plan plan, UnitSystem told) {
        String parts = SystemWater.running(plan).vessels().stream()
                .filter(vessel -> vessel.place() != Place.FLOOR)
                .map(vessel -> vessel.name() + " " + litres(vessel.volume()[0], told))
                .collect(joining(", "));
        return litres(SystemWater.volume(plan), told) + " of water while running: " + parts + ".";
    }

    private static String litres(double volume, UnitSystem told) {
        return FigureText.of(Figure.exact(Measure.VOLUME, volume), told).line();
    }

    private static String mark(Holding holding) {
        return switch (holding) {
            case HOLDS -> "● holds";
            case CLOSE -> "◐ close";
            case FAILS -> "⊘ fails";
            case ASK -> "○ ask";
        };
    }
}
