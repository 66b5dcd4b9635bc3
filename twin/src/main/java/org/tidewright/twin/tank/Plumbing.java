package org.tidewright.twin.tank;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tidewright.plan.model.Gear;
import org.tidewright.plan.model.Overflow;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.Refugium;
import org.tidewright.plan.model.ReturnLine;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Basis;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.law.hydraulic.DrainCapacity;
import org.tidewright.twin.law.hydraulic.FrancisWeir;
import org.tidewright.twin.law.hydraulic.FullSiphon;
import org.tidewright.twin.law.hydraulic.PipeRun;
import org.tidewright.twin.law.hydraulic.ReturnSiphon;
import org.tidewright.twin.mechanism.water.BackSiphon;
import org.tidewright.twin.mechanism.water.Baffle;
import org.tidewright.twin.mechanism.water.DrainLine;
import org.tidewright.twin.mechanism.water.OverflowWeir;
import org.tidewright.twin.mechanism.water.Refill;
import org.tidewright.twin.mechanism.water.ReturnPump;
import org.tidewright.twin.mechanism.water.RimSpill;
import org.tidewright.twin.mechanism.water.RunBack;
import org.tidewright.twin.mechanism.water.TopOffPump;
import org.tidewright.twin.run.Network;
import org.tidewright.twin.run.State;

/**
 * The water's ways through a plan's vessels and pipes, as a network whose levels move within seconds, with the switches a
 * failure throws.
 */
public final class Plumbing {
    /** Name of the floor among the bodies. */
    public static final String FLOOR = "floor";

    /** Name of the time a drain takes to purge, among the parameters. */
    public static final String PURGE_TIME = "time a drain takes to purge its air";

    /** Usual time an air hole takes to stop a siphon, 2 to 10 s; from memory. */
    public static final @Unit("s") double AIR_HOLE_TIME = 5;

    private static final String RETURN_PIPE = "return pipe";
    private static final String RESERVOIR = "top-off reservoir";

    private final Water water;
    private final Vessels vessels;
    private final RunningState running;
    private final Assumptions assumptions;
    private final Network.Builder builder;
    private final Map<Body, Double> filled = new LinkedHashMap<>();
    private final Map<Body, Place> places = new LinkedHashMap<>();
    private final List<Setting> drainsOpen = new ArrayList<>();
    private final List<Setting> primed = new ArrayList<>();
    private final List<Setting> seals = new ArrayList<>();
    private final List<AiredLine> airedLines = new ArrayList<>();

    private final Setting pumpRuns;
    private final Setting gearRuns;
    private final Setting topOffRuns;
    private final Network network;
    private double topOffRunTime;

    /**
     * What is counted on.
     *
     * @param airHolesClear whether the siphon-break holes let air in
     * @param checkValveWorks whether a check valve holds
     */
    public record Assumptions(boolean airHolesClear, boolean checkValveWorks) {}

    /**
     * A line whose mouth or clear air hole stands above the water while all runs: it draws air as soon as its pump stops.
     *
     * @param seal setting that is 1 while no air is in it
     * @param airSince setting that holds the time from which it draws air
     * @param stopsAfter time until air has filled it: none at an open mouth
     */
    public record AiredLine(
            Setting seal, Setting airSince, @Unit("s") double stopsAfter) {}

    /** The plumbing of a plan that has a sump. */
    public static Plumbing of(Plan plan, Assumptions assumptions) {
        if (!plan.hasSump()) {
            throw new IllegalArgumentException(plan.name() + " has no sump: no water moves between vessels");
        }
        return new Plumbing(plan, assumptions);
    }

    private Plumbing(Plan plan, Assumptions assumptions) {
        this.water = Water.of(plan);
        this.vessels = Vessels.of(plan);
        this.running = RunningState.of(plan, vessels, water.viscosity());
        this.assumptions = assumptions;
        builder = new Network.Builder(water.density(), water.specificHeat());
        pumpRuns = builder.setting("return pump runs", 1);
        gearRuns = builder.setting("gear runs", 1);
        topOffRuns = builder.setting("top-off has power", 1);

        Body floor = place(builder.body(FLOOR), Place.FLOOR, 0);
        Body display = vessel(vessels.display(), Place.DISPLAY, running.displayLevel(), floor);
        Body box = vessel(requireNonNull(vessels.box()), Place.OVERFLOW_BOX, running.boxLevel(), null);
        List<Body> sections = new ArrayList<>();
        for (int i = 0; i < vessels.sections().size(); i++) {
            Vessels.Vessel section = vessels.sections().get(i).vessel();
            sections.add(vessel(section, Place.SUMP_SECTION, running.sectionLevels()[i], floor));
        }
        Body last = sections.get(sections.size() - 1);
        Body refugium = vessels.refugium() == null
                ? null
                : vessel(vessels.refugium(), Place.REFUGIUM, running.refugiumLevel(), floor);

        overflow(requireNonNull(plan.overflow()), display, box, sections);
        baffles(sections);
        returnLine(plan, requireNonNull(plan.returnLine()), display, refugium, last);
        if (refugium != null) {
            refugium(requireNonNull(plan.refugium()), refugium, sections, last);
        }
        gear(plan, sections);
        topOff(plan, last);
        network = builder.build();
    }

