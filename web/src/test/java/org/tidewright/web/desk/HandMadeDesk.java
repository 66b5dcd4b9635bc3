package org.tidewright.web.desk;

import static org.tidewright.husbandry.advice.Sentence.alarm;
import static org.tidewright.husbandry.advice.Sentence.figure;

import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.NullUnmarked;
import org.tidewright.husbandry.advice.Assumption;
import org.tidewright.husbandry.advice.Check;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.Holding;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.advice.Report;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.husbandry.advice.Source;
import org.tidewright.husbandry.burden.Burden;
import org.tidewright.husbandry.burden.CalmAddition;
import org.tidewright.husbandry.day.DayStudy;
import org.tidewright.husbandry.journal.BothLogs;
import org.tidewright.husbandry.journal.Draft;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.husbandry.journal.Journal;
import org.tidewright.husbandry.journal.Kind;
import org.tidewright.husbandry.journal.Photos;
import org.tidewright.husbandry.journal.ProbeLog;
import org.tidewright.husbandry.journal.Span;
import org.tidewright.husbandry.limit.Limit;
import org.tidewright.husbandry.livestock.Animals;
import org.tidewright.husbandry.livestock.Community;
import org.tidewright.husbandry.newtank.NewTankOrder;
import org.tidewright.husbandry.newtank.NewTankStudy;
import org.tidewright.husbandry.nutrient.NutrientForecast;
import org.tidewright.husbandry.nutrient.NutrientReport;
import org.tidewright.husbandry.quantity.ProbeHours;
import org.tidewright.husbandry.quantity.WaterStudy;
import org.tidewright.husbandry.quarantine.BareTankWater;
import org.tidewright.husbandry.rehearsal.Crossing;
import org.tidewright.husbandry.rehearsal.OutageReport;
import org.tidewright.husbandry.rehearsal.Trace;
import org.tidewright.husbandry.rehearsal.WaterReport;
import org.tidewright.plan.Examples;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.Sump;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.plan.source.Basis;
import org.tidewright.plan.species.Catalogue;
import org.tidewright.plan.text.PlanReading;
import org.tidewright.plan.text.PlanText;
import org.tidewright.twin.forecast.UsualDay;
import org.tidewright.twin.rehearsal.Band;
import org.tidewright.twin.rehearsal.OutageOrder;
import org.tidewright.twin.rehearsal.Outdoors;
import org.tidewright.twin.rehearsal.WaterMovement;
import org.tidewright.twin.system.Levers;
import org.tidewright.twin.system.SystemTwin;

/** A desk over the example plans with invented, plausible numbers, so that pages can be seen and tested alone. */
@NullUnmarked // The example plans are known to have what is read here; a plan without it fails the test.
public class HandMadeDesk implements Desk {
    private record Kept(int revision, String text) {}

    private record Cut(Plan plan, boolean airHolesClear) {}

    private static final Map<Plan, BareTankWater> BARE_TANKS = new ConcurrentHashMap<>();
    private static final Map<Plan, NutrientForecast> NUTRIENTS = new ConcurrentHashMap<>();

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-03-07T19:40:00Z"), ZoneId.of("Europe/Berlin"));

    private final Map<String, Kept> systems = new LinkedHashMap<>();
    private final Map<String, String> wishes = new LinkedHashMap<>();
    private final Journal journal = new HandMadeJournal(CLOCK);
    private final HandMadeProbes probes = new HandMadeProbes();
    private final Photos photos = new HandMadePhotos();
    private final Map<Cut, WaterMovement> cuts = new ConcurrentHashMap<>();

    public HandMadeDesk() {
        for (String name : Examples.NAMES) {
            systems.put(name, new Kept(7, Examples.text(name)));
        }
        for (int i = 0; i < 12; i++) {
            read(WaterQuantity.ALKALINITY, 8.2 - 0.02 * i, "photometer", 4 * i);
            read(WaterQuantity.NITRATE, 6 + 0.5 * i, "photometer", 4 * i);
        }
    }

    /** A reading of the fifty-five gallons, so many days before now. */
    private void read(WaterQuantity quantity, double written, String method, int daysAgo) {
        Event reading = new Event.Reading(quantity, written, quantity.units().get(0), method);
        UUID id = UUID.nameUUIDFromBytes((quantity + " " + daysAgo).getBytes(StandardCharsets.UTF_8));
        journal.write(
                "fifty-five-gallon", new Draft(id, OffsetDateTime.now(CLOCK).minusDays(daysAgo), reading, ""));
    }

    /** Adds or replaces a system. */
    public synchronized void put(String id, String text) {
        systems.put(id, new Kept(1, text));
    }

    @Override
    public Journal journal() {
        return journal;
    }

