package org.tidewright.app.desk;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ForkJoinPool;
import org.jspecify.annotations.Nullable;
import org.tidewright.app.folder.KeptFolder;
import org.tidewright.app.plans.PlanFolder;
import org.tidewright.app.species.OwnSpecies;
import org.tidewright.app.wishes.WishFolder;
import org.tidewright.husbandry.advice.Report;
import org.tidewright.husbandry.burden.Burden;
import org.tidewright.husbandry.burden.CalmAddition;
import org.tidewright.husbandry.check.PlanChecks;
import org.tidewright.husbandry.day.DayStudy;
import org.tidewright.husbandry.journal.BothLogs;
import org.tidewright.husbandry.journal.Journal;
import org.tidewright.husbandry.journal.Kind;
import org.tidewright.husbandry.journal.Line;
import org.tidewright.husbandry.journal.Photos;
import org.tidewright.husbandry.journal.ProbeLog;
import org.tidewright.husbandry.journal.Span;
import org.tidewright.husbandry.livestock.Animals;
import org.tidewright.husbandry.livestock.Community;
import org.tidewright.husbandry.livestock.Peopled;
import org.tidewright.husbandry.livestock.TwinWater;
import org.tidewright.husbandry.newtank.NewTankOrder;
import org.tidewright.husbandry.newtank.NewTankStudy;
import org.tidewright.husbandry.nutrient.NutrientForecast;
import org.tidewright.husbandry.nutrient.NutrientReport;
import org.tidewright.husbandry.quantity.ProbeHours;
import org.tidewright.husbandry.quantity.WaterStudy;
import org.tidewright.husbandry.quarantine.BareTankWater;
import org.tidewright.husbandry.rehearsal.OutageRehearsal;
import org.tidewright.husbandry.rehearsal.OutageReport;
import org.tidewright.husbandry.rehearsal.WaterReport;
import org.tidewright.husbandry.water.SystemWater;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.plan.text.PlanReading;
import org.tidewright.plan.text.PlanText;
import org.tidewright.twin.ensemble.Ensemble;
import org.tidewright.twin.forecast.UsualDay;
import org.tidewright.twin.rehearsal.OutageOrder;
import org.tidewright.twin.rehearsal.Outdoors;
import org.tidewright.twin.rehearsal.WaterMovement;
import org.tidewright.twin.system.Levers;
import org.tidewright.twin.system.SystemTwin;
import org.tidewright.web.desk.Desk;
import org.tidewright.web.desk.SaveResult;
import org.tidewright.web.desk.SystemEntry;
import org.tidewright.web.desk.SystemView;
import org.tidewright.web.desk.WaterSoon;

/** Answers the pages from the folder of plans, and remembers what was computed for a plan as it stands. */
public final class LiveDesk implements Desk {
    private static final double NIGHT_AND_DAY = 24;
    private static final double FREEZING = 0;

    /** Enough to know the ends of a band to a tenth of its width, in half a minute of one core. */
    private static final int DRAWS = 100;

    /** One thread at a time, so that pages still answer at once; an ensemble runs in the pool it is asked from. */
    private final ForkJoinPool background = new ForkJoinPool(1);

    private static final long TEN_MINUTES = 600;

    private final KeptFolder folder;
    private final PlanFolder plans;
    private final Clock clock;
    private final Memory<String, SystemView> views = new Memory<>(40);
    private final Memory<Plan, Report> reports = new Memory<>(40);
    private final Memory<Rehearsed, OutageReport> outages = new Memory<>(20);
    private final Memory<Rehearsed, WaterReport> waters = new Memory<>(40);
    /** Each holds a settled twin, about a megabyte, so few are kept. */
    private final Memory<Plan, NutrientForecast> nutrients = new Memory<>(6);

    private final Memory<Moved, NutrientReport> nutrientReports = new Memory<>(40);
    private final Memory<Plan, WaterMovement> runnings = new Memory<>(40);

    private final Memory<Begun, NewTankStudy> newTanks = new Memory<>(8);
    private final Memory<Plan, UsualDay> usualDays = new Memory<>(6);
    private final Memory<Lived, DayStudy> days = new Memory<>(8);
    private final Memory<Plan, BareTankWater> bareTanks = new Memory<>(8);

