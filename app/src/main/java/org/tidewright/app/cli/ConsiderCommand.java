package org.tidewright.app.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.tidewright.app.folder.KeptFolder;
import org.tidewright.app.species.OwnSpecies;
import org.tidewright.husbandry.journal.Kind;
import org.tidewright.husbandry.journal.Line;
import org.tidewright.husbandry.journal.Span;
import org.tidewright.husbandry.json.VerdictJson;
import org.tidewright.husbandry.livestock.Animals;
import org.tidewright.husbandry.livestock.Call;
import org.tidewright.husbandry.livestock.Candidates;
import org.tidewright.husbandry.livestock.Community;
import org.tidewright.husbandry.livestock.Homes;
import org.tidewright.husbandry.livestock.Isolation;
import org.tidewright.husbandry.livestock.Peopled;
import org.tidewright.husbandry.livestock.Setting;
import org.tidewright.husbandry.livestock.ShoppingList;
import org.tidewright.husbandry.livestock.Steadiness;
import org.tidewright.husbandry.livestock.TwinWater;
import org.tidewright.husbandry.livestock.Verdict;
import org.tidewright.husbandry.livestock.Water;
import org.tidewright.husbandry.quarantine.FallowState;
import org.tidewright.husbandry.quarantine.QuarantineStudy;
import org.tidewright.plan.fault.Fault;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.plan.species.Catalogue;
import org.tidewright.plan.text.PlanDocument;
import org.tidewright.plan.text.PlanReading;
import org.tidewright.plan.text.PlanText;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code tidewright consider}. */
@Command(
        name = "consider",
        mixinStandardHelpOptions = true,
        description = {
            "Says of animals whether they may come to live in a system, yes, not yet or no, and why.",
            "",
            "Several are judged as one shopping list: each that may come counts as a companion of those after it. Who lives there"
                    + " and how steady the water is comes from plan and log; with --plan from that plan alone.",
            "",
            "Exits with 0 when all may come, 1 when one may not or not yet, 2 when a name cannot be read."
        },
        footer = {
            "",
            "Examples:",
            "  tidewright consider \"yellow tang\"",
            "  tidewright consider \"5 Chromis viridis 4 cm\" \"royal gramma\" --system harbour-room",
            "  tidewright consider \"torch coral\" --plan my.yaml --age 8 --json"
        })