    // ── what a rehearsal needs ──

    public Network network() {
        return network;
    }

    public Water water() {
        return water;
    }

    public Vessels vessels() {
        return vessels;
    }

    public RunningState running() {
        return running;
    }

    /** Every place that holds water, in the order a report lists them. */
    public Map<Body, Place> places() {
        return places;
    }

    /** Switch of the return pump. */
    public Setting pumpRuns() {
        return pumpRuns;
    }

    /** Switch of skimmers, reactors and the like. */
    public Setting gearRuns() {
        return gearRuns;
    }

    /** Switch of the top-off. */
    public Setting topOffRuns() {
        return topOffRuns;
    }

    /** One for each drain: 0 blocks it. */
    public List<Setting> drainsOpen() {
        return drainsOpen;
    }

    /** One for each full siphon: 1 while no air is in it. */
    public List<Setting> primed() {
        return primed;
    }

    /** One for each line that can run backward: 1 while no air is in it. */
    public List<Setting> seals() {
        return seals;
    }

    /** The lines that air enters at once when their pump stops. */
    public List<AiredLine> airedLines() {
        return airedLines;
    }

    /** How long the top-off's pump takes to empty its reservoir; 0 without one. */
    public @Unit("s") double topOffRunTime() {
        return topOffRunTime;
    }

    /** Every body as it stands while all runs. */
    public State runningState() {
        State state = new State(network);
        filled.forEach(
                (body, volume) -> state.fill(body, volume, water.temperature(), water.salinity(), water.oxygen()));
        return state;
    }

    // ── assembly ──

    private Body place(Body body, Place place, double volume) {
        places.put(body, place);
        filled.put(body, volume);
        return body;
    }

    private Body vessel(Vessels.Vessel vessel, Place place, double level, @Nullable Body floor) {
        Body body = builder.body(vessel.name(), vessel.shape(), vessel.bottomHeight(), 0);
        place(body, place, vessel.shape().volume(level));
        if (floor != null) {
            builder.add(new RimSpill(body, floor, vessel.rimLevel(), new FrancisWeir(vessel.rimLength(), 0)));
        }
        return body;
    }

    private void overflow(Overflow overflow, Body display, Body box, List<Body> sections) {
        double spread = overflow.teeth() == null ? 0.15 : 0.25;
        Parameter coefficient = builder.parameter(
                "flow over the crest, factor",
                "1",
                1,
                1 - spread,
                1 + spread,
                Basis.FROM_MEMORY,
                "weir laws (Francis 1883, ISO 1438) below the heads they are calibrated for");
        double crest = display.bottomHeight() + overflow.crest().in("m");
        builder.add(new OverflowWeir(display, box, crest, Laws.overflowWeir(overflow), coefficient));

        Parameter purge = builder.parameter(PURGE_TIME, "s", 10, 3, 30, Basis.FROM_MEMORY, "a few pipe fillings");
        Parameter empties = builder.parameter(
                "time in which a pipe runs empty", "s", 3, 1, 6, Basis.FROM_MEMORY, "free fall through a few bends");
        double carriedByOthers = carriedByOthers(overflow, box, sections);
        for (int i = 0; i < overflow.drains().size(); i++) {
            Overflow.Drain drain = overflow.drains().get(i);
            Body into = drain.into() == null ? sections.get(0) : section(drain.into(), sections);
            double own = i == 0 ? Math.max(0, running.displayFlow() - carriedByOthers) : 0;
            drain(drain, box, into, display.bottomHeight(), own, purge, empties);
        }
    }

    /** What the drains after the first take at the box's running level. */
    private double carriedByOthers(Overflow overflow, Body box, List<Body> sections) {
        double sum = 0;
        for (Overflow.Drain drain :
                overflow.drains().subList(1, overflow.drains().size())) {
            double inlet = vessels.display().bottomHeight() + drain.inlet().in("m");
            double head = box.bottomHeight() + running.boxLevel() - inlet;
            if (head > 0) {
                double drop = box.bottomHeight()
                        + running.boxLevel()
                        - sections.get(0).bottomHeight()
                        - running.sectionLevels()[0];
                sum += DrainCapacity.of(head, drop, Laws.drain(drain), water.viscosity())
                        .carried();
            }
        }
        return sum;
    }