    /** Each holds some dozen courses of twelve weeks. */
    private final Memory<Peopled, TwinWater> twins = new Memory<>(4);

    private final Memory<Joined, Optional<Burden>> burdens = new Memory<>(60);
    private final Memory<Peopled, CalmAddition> calmAdditions = new Memory<>(20);
    private final WishFolder wishes;

    private final Memory<Read, WaterStudy> waterStudies = new Memory<>(20);
    private final Memory<Plan, Levers> levers = new Memory<>(40);

    private record Begun(Plan plan, NewTankOrder order) {}

    /** What a study of the water depends on; the time to ten minutes, over which no estimate moves, nor what a probe adds. */
    private record Read(String system, Plan plan, List<Line> lines, Instant now) {}

    private record Joined(Peopled peopled, Animals candidate, List<Animals> coming) {}

    private record Lived(Plan plan, UsualDay.Habits habits) {}

    /** What a rehearsal depends on. */
    private record Rehearsed(Plan plan, String order) {
        static Rehearsed of(Plan plan, OutageOrder order) {
            return new Rehearsed(
                    plan,
                    order.hours() + " " + order.outdoors().temperature()[0] + " " + order.airHolesClear() + " "
                            + order.backupUsed());
        }
    }

    /** What a report of nutrients depends on. */
    private record Moved(Plan plan, UnitSystem units, Map<String, Double> values, boolean drawn) {}

    /**
     * A desk over a folder.
     *
     * @param folder whose database is asked for when it is first needed
     * @param clock with the zone in which the systems stand
     */
    public LiveDesk(KeptFolder folder, Clock clock) {
        this.folder = folder;
        this.plans = folder.plans();
        wishes = new WishFolder(plans.root());
        this.clock = clock;
    }

    @Override
    public Journal journal() {
        return folder.journal();
    }

    @Override
    public ProbeLog probes() {
        return folder.probes();
    }

    @Override
    public BothLogs bothLogs() {
        return folder.bothLogs();
    }

    @Override
    public Photos photos() {
        return folder.photos();
    }

    @Override
    public KnownSpecies species() {
        OwnSpecies own = OwnSpecies.of(plans.root());
        return new KnownSpecies(own.catalogue(), own.faults());
    }

    @Override
    public Clock clock() {
        return clock;
    }

    @Override
    public Levers levers(Plan plan) {
        return levers.get(plan, key -> SystemTwin.of(key).levers());
    }

    @Override
    public WaterStudy water(SystemView view) {
        List<Line> lines = journal().lines(view.entry().id(), Span.EVER, EnumSet.allOf(Kind.class));
        // A line written this minute has happened.
        Instant now = clock.instant().truncatedTo(ChronoUnit.MINUTES);
        Instant last = lines.isEmpty() ? now : lines.get(lines.size() - 1).at().toInstant();
        Instant tenth = Instant.ofEpochSecond(now.getEpochSecond() / TEN_MINUTES * TEN_MINUTES);
        Instant asked = last.isAfter(tenth) && !last.isAfter(clock.instant()) ? last : tenth;
        return waterStudies.get(
                new Read(view.entry().id(), view.plan(), lines, asked),
                key -> WaterStudy.of(
                        key.plan(),
                        key.lines(),
                        ProbeHours.of(probes(), view.entry().id(), key.now()),
                        key.now(),
                        clock.getZone()));
    }

    @Override
    public List<SystemEntry> systems() {
        return plans.ids().stream()
                .flatMap(id -> system(id).stream())
                .map(SystemView::entry)
                .toList();
    }

    @Override
    public Optional<SystemView> system(String id) {
        return plans.newest(id).flatMap(this::view);
    }

    /** A file in the folder that was changed by hand and is no plan any more is not shown as one. */
    private Optional<SystemView> view(PlanFolder.Kept kept) {
        if (!(PlanText.read(kept.text()) instanceof PlanReading.Sound sound)) {
            return Optional.empty();
        }
        return Optional.of(views.get(kept.id() + " " + kept.revision() + " " + kept.text(), key -> {
            Plan plan = sound.plan();
            SystemEntry entry =
                    new SystemEntry(kept.id(), plan.name(), SystemWater.volume(plan), kept.revision(), plan.units());
            return new SystemView(entry, plan, kept.text());
        }));
    }