public final class ConsiderCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(
            paramLabel = "NAME",
            arity = "1..*",
            description =
                    "an animal by its scientific name or one of the trade's, with number and length where you know them")
    private List<String> names = List.of();

    @Option(names = "--plan", paramLabel = "FILE", description = "judge by this plan file, without a log")
    private @Nullable Path plan;

    @Option(
            names = "--age",
            paramLabel = "MONTHS",
            description = "age of the tank; from the beginning of the log where left out")
    private @Nullable Double age;

    @Option(names = "--fish", paramLabel = "FILE", description = "fish of your own, a CSV in the catalogue's columns")
    private @Nullable Path fish;

    @Option(
            names = "--invertebrates",
            paramLabel = "FILE",
            description = "corals and other animals of your own, likewise")
    private @Nullable Path invertebrates;

    @Option(
            names = "--quick",
            description = "leave out what the twin would tell of ammonia, nutrients and oxygen; answers at once")
    private boolean quick;

    @Mixin
    private FolderOptions options = new FolderOptions();

    @Mixin
    private AnswerOptions answer = new AnswerOptions();

    private final Clock clock = Clock.system(ZoneId.systemDefault());

    @Override
    public Integer call() {
        Catalogue catalogue = catalogue();
        List<Animals> candidates = candidates(catalogue);
        return plan == null ? byFolder(catalogue, candidates) : byPlan(plan, catalogue, candidates);
    }

    private int byPlan(Path file, Catalogue catalogue, List<Animals> candidates) {
        Optional<PlanDocument> document =
                PlanArgument.read(file, spec.commandLine().getErr());
        return document.map(read -> told(read.plan(), List.of(), null, null, catalogue, candidates))
                .orElse(ExitCode.INVALID);
    }

    private int byFolder(Catalogue catalogue, List<Animals> candidates) {
        FolderOptions.Chosen chosen = options.chosen(spec.commandLine());
        try (KeptFolder folder = new KeptFolder(options.folder(), clock)) {
            List<Line> lines = folder.journal().lines(chosen.id(), Span.EVER, EnumSet.allOf(Kind.class));
            Double spread = Steadiness.alkalinity(chosen.plan(), lines, clock.instant(), clock.getZone());
            Isolation isolation = isolation(folder, chosen, lines);
            return told(chosen.plan(), lines, spread, isolation, catalogue, candidates);
        }
    }

    private int told(
            Plan judged,
            List<Line> lines,
            @Nullable Double spread,
            @Nullable Isolation isolation,
            Catalogue catalogue,
            List<Animals> candidates) {
        LocalDate today = LocalDate.now(clock);
        Double months = age == null ? Homes.age(lines, today, clock.getZone()) : age;
        Community community = Community.of(judged, lines, catalogue, today, clock.getZone());
        Setting setting = Setting.of(today, judged, Homes.of(judged, months, spread), community, catalogue, isolation);
        PrintWriter err = spec.commandLine().getErr();
        Water water =
                quick ? Water.NOT_ASKED : new TwinWater(Peopled.of(judged, community, today), new SlowProgress(err));
        List<Verdict> verdicts = ShoppingList.judge(candidates, setting, water);
        UnitSystem units = answer.units(judged);
        if (answer.asJson()) {
            spec.commandLine().getOut().println(VerdictJson.text(judged.name(), community, verdicts, units));
        } else {
            ConsiderPrint.verdicts(new Prose(spec.commandLine().getOut()), judged.name(), community, verdicts, units);
        }
        spec.commandLine().getOut().flush();
        return verdicts.stream().allMatch(verdict -> verdict.call().compareTo(Call.NOT_YET) < 0)
                ? ExitCode.HOLDS
                : ExitCode.DOES_NOT_HOLD;
    }

    private Isolation isolation(KeptFolder folder, FolderOptions.Chosen display, List<Line> lines) {
        LocalDate today = LocalDate.now(clock);
        List<QuarantineStudy> serving = new ArrayList<>();
        for (String id : folder.plans().ids()) {
            folder.plans()
                    .newest(id)
                    .map(kept -> PlanText.read(kept.text()))
                    .filter(PlanReading.Sound.class::isInstance)
                    .map(sound -> ((PlanReading.Sound) sound).plan())
                    .filter(plan -> plan.quarantine() != null
                            && plan.quarantine().isFor(display.plan().name(), display.id()))
                    .ifPresent(plan -> serving.add(QuarantineStudy.of(
                            plan, folder.journal().lines(id, Span.EVER, EnumSet.allOf(Kind.class)), today)));
        }
        double warmth = display.plan().water().temperature().in("degC");
        return Isolation.of(serving, FallowState.running(lines, warmth, today));
    }

    private List<Animals> candidates(Catalogue catalogue) {
        List<Animals> candidates = new ArrayList<>();
        for (String name : names) {
            try {
                candidates.add(Candidates.read(name, catalogue));
            } catch (Candidates.Unreadable unreadable) {
                throw new ParameterException(spec.commandLine(), unreadable.getMessage(), unreadable);
            }
        }
        return candidates;
    }

    private Catalogue catalogue() {
        Catalogue catalogue = plan == null ? ofFolder() : Catalogue.ofProgram();
        if (fish != null) {
            catalogue = right(fish, catalogue.withFish(text(fish)));
        }
        if (invertebrates != null) {
            catalogue = right(invertebrates, catalogue.withInvertebrates(text(invertebrates)));
        }
        return catalogue;
    }

    private Catalogue ofFolder() {
        OwnSpecies own = OwnSpecies.of(options.folder());
        if (!own.faults().isEmpty()) {
            throw new ParameterException(
                    spec.commandLine(),
                    "your own species have faults; nothing was judged.\n  " + String.join("\n  ", own.faults()));
        }
        return own.catalogue();
    }

    private String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException unreadable) {
            throw new ParameterException(
                    spec.commandLine(), file + " cannot be read as text: " + unreadable.getMessage(), unreadable);
        }
    }

    private Catalogue right(Path file, Catalogue.Extended extended) {
        if (!extended.faults().isEmpty()) {
            StringBuilder told = new StringBuilder(file + " has faults; nothing was judged.");
            for (Fault fault : extended.faults()) {
                told.append("\n  ")
                        .append(fault.line())
                        .append(':')
                        .append(fault.column())
                        .append(": ")
                        .append(fault.sentence());
            }
            throw new ParameterException(spec.commandLine(), told.toString());
        }
        return extended.catalogue();
    }
}