    @Override
    public ProbeLog probes() {
        return probes;
    }

    @Override
    public BothLogs bothLogs() {
        return (system, drafts, values, progress) -> {
            values.forEach((probe, said) -> probes.append(system, probe, said));
            return journal.writeAll(system, drafts, progress);
        };
    }

    @Override
    public Photos photos() {
        return photos;
    }

    @Override
    public WaterStudy water(SystemView view) {
        return WaterStudy.of(
                view.plan(),
                journal.lines(view.entry().id(), Span.EVER, EnumSet.allOf(Kind.class)),
                ProbeHours.of(probes, view.entry().id(), CLOCK.instant()),
                CLOCK.instant(),
                CLOCK.getZone());
    }

    @Override
    public Clock clock() {
        return CLOCK;
    }

    @Override
    public Levers levers(Plan plan) {
        return SystemTwin.of(plan).levers();
    }

    @Override
    public synchronized List<SystemEntry> systems() {
        return systems.keySet().stream()
                .map(id -> system(id).orElseThrow().entry())
                .toList();
    }

    @Override
    public synchronized Optional<SystemView> system(String id) {
        Kept kept = systems.get(id);
        if (kept == null) {
            return Optional.empty();
        }
        Plan plan = ((PlanReading.Sound) PlanText.read(kept.text())).plan();
        double water = HandMadeWater.running(plan).total(0);
        return Optional.of(new SystemView(
                new SystemEntry(id, plan.name(), water, kept.revision(), plan.units()), plan, kept.text()));
    }

    @Override
    public WaterSoon waterWith(Plan plan, Community community) {
        return new WaterSoon() {
            @Override
            public Optional<Burden> with(Animals candidate, List<Animals> coming) {
                return Optional.empty();
            }

            @Override
            public boolean isLate() {
                return false;
            }
        };
    }

    @Override
    public synchronized SaveResult save(String id, int basedOnRevision, String text) {
        Kept kept = systems.get(id);
        if (PlanText.read(text) instanceof PlanReading.Faulty faulty) {
            return new SaveResult.Faulty(faulty.faults());
        }
        if (kept.revision() != basedOnRevision) {
            return new SaveResult.Conflict(kept.revision(), kept.text());
        }
        systems.put(id, new Kept(basedOnRevision + 1, text));
        return new SaveResult.Saved(basedOnRevision + 1);
    }

    @Override
    public OutageOrder usualOrder(Plan plan) {
        return new OutageOrder(24, Outdoors.constant(5), true, false);
    }

    /** Not invented: only the twin knows flows whose sums close. */
    @Override
    public NutrientReport nutrients(Plan plan, UnitSystem units, Map<String, Double> moved) {
        return NUTRIENTS.computeIfAbsent(plan, NutrientForecast::of).report(units, moved);
    }

    @Override
    public WaterMovement running(Plan plan) {
        return HandMadeWater.running(plan);
    }

    @Override
    public NewTankStudy newTank(Plan plan, NewTankOrder order) {
        return NewTankStudy.of(plan, order);
    }

    @Override
    public UsualDay usualDay(Plan plan) {
        return new UsualDay(plan);
    }

    @Override
    public DayStudy day(Plan plan, UsualDay.Habits habits, List<String> tried) {
        return DayStudy.of(usualDay(plan), plan, habits, tried);
    }

    @Override
    public BareTankWater bareTank(Plan plan) {
        return BARE_TANKS.computeIfAbsent(plan, BareTankWater::of);
    }

    /** Not asked of the twin: 40 g. */
    @Override
    public CalmAddition calmAddition(Plan plan, Community community) {
        return new CalmAddition(0.04, 0.1, 13);
    }

    @Override
    public synchronized String wishes(String id) {
        return wishes.getOrDefault(id, "");
    }

    @Override
    public synchronized boolean keepWishes(String id, String before, String text) {
        if (!wishes(id).equals(before)) {
            return false;
        }
        wishes.put(id, text);
        return true;
    }

    @Override
    public WaterReport waterAfter(Plan plan, OutageOrder order) {
        if (!plan.hasSump()) {
            return new WaterReport(null, new double[0], null, true, Sentence.of("Nothing can fall back."));
        }
        WaterMovement movement = cuts.computeIfAbsent(new Cut(plan, order.airHolesClear()), HandMadeDesk::powerCut);
        double[] room = room(plan, movement);
        double left = room[room.length - 1];
        boolean dry = left >= 0;
        Figure told = Figure.about(Measure.VOLUME, Math.abs(left), 3e-3);
        Sentence sentence = dry
                ? Sentence.of("The floor stays dry, with ", figure(told, "a"), " of room to spare.")
                : Sentence.of(
                        alarm("Clear the air hole today:"),
                        " blocked, it lets the return line pull down to the nozzle, and ",
                        figure(told, "a"),
                        " reach the floor in the second minute.");
        return new WaterReport(movement, room, Figure.about(Measure.VOLUME, left, 3e-3), dry, sentence);
    }