    private void drain(
            Overflow.Drain drain,
            Body box,
            Body into,
            @Unit("m") double displayBottom,
            @Unit("m^3/s") double ownFlow,
            Parameter purge,
            Parameter empties) {
        boolean siphon = drain.kind() == Overflow.DrainKind.SIPHON;
        PipeRun pipe = Laws.drain(drain);
        if (siphon && ownFlow > 0) {
            double drop = box.bottomHeight() + running.boxLevel() - into.bottomHeight() - levelOf(into);
            double valve = FullSiphon.throttlingLoss(pipe, drop, ownFlow, water.viscosity());
            pipe = pipe.withExtraLoss(Math.max(0, valve));
        }
        Setting open = builder.setting(drain.name() + " open", 1);
        drainsOpen.add(open);
        Setting full = siphon ? builder.setting(drain.name() + " primed", ownFlow > 0 ? 1 : 0) : null;
        double inlet = displayBottom + drain.inlet().in("m");
        builder.add(new DrainLine(drain.name(), box, into, inlet, pipe, water.viscosity(), full, open, purge));
        if (full != null) {
            primed.add(full);
            Body contents =
                    place(builder.body(drain.name() + " pipe"), Place.HELD_BACK, ownFlow > 0 ? pipe.contents() : 0);
            double drawLevel = drain.inlet().in("m") - (box.bottomHeight() - displayBottom);
            builder.add(new RunBack(contents, into, full, empties));
            builder.add(new Refill(box, contents, pipe.contents(), drawLevel, full, empties));
        }
    }

    private void baffles(List<Body> sections) {
        for (int i = 0; i < sections.size() - 1; i++) {
            Vessels.Section section = vessels.sections().get(i);
            double crest = section.vessel().bottomHeight() + section.baffleLevel();
            builder.add(new Baffle(
                    sections.get(i),
                    sections.get(i + 1),
                    crest,
                    new FrancisWeir(section.vessel().width(), 0)));
        }
    }

    private void returnLine(Plan plan, ReturnLine line, Body display, @Nullable Body refugium, Body last) {
        double intake = line.pump().intake().in("m");
        double lowestMouth = line.outlets().stream()
                .mapToDouble(outlet -> outlet.lowerEdge().in("m"))
                .min()
                .orElseThrow();
        List<ReturnPump.Outlet> outlets = new ArrayList<>();
        outlets.add(new ReturnPump.Outlet(display, display.bottomHeight() + lowestMouth));
        if (refugium != null) {
            double mouth = requireNonNull(plan.refugium()).outlet().lowerEdge().in("m");
            outlets.add(new ReturnPump.Outlet(refugium, refugium.bottomHeight() + mouth));
        }
        ReturnPump.Lift lift = pumpFlows(plan, line, outlets.size());
        for (int branch = 0; branch < outlets.size(); branch++) {
            builder.add(new ReturnPump(last, branch, outlets, lift, intake, pumpRuns));
        }
        Setting sealed = builder.setting("return line sealed", 1);
        seals.add(sealed);
        Parameter empties = builder.parameter(
                "time in which the return pipe runs empty",
                "s",
                3,
                1,
                6,
                Basis.FROM_MEMORY,
                "free fall through a few bends");
        Body pipe = place(
                builder.body(RETURN_PIPE),
                Place.HELD_BACK,
                Laws.bare(line.pipe()).contents());
        builder.add(new RunBack(pipe, last, sealed, empties));
        builder.add(new Refill(last, pipe, Laws.bare(line.pipe()).contents(), intake, pumpRuns, empties));
        boolean held = assumptions.checkValveWorks() && line.checkValve() != ReturnLine.CheckValve.NONE;
        if (!held) {
            builder.add(backSiphon(
                    "return line",
                    display,
                    last,
                    line.outlets(),
                    Laws.backSiphon(line),
                    sealed,
                    fadeTime("return line")));
        }
    }

    /** Tabulated when the pump first runs: most runs are of a pump that stands. */
    private ReturnPump.Lift pumpFlows(Plan plan, ReturnLine line, int outlets) {
        return new ReturnPump.Lift() {
            private @Nullable PumpFlows table;

            @Override
            public synchronized double to(int outlet, double first, double second) {
                if (table == null) {
                    table = new PumpFlows(
                            RunningState.pump(line),
                            heights -> Laws.manifold(plan, heights),
                            outlets,
                            water.viscosity());
                }
                return table.to(outlet, first, second);
            }
        };
    }

