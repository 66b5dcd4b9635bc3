package org.tidewright.app.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.tidewright.app.desk.LiveDesk;
import org.tidewright.app.folder.KeptFolder;
import org.tidewright.app.plans.PlanFolder;
import org.tidewright.app.wishes.WishFolder;
import org.tidewright.husbandry.burden.CalmAddition;
import org.tidewright.husbandry.calendar.ArrivalCalendar;
import org.tidewright.husbandry.json.ArrivalJson;
import org.tidewright.husbandry.livestock.Homes;
import org.tidewright.husbandry.livestock.Peopled;
import org.tidewright.husbandry.quarantine.BareTankWater;
import org.tidewright.husbandry.wishlist.ArrivalAnswer;
import org.tidewright.husbandry.wishlist.Household;
import org.tidewright.husbandry.wishlist.Money;
import org.tidewright.husbandry.wishlist.WishFile;
import org.tidewright.husbandry.wishlist.WishList;
import org.tidewright.plan.fault.Fault;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.species.Catalogue;
import org.tidewright.plan.text.PlanDocument;
import org.tidewright.twin.ensemble.Ensemble;
import org.tidewright.web.page.Households;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** {@code tidewright arrivals}. */
@Command(
        name = "arrivals",
        mixinStandardHelpOptions = true,
        description = {
            "Says in which order and on which days the animals of a wish list come, through which quarantine tank, what each waits"
                    + " for, and who cannot come.",
            "",
            "The wish list is a CSV file: ID.wishes.csv in the folder of the systems, or another with --wishes. What has come by the"
                    + " logs stays, the rest is planned from today. With --plan from that plan alone, without a log.",
            "",
            "Exits with 0 when every wish has a day, 1 when one has none, 2 when a file cannot be read."
        },
        footer = {
            "",
            "Examples:",
            "  tidewright arrivals --system harbour-room",
            "  tidewright arrivals --system harbour-room --budget 120 --calendar arrivals.ics",
            "  tidewright arrivals --plan my.yaml --quarantine box.yaml --wishes wishes.csv --start 2027-01-10 --json"
        })