    private static WaterMovement powerCut(Cut cut) {
        return HandMadeWater.powerCut(cut.plan(), !cut.airHolesClear());
    }

    private static double[] room(Plan plan, WaterMovement movement) {
        Sump sump = plan.sump();
        double[] room = new double[movement.time().length];
        for (int i = 0; i < room.length; i++) {
            for (Sump.Section section : sump.sections()) {
                double area = section.length().in("m") * sump.width().in("m");
                room[i] += area
                        * (sump.height().in("m")
                                - movement.vessel(section.name()).level()[i]);
            }
            double onFloor = movement.vessel("floor").volume()[i];
            if (onFloor > 0) {
                room[i] = -onFloor;
            }
        }
        return room;
    }

    @Override
    public OutageReport rehearse(Plan plan, OutageOrder order) {
        WaterReport water = waterAfter(plan, order);
        int n = 145;
        double[] time = new double[n];
        double[][] warm = new double[3][n];
        double[][] air = new double[3][n];
        double[] losses = {1.3, 1, 0.75};
        double start = plan.water().temperature().in("degC");
        double loss = plan.hasSump() ? 0.055 : 0.11;
        for (int i = 0; i < n; i++) {
            time[i] = order.hours() * 3600 * i / (n - 1);
            double h = time[i] / 3600;
            for (int q = 0; q < 3; q++) {
                warm[q][i] = 17 + (start - 17) * Math.exp(-loss * losses[q] * h);
                double breath = order.backupUsed() ? 0.05 : 0.085;
                air[q][i] = (0.6 + 6.1 * Math.exp(-breath * losses[q] * h)) / 1000;
            }
        }
        Limit cold = new Limit("act", 22, true, "f");
        Limit harm = new Limit("harm", 18, true, "f");
        Limit stuffy = new Limit("act", 4e-3, true, "f");
        List<Trace> traces = List.of(
                new Trace(
                        "temperature",
                        "Temperature, display",
                        Measure.TEMPERATURE,
                        time,
                        new Band(warm[0], warm[1], warm[2]),
                        List.of(cold, harm)),
                new Trace(
                        "oxygen",
                        "Oxygen, display",
                        Measure.CONCENTRATION,
                        time,
                        new Band(air[0], air[1], air[2]),
                        List.of(stuffy)));
        List<Crossing> crossings = new ArrayList<>();
        crossings.add(crossing("oxygen", stuffy, time, air, 0.97));
        crossings.add(crossing("temperature", cold, time, warm, 0.9));
        crossings.add(crossing("temperature", harm, time, warm, 0.3));
        Sentence lead = water.told()
                .then(Sentence.of(
                        "Air is what runs short: oxygen reaches ",
                        figure(Figure.exact(Measure.CONCENTRATION, 4e-3), "f"),
                        " after about ",
                        figure(crossings.get(0).after(), "e"),
                        ", long before the cold does."));
        List<Sentence> remarks = List.of(
                Sentence.of(
                        "The check valve is counted as absent: with it shut tight, ",
                        Figure.about(Measure.VOLUME, 0.012, 0.002),
                        " less would fall back."),
                Sentence.of(
                        "The battery feeds the air pump for ",
                        Figure.between(Measure.DURATION, 19 * 3600, 17 * 3600, 22 * 3600),
                        ". Without it oxygen falls about twice as fast."));
        List<Assumption> assumptions = List.of(
                new Assumption(
                        "heat loss of the display",
                        Figure.between(Measure.CONDUCTANCE, 22, 18, 26),
                        Basis.COMPUTED,
                        "from the panes and the room"),
                new Assumption(
                        "oxygen taken up through the surface",
                        Figure.between(Measure.TRANSFER_VELOCITY, 2.2e-6, 1.4e-6, 3.5e-6),
                        Basis.FROM_MEMORY,
                        ""));
        return new OutageReport(plan, order, lead, water, traces, crossings, remarks, assumptions, SOURCES, CAUTIONS);
    }

    private static Crossing crossing(String trace, Limit limit, double[] time, double[][] bands, double share) {
        double[] at = new double[3];
        for (int q = 0; q < 3; q++) {
            at[q] = Double.POSITIVE_INFINITY;
            for (int i = 0; i < time.length; i++) {
                if (bands[q][i] <= limit.value()) {
                    at[q] = time[i];
                    break;
                }
            }
        }
        return new Crossing(trace, limit, Figure.between(Measure.DURATION, at[1], at[0], at[2]), share);
    }