    private void refugium(Refugium refugium, Body body, List<Body> sections, Body last) {
        Parameter coefficient = builder.parameter(
                "flow over the refugium's crest, factor",
                "1",
                1,
                0.85,
                1.15,
                Basis.FROM_MEMORY,
                "weir laws (Francis 1883, ISO 1438) below the heads they are calibrated for");
        double crest = body.bottomHeight() + refugium.crest().in("m");
        builder.add(new OverflowWeir(
                body, section(refugium.into(), sections), crest, Laws.refugiumWeir(refugium), coefficient));
        Setting sealed = builder.setting("refugium feed sealed", 1);
        seals.add(sealed);
        builder.add(backSiphon(
                "refugium feed",
                body,
                last,
                List.of(refugium.outlet()),
                Laws.backSiphon(refugium.feed()),
                sealed,
                fadeTime("refugium feed")));
    }

    private Parameter fadeTime(String line) {
        return builder.parameter(
                "time an air hole takes to stop the " + line,
                "s",
                AIR_HOLE_TIME,
                2,
                10,
                Basis.FROM_MEMORY,
                "air has to fill the top of the line");
    }

    /** The line sucks until every mouth that can still suck has drawn air: the deepest one counts. */
    private BackSiphon backSiphon(
            String name,
            Body from,
            Body to,
            List<ReturnLine.Outlet> outlets,
            ReturnSiphon line,
            Setting sealed,
            Parameter fadeTime) {
        double deepestAir = Double.POSITIVE_INFINITY;
        double mouthThere = 0;
        for (ReturnLine.Outlet outlet : outlets) {
            double mouth = outlet.lowerEdge().in("m");
            boolean hole = assumptions.airHolesClear() && outlet.airHole() != null;
            double air = hole ? requireNonNull(outlet.airHole()).height().in("m") : mouth;
            if (air < deepestAir) {
                deepestAir = air;
                mouthThere = mouth;
            }
        }
        Setting fadeStart = builder.setting(name + " air hole free since", Double.POSITIVE_INFINITY);
        if (mouthThere >= levelOf(from)) {
            airedLines.add(new AiredLine(sealed, fadeStart, 0));
        } else if (deepestAir >= levelOf(from)) {
            airedLines.add(new AiredLine(sealed, fadeStart, fadeTime.usual()));
        }
        return new BackSiphon(
                name,
                from,
                to,
                from.bottomHeight() + mouthThere,
                from.bottomHeight() + deepestAir,
                line,
                water.viscosity(),
                pumpRuns,
                sealed,
                fadeTime,
                fadeStart);
    }

    private void gear(Plan plan, List<Body> sections) {
        List<Gear> holding = plan.gear().stream()
                .filter(gear -> gear.holdsBack() != null && isSection(gear.standsIn()))
                .toList();
        if (holding.isEmpty()) {
            return;
        }
        Parameter empties = builder.parameter(
                "time in which a skimmer or reactor runs back",
                "s",
                20,
                8,
                60,
                Basis.FROM_MEMORY,
                "drains through its own pump");
        for (Gear gear : holding) {
            double full = requireNonNull(gear.holdsBack()).in("m^3");
            Body body = place(builder.body(gear.name()), Place.HELD_BACK, full);
            Body section = section(gear.standsIn(), sections);
            builder.add(new RunBack(body, section, gearRuns, empties));
            builder.add(new Refill(section, body, full, 0.02, gearRuns, empties));
        }
    }

    private void topOff(Plan plan, Body last) {
        if (plan.topOff() == null) {
            return;
        }
        Body reservoir = place(
                builder.body(RESERVOIR),
                Place.RESERVOIR,
                plan.topOff().reservoir().in("m^3"));
        topOffRunTime =
                plan.topOff().reservoir().in("m^3") / plan.topOff().pumpFlow().in("m^3/s");
        Setting calls = builder.setting("top-off float hangs low", 0);
        builder.add(new TopOffPump(
                reservoir, last, plan.topOff().pumpFlow().in("m^3/s"), levelOf(last), topOffRuns, calls));
    }

    private boolean isSection(String name) {
        return vessels.sections().stream().anyMatch(section -> section.names().contains(name));
    }

    private Body section(String name, List<Body> sections) {
        return sections.get(vessels.sections().indexOf(vessels.section(name)));
    }

    private double levelOf(Body body) {
        return body.shape().level(requireNonNull(filled.get(body)));
    }
}