public final class ArrivalsCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Option(names = "--plan", paramLabel = "FILE", description = "the display by this plan file, without a log")
    private @Nullable Path plan;

    @Option(
            names = "--quarantine",
            paramLabel = "FILE",
            description = "with --plan: the plan of a quarantine tank; may be given more than once")
    private List<Path> quarantine = new ArrayList<>();

    @Option(names = "--wishes", paramLabel = "FILE", description = "the wish list; the system's own where left out")
    private @Nullable Path wishes;

    @Option(names = "--budget", paramLabel = "N", description = "money for a calendar month, over the list's own")
    private @Nullable String budget;

    @Option(names = "--start", paramLabel = "DATE", description = "nothing comes before, as 2026-12-20")
    private @Nullable LocalDate start;

    @Option(names = "--calendar", paramLabel = "FILE", description = "write the days as an iCalendar file as well")
    private @Nullable Path calendar;

    @Mixin
    private FolderOptions options = new FolderOptions();

    @Mixin
    private AnswerOptions answer = new AnswerOptions();

    private final Clock clock = Clock.system(ZoneId.systemDefault());

    @Override
    public Integer call() {
        if (plan == null && !quarantine.isEmpty()) {
            throw new ParameterException(
                    spec.commandLine(), "--quarantine goes with --plan; a system knows its own quarantine tanks");
        }
        return plan == null ? byFolder() : byPlan(plan);
    }

    private int byFolder() {
        FolderOptions.Chosen chosen = options.chosen(spec.commandLine());
        try (KeptFolder folder = new KeptFolder(options.folder(), clock)) {
            LiveDesk desk = new LiveDesk(folder, clock);
            Household household = desk.system(chosen.id())
                    .map(view -> Households.of(desk, view))
                    .orElseThrow(() -> new ParameterException(
                            spec.commandLine(), "the system “" + chosen.id() + "” is no longer there"));
            Path file = wishes == null ? new WishFolder(options.folder()).file(chosen.id()) : wishes;
            return told(chosen.id(), file, asked(household));
        }
    }

    private int byPlan(Path file) {
        if (wishes == null) {
            throw new ParameterException(spec.commandLine(), "--plan needs --wishes FILE beside it");
        }
        List<Plan> plans = new ArrayList<>();
        List<Path> files = new ArrayList<>(List.of(file));
        files.addAll(quarantine);
        for (Path each : files) {
            PlanDocument document =
                    PlanArgument.read(each, spec.commandLine().getErr()).orElse(null);
            if (document == null) {
                return ExitCode.INVALID;
            }
            plans.add(document.plan());
        }
        List<Household.Box> boxes = new ArrayList<>();
        for (int i = 1; i < plans.size(); i++) {
            Plan box = plans.get(i);
            if (box.quarantine() == null) {
                throw new ParameterException(
                        spec.commandLine(),
                        files.get(i) + " is no plan of a quarantine tank: it has no block quarantine");
            }
            boxes.add(new Household.Box(box.name(), box, List.of(), BareTankWater.of(box)));
        }
        Household household = new Household(
                plans.get(0),
                Catalogue.ofProgram(),
                Homes.of(plans.get(0), null, null),
                List.of(),
                boxes,
                null,
                LocalDate.now(clock),
                clock.getZone());
        return told(PlanFolder.idFor(plans.get(0).name()), wishes, asked(household));
    }

    private static Household asked(Household household) {
        Peopled peopled = Peopled.of(household.plan(), household.community(), household.today());
        return household.with(
                CalmAddition.of(peopled.plan(), peopled.lately(), CalmAddition.DRAWS, Ensemble.Progress.UNWATCHED));
    }

    private int told(String id, Path file, Household household) {
        WishList list = list(file, household.catalogue());
        if (list == null) {
            return ExitCode.INVALID;
        }
        ArrivalAnswer answered = ArrivalAnswer.of(list, household);
        if (calendar != null) {
            write(calendar, ArrivalCalendar.text(id, answered, clock.instant()));
        }
        if (answer.asJson()) {
            spec.commandLine().getOut().println(ArrivalJson.text(answered, answer.units(household.plan())));
        } else {
            ArrivalsPrint.answer(new Prose(spec.commandLine().getOut()), answered, answer.units(household.plan()));
        }
        spec.commandLine().getOut().flush();
        return answered.staying().isEmpty() ? ExitCode.HOLDS : ExitCode.DOES_NOT_HOLD;
    }

    /** The list with what the options say over it; null after its faults have been printed. */
    private @Nullable WishList list(Path file, Catalogue catalogue) {
        WishFile.Reading reading = WishFile.read(text(file), catalogue);
        for (Fault fault : reading.faults()) {
            spec.commandLine()
                    .getErr()
                    .println(file + ":" + fault.line() + ":" + fault.column() + ": " + fault.sentence());
        }
        if (!reading.faults().isEmpty()) {
            return null;
        }
        WishList list = reading.list();
        return new WishList(
                list.lines(),
                budget == null ? list.budget() : money(budget),
                start == null ? list.nothingBefore() : start);
    }

    private Long money(String typed) {
        OptionalLong amount = Money.read(typed);
        if (amount.isEmpty()) {
            throw new ParameterException(
                    spec.commandLine(),
                    "--budget: found “" + typed + "”; expected an amount such as 120 or 120.50, at most " + Money.MOST);
        }
        return amount.getAsLong();
    }

    private String text(Path file) {
        if (!Files.exists(file)) {
            throw new ParameterException(
                    spec.commandLine(),
                    "there is no wish list " + file
                            + ". Write one on the page Arrivals, or a CSV whose first line is: animal,count,price");
        }
        try {
            return Files.readString(file);
        } catch (IOException unreadable) {
            throw new ParameterException(
                    spec.commandLine(), file + " cannot be read as text: " + unreadable.getMessage(), unreadable);
        }
    }

    private void write(Path file, String text) {
        try {
            Files.writeString(file, text, StandardCharsets.UTF_8);
        } catch (IOException unwritable) {
            throw new ParameterException(
                    spec.commandLine(), file + " cannot be written: " + unwritable.getMessage(), unwritable);
        }
    }
}
