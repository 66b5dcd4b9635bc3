package org.tidewright.app.cli;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.tidewright.app.folder.KeptFolder;
import org.tidewright.husbandry.journal.Kind;
import org.tidewright.husbandry.journal.Line;
import org.tidewright.husbandry.journal.Span;
import org.tidewright.husbandry.json.WaterJson;
import org.tidewright.husbandry.quantity.ProbeHours;
import org.tidewright.husbandry.quantity.WaterStudy;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.plan.model.UnitSystem;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code tidewright advise}. */
@Command(
        name = "advise",
        mixinStandardHelpOptions = true,
        description = {
            "Says from the log of a system what its water is, what it uses a day, which dose to move, and what to leave"
                    + " alone until when.",
            "",
            "Exits with 0 when nothing wants hands or a decision, 1 when something does."
        },
        footer = {
            "",
            "Examples:",
            "  tidewright advise",
            "  tidewright advise alkalinity --system harbour-room",
            "  tidewright advise --json"
        })
public final class AdviseCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(
            paramLabel = "QUANTITY",
            arity = "0..1",
            description = "one quantity in full; all in short where left out")
    private @Nullable String quantity;

    @Mixin
    private FolderOptions options = new FolderOptions();

    @Mixin
    private AnswerOptions answer = new AnswerOptions();

    private final Clock clock = Clock.system(ZoneId.systemDefault());

    @Override
    public Integer call() {
        FolderOptions.Chosen chosen = options.chosen(spec.commandLine());
        Optional<WaterQuantity> asked = asked();
        UnitSystem units = answer.units(chosen.plan());
        try (KeptFolder folder = new KeptFolder(options.folder(), clock)) {
            List<Line> lines = folder.journal().lines(chosen.id(), Span.EVER, EnumSet.allOf(Kind.class));
            Instant now = clock.instant();
            List<ProbeHours> probes = ProbeHours.of(folder.probes(), chosen.id(), now);
            WaterStudy study = WaterStudy.of(chosen.plan(), lines, probes, now, clock.getZone());
            if (answer.asJson()) {
                spec.commandLine().getOut().println(WaterJson.text(chosen.plan().name(), study, asked, units));
                spec.commandLine().getOut().flush();
            } else {
                AdvisePrint.study(
                        new Prose(spec.commandLine().getOut()), chosen.plan().name(), study, asked, units);
                spec.commandLine().getOut().flush();
            }
            return study.isCalm() ? ExitCode.HOLDS : ExitCode.DOES_NOT_HOLD;
        }
    }

    private Optional<WaterQuantity> asked() {
        if (quantity == null) {
            return Optional.empty();
        }
        Optional<WaterQuantity> found = WaterQuantity.named(quantity);
        if (found.isEmpty()) {
            throw new ParameterException(
                    spec.commandLine(),
                    "found the quantity “" + quantity + "”; expected one of "
                            + Arrays.stream(WaterQuantity.values())
                                    .map(WaterQuantity::words)
                                    .collect(Collectors.joining(", ")));
        }
        return found;
    }
}