    @Override
    public Report checks(Plan plan) {
        List<Check> checks = new ArrayList<>();
        if (plan.hasSump()) {
            checks.add(new Check(
                    "power_cut",
                    "Power cut",
                    Holding.HOLDS,
                    Figure.about(Measure.VOLUME, 0.014, 0.003),
                    Sentence.of(Figure.about(Measure.VOLUME, 0.024, 0.003), " left"),
                    Sentence.of("You ask for ", figure(Figure.exact(Measure.VOLUME, 0.010), "d"), " to spare."),
                    List.of("a", "d")));
            checks.add(new Check(
                    "power_cut_blocked",
                    "Power cut, air hole blocked",
                    Holding.FAILS,
                    Figure.about(Measure.VOLUME, -0.0065, 0.003),
                    Sentence.of(alarm("7 L on the floor")),
                    Sentence.of(
                            "Raise the nozzle by ", Figure.exact(Measure.LENGTH, 0.025), ": then less can run back."),
                    List.of("a")));
            checks.add(new Check(
                    "drain_blocked",
                    "Drain blocked",
                    Holding.HOLDS,
                    Figure.about(Measure.LEVEL, 0.033, 0.004),
                    Sentence.of("stops at ", Figure.exact(Measure.LEVEL, 0.517)),
                    Sentence.of("The pump runs dry first; the rim is higher."),
                    List.of("a", "b")));
            checks.add(new Check(
                    "crest_head",
                    "Head over the crest",
                    Holding.HOLDS,
                    null,
                    Sentence.of(Figure.about(Measure.LEVEL, 0.016, 0.001)),
                    Sentence.of(
                            "The teeth carry ", Figure.about(Measure.FLOW, 3200 / 3.6e6, 60 / 3.6e6), " twice over."),
                    List.of("b")));
            checks.add(new Check(
                    "top_off",
                    "Top-off empty, until the pump draws air",
                    Holding.CLOSE,
                    Figure.about(Measure.DURATION, 0.4 * 86400, 0.5 * 86400),
                    Sentence.of(Figure.about(Measure.DURATION, 4.1 * 86400, 0.5 * 86400)),
                    Sentence.of("You are away five days at a time."),
                    List.of("e")));
        }
        checks.add(new Check(
                "heater",
                "Heaters on the coldest day",
                Holding.HOLDS,
                Figure.about(Measure.POWER, 130, 20),
                Sentence.of(Figure.about(Measure.SHARE, 0.56, 0.08)),
                Sentence.of("Two of 150 W hold the water in a room of ", Figure.exact(Measure.TEMPERATURE, 16), "."),
                List.of("c")));
        checks.add(new Check(
                "weight",
                "Weight, filled",
                Holding.ASK,
                null,
                Sentence.of(Figure.about(Measure.MASS, 748, 20)),
                Sentence.of("On 0.92 m² and ", Figure.exact(Measure.NUMBER, 6), " feet; see the caution."),
                List.of("e")));
        Sentence lead = plan.hasSump()
                ? Sentence.of(
                        alarm("Raise the nozzle before the next dark evening:"),
                        " with its air hole blocked, a power cut puts ",
                        figure(Figure.about(Measure.VOLUME, 0.0065, 0.003), "a"),
                        " on the floor. All else holds.")
                : Sentence.of("Nothing presses. Every check holds, the heater with the smallest margin.");
        return new Report(lead, checks, SOURCES, CAUTIONS);
    }

    private static final List<Source> SOURCES = List.of(
            new Source("a", "Glass, crest, pipes, sump.", Basis.YOUR_PLAN, "measured by you, ± 3 mm"),
            new Source(
                    "b", "Weir flow, coefficient 0.60 ± 0.03.", Basis.PUBLISHED, "open-channel hydraulics handbooks"),
            new Source("c", "Heat loss 22 ± 3 W/K.", Basis.COMPUTED, "from the panes and the room"),
            new Source("d", "Room to spare after a power cut.", Basis.COMMON_PRACTICE, "change it in the plan"),
            new Source("e", "Breathing of animals and bacteria.", Basis.FROM_MEMORY, ""),
            new Source("f", "Limits 22 °C and 4 mg/L.", Basis.COMMON_PRACTICE, "change them in the plan"));

    private static final List<String> CAUTIONS = List.of(
            "Never test this by pulling plugs with wet hands or from a wet floor. Switch off at the wall; every socket near"
                    + " the water belongs behind a residual-current device and above a drip loop. Ask a licensed electrician"
                    + " where you are unsure.");

    @Override
    public KnownSpecies species() {
        return new KnownSpecies(Catalogue.ofProgram(), List.of());
    }
}
