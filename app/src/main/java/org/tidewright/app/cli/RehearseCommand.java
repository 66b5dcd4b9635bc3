package org.tidewright.app.cli;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.tidewright.husbandry.json.OutageJson;
import org.tidewright.husbandry.rehearsal.OutageRehearsal;
import org.tidewright.husbandry.rehearsal.OutageReport;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.plan.text.PlanDocument;
import org.tidewright.twin.rehearsal.OutageOrder;
import org.tidewright.twin.rehearsal.Outdoors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code tidewright rehearse}. */
@Command(
        name = "rehearse",
        mixinStandardHelpOptions = true,
        description = {
            "Rehearses a failure on the twin of a plan: does the floor stay dry, and how long do the animals have?",
            "",
            "Exits with 0 when the floor stays dry, 1 when water reaches it, 2 when the plan is not valid."
        },
        footer = {
            "",
            "Examples:",
            "  tidewright rehearse my.yaml --hours 24 --outdoor 0C",
            "  tidewright rehearse my.yaml --outdoor 95F --air-holes blocked --no-backup",
            "  tidewright rehearse my.yaml --hours 48 --outdoor weather.csv --json > outage.json",
            "",
            "A weather file has the columns time_h,outdoor_temperature_c, its times rising."
        })
public final class RehearseCommand implements Callable<Integer> {
    /** What can be rehearsed. */
    enum Event {
        OUTAGE
    }

    /** Whether siphon-break holes let air in. */
    enum AirHoles {
        CLEAR,
        BLOCKED
    }

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "PLAN", description = "the plan file")
    private Path file = Path.of("");

    @Option(names = "--event", paramLabel = "outage", description = "what fails: outage, the mains (default)")
    private Event event = Event.OUTAGE;

    @Option(names = "--hours", paramLabel = "N", description = "how long it lasts, in hours (default 24)")
    private double hours = 24;

    @Option(
            names = "--outdoor",
            paramLabel = "TEMPERATURE|FILE",
            description = "the weather meanwhile, such as 35C or 20F, or a CSV file (default 0C)")
    private String outdoor = "0C";

    @Option(
            names = "--air-holes",
            paramLabel = "clear|blocked",
            description = "whether siphon-break holes let air in (default clear)")
    private AirHoles airHoles = AirHoles.CLEAR;

    @Option(names = "--no-backup", description = "leave the plan's battery and generator out")
    private boolean noBackup;

    @Mixin
    private AnswerOptions answer = new AnswerOptions();

    @Override
    public Integer call() {
        OutageOrder order = order();
        Optional<PlanDocument> document =
                PlanArgument.read(file, spec.commandLine().getErr());
        if (document.isEmpty()) {
            return ExitCode.INVALID;
        }
        Plan plan = document.get().plan();
        UnitSystem told = answer.units(plan);
        OutageReport report = switch (event) {
            case OUTAGE -> OutageRehearsal.of(plan, order);
        };
        if (answer.asJson()) {
            spec.commandLine().getOut().println(OutageJson.text(report, told));
        } else {
            OutagePrint.whole(new Prose(spec.commandLine().getOut()), report, told);
        }
        return report.water().floorDry() ? ExitCode.HOLDS : ExitCode.DOES_NOT_HOLD;
    }

    private OutageOrder order() {
        try {
            Outdoors outdoors = OutdoorOption.read(outdoor);
            return new OutageOrder(hours, outdoors, airHoles == AirHoles.CLEAR, !noBackup);
        } catch (IllegalArgumentException wrong) {
            throw new ParameterException(spec.commandLine(), String.valueOf(wrong.getMessage()), wrong);
        }
    }
}
