package org.tidewright.app.cli;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.EnumSet;
import java.util.List;
import java.util.concurrent.Callable;
import org.tidewright.app.folder.KeptFolder;
import org.tidewright.husbandry.advice.Advice;
import org.tidewright.husbandry.journal.Kind;
import org.tidewright.husbandry.journal.Line;
import org.tidewright.husbandry.journal.Span;
import org.tidewright.husbandry.json.QuarantineJson;
import org.tidewright.husbandry.quarantine.BareTankWater;
import org.tidewright.husbandry.quarantine.BareTankWords;
import org.tidewright.husbandry.quarantine.FallowState;
import org.tidewright.husbandry.quarantine.FallowWords;
import org.tidewright.husbandry.quarantine.QuarantineStudy;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.UnitSystem;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** {@code tidewright quarantine}. */
@Command(
        name = "quarantine",
        mixinStandardHelpOptions = true,
        description = {
            "Says what a quarantine tank asks for today, until when its animals stay, and what ammonia does in it; of another"
                    + " system, how long it stands without fish.",
            "",
            "Exits with 0 when nothing wants hands today, 1 when something does."
        },
        footer = {
            "",
            "Examples:",
            "  tidewright quarantine --system quarantine-box",
            "  tidewright note --system quarantine-box watched all: ate all, 60 breaths",
            "  tidewright note --system harbour-room fallow white spot began",
            "  tidewright quarantine --system harbour-room --json"
        })
public final class QuarantineCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private FolderOptions options = new FolderOptions();

    @Mixin
    private AnswerOptions answer = new AnswerOptions();

    private final Clock clock = Clock.system(ZoneId.systemDefault());

    @Override
    public Integer call() {
        FolderOptions.Chosen chosen = options.chosen(spec.commandLine());
        LocalDate today = LocalDate.now(clock);
        List<Line> log;
        try (KeptFolder folder = new KeptFolder(options.folder(), clock)) {
            log = folder.journal().lines(chosen.id(), Span.EVER, EnumSet.allOf(Kind.class));
        }
        boolean calm = chosen.plan().quarantine() == null
                ? display(chosen.plan(), log, today)
                : tank(chosen.plan(), log, today);
        spec.commandLine().getOut().flush();
        return calm ? ExitCode.HOLDS : ExitCode.DOES_NOT_HOLD;
    }

    private boolean tank(Plan plan, List<Line> log, LocalDate today) {
        QuarantineStudy study = QuarantineStudy.of(plan, log, today);
        BareTankWater water = BareTankWater.of(plan);
        if (answer.asJson()) {
            spec.commandLine().getOut().println(QuarantineJson.text(study, water, answer.units(plan)));
        } else {
            tell("Today", study.duty(), plan);
            if (study.watch() != null) {
                tell("Until when", study.end(), plan);
            }
            tell("Ammonia", BareTankWords.of(water), plan);
        }
        return study.isCalm();
    }

    private boolean display(Plan plan, List<Line> log, LocalDate today) {
        List<FallowState> fallows =
                FallowState.running(log, plan.water().temperature().in("degC"), today);
        if (answer.asJson()) {
            spec.commandLine().getOut().println(QuarantineJson.text(plan, fallows, today, answer.units(plan)));
        } else if (fallows.isEmpty()) {
            new Prose(spec.commandLine().getOut())
                    .paragraph(plan.name() + " is no quarantine tank, and its log tells of no fallow. To begin one:"
                            + " tidewright note fallow white spot began");
        } else {
            fallows.forEach(fallow -> tell(
                    "Without fish: " + fallow.parasite().words(), FallowWords.of(fallow, plan.name(), today), plan));
        }
        return fallows.stream().noneMatch(fallow -> fallow.isOver(today));
    }

    private void tell(String title, Advice advice, Plan plan) {
        Prose prose = new Prose(spec.commandLine().getOut());
        UnitSystem units = answer.units(plan);
        prose.line(title);
        prose.paragraph(advice.lead().text(units));
        advice.remarks().forEach(remark -> prose.paragraph("– ", "  ", remark.text(units)));
        advice.cautions().forEach(caution -> prose.paragraph("Caution. ", "  ", caution));
        advice.sources()
                .forEach(source -> prose.paragraph(
                        "  " + source.key() + "  ",
                        "     ",
                        source.what() + ": " + source.basis().words()
                                + (source.detail().isEmpty() ? "" : ", " + source.detail()) + "."));
        prose.blank();
    }
}
