package org.tidewright.app.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import org.jspecify.annotations.Nullable;
import org.tidewright.app.demo.DemoJournal;
import org.tidewright.app.demo.DemoQuarantine;
import org.tidewright.app.demo.DemoWishes;
import org.tidewright.app.folder.KeptFolder;
import org.tidewright.app.plans.PlanFolder;
import org.tidewright.app.wishes.WishFolder;
import org.tidewright.husbandry.rehearsal.OutageRehearsal;
import org.tidewright.plan.Examples;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.text.PlanReading;
import org.tidewright.plan.text.PlanText;
import org.tidewright.twin.rehearsal.OutageOrder;
import org.tidewright.twin.rehearsal.Outdoors;
import org.tidewright.web.WebServer;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code tidewright demo}. */
@Command(
        name = "demo",
        mixinStandardHelpOptions = true,
        description = {
            "Starts with invented systems loaded: tells what a power cut tonight would do, then serves the pages.",
            "",
            "The systems live in a temporary folder unless --folder keeps them."
        },
        footer = {"", "Example:", "  tidewright demo --port 0"})
public final class DemoCommand implements Callable<Integer> {
    private static final double NIGHT_AND_DAY = 24;
    private static final double FREEZING = 0;
    private static final String QUARANTINE = "quarantine-box";

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Option(names = "--folder", paramLabel = "DIR", description = "keep the demo's systems here")
    private @Nullable Path folder;

    @Mixin
    private Listening listening = new Listening();

    @Override
    public Integer call() throws IOException {
        Clock clock = Clock.system(ZoneId.systemDefault());
        KeptFolder kept =
                new KeptFolder(folder == null ? Files.createTempDirectory("tidewright-demo-") : folder, clock);
        PlanFolder plans = kept.plans();
        for (String name : Examples.NAMES) {
            if (plans.newest(name).isEmpty()) {
                plans.keep(name, 0, Examples.text(name));
            }
        }
        Optional<WebServer> server = listening.start(kept, spec.commandLine());
        if (server.isEmpty()) {
            return ExitCode.INVALID;
        }
        // The first page is asked for while the rehearsal runs, so that both are there as soon as can be.
        CompletableFuture<String> startTime = CompletableFuture.supplyAsync(() ->
                StartTime.toFirstPage(listening.shownAddress(), server.get().port()));
        rehearse();
        invent(kept, clock);
        listening.untilStopped(server.get(), startTime.join(), spec.commandLine());
        return ExitCode.HOLDS;
    }

    /** The invented log and wish list of the first system, and the log of the quarantine tank; what is there already is left as it is. */
    private static void invent(KeptFolder kept, Clock clock) {
        String system = Examples.NAMES.get(0);
        if (kept.journal().everything(system).isEmpty()) {
            DemoJournal.Invented invented = DemoJournal.of(plan(), ZonedDateTime.now(clock));
            kept.journal().writeAll(system, invented.lines(), written -> {});
            invented.probes().forEach((probe, values) -> kept.probes().append(system, probe, values));
        }
        new WishFolder(kept.plans().root()).keep(system, "", DemoWishes.file());
        if (kept.journal().everything(QUARANTINE).isEmpty()) {
            kept.journal().writeAll(QUARANTINE, DemoQuarantine.of(ZonedDateTime.now(clock)), written -> {});
        }
    }

    private static Plan plan() {
        return ((PlanReading.Sound) PlanText.read(Examples.text(Examples.NAMES.get(0)))).plan();
    }

    private void rehearse() {
        Plan plan = plan();
        OutageOrder tonight = new OutageOrder(NIGHT_AND_DAY, Outdoors.constant(FREEZING), true, true);
        Prose prose = new Prose(spec.commandLine().getOut());
        prose.paragraph(
                "An invented system. If the power went out tonight, would the floor stay dry, and how long would"
                        + " the animals have?");
        prose.blank();
        OutagePrint.answer(prose, OutageRehearsal.of(plan, tonight), plan.units());
    }
}