    @Override
    public Report checks(Plan plan) {
        return reports.get(plan, PlanChecks::of);
    }

    @Override
    public OutageOrder usualOrder(Plan plan) {
        return new OutageOrder(NIGHT_AND_DAY, Outdoors.constant(FREEZING), true, true);
    }

    @Override
    public OutageReport rehearse(Plan plan, OutageOrder order) {
        return outages.get(Rehearsed.of(plan, order), key -> OutageRehearsal.of(plan, order));
    }

    @Override
    public WaterReport waterAfter(Plan plan, OutageOrder order) {
        return waters.get(Rehearsed.of(plan, order), key -> OutageRehearsal.water(plan, order));
    }

    @Override
    public NutrientReport nutrients(Plan plan, UnitSystem units, Map<String, Double> moved) {
        NutrientForecast forecast = nutrients.get(plan, this::begun);
        return nutrientReports.get(
                new Moved(plan, units, Map.copyOf(moved), forecast.isDrawn()),
                key -> forecast.report(units, key.values()));
    }

    /** A forecast whose bands are drawn behind the page: they come with whatever is asked next. */
    private NutrientForecast begun(Plan plan) {
        NutrientForecast forecast = NutrientForecast.of(plan);
        background.execute(() -> forecast.draw(DRAWS));
        return forecast;
    }

    @Override
    public WaterMovement running(Plan plan) {
        return runnings.get(plan, SystemWater::running);
    }

    @Override
    public NewTankStudy newTank(Plan plan, NewTankOrder order) {
        return newTanks.get(new Begun(plan, order), key -> NewTankStudy.of(plan, order));
    }

    @Override
    public UsualDay usualDay(Plan plan) {
        return usualDays.get(plan, UsualDay::new);
    }

    @Override
    public DayStudy day(Plan plan, UsualDay.Habits habits, List<String> tried) {
        return days.get(new Lived(plan, habits), key -> DayStudy.of(usualDay(plan), plan, habits, tried));
    }

    @Override
    public BareTankWater bareTank(Plan plan) {
        return bareTanks.get(plan, BareTankWater::of);
    }

    @Override
    public WaterSoon waterWith(Plan plan, Community community) {
        Peopled peopled = Peopled.of(plan, community, LocalDate.now(clock));
        TwinWater twin = twins.get(peopled, key -> new TwinWater(key, Ensemble.Progress.UNWATCHED));
        // Begins behind the page, to be ready when a candidate is named.
        ForkJoinPool.commonPool().execute(twin::residents);
        return new WithinMoments((candidate, coming) ->
                burdens.begin(new Joined(peopled, candidate, coming), key -> twin.with(key.candidate(), key.coming())));
    }

    @Override
    public @Nullable CalmAddition calmAddition(Plan plan, Community community) {
        return calmAdditions
                .begin(
                        Peopled.of(plan, community, LocalDate.now(clock)),
                        key -> CalmAddition.of(
                                key.plan(), key.lately(), CalmAddition.DRAWS, Ensemble.Progress.UNWATCHED))
                .getNow(null);
    }

    @Override
    public String wishes(String id) {
        return wishes.text(id);
    }

    @Override
    public boolean keepWishes(String id, String before, String text) {
        return wishes.keep(id, before, text);
    }

    @Override
    public SaveResult save(String id, int basedOnRevision, String text) {
        PlanReading reading = PlanText.read(text);
        if (reading instanceof PlanReading.Faulty faulty) {
            return new SaveResult.Faulty(faulty.faults());
        }
        Optional<Integer> kept = plans.keep(id, basedOnRevision, text);
        if (kept.isPresent()) {
            return new SaveResult.Saved(kept.get());
        }
        PlanFolder.Kept standing = plans.newest(id)
                .orElseThrow(() -> new IllegalStateException("the system " + id + " is no longer in " + plans.root()));
        return new SaveResult.Conflict(standing.revision(), standing.text());
    }
}
