package org.tidewright.husbandry.rehearsal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.Assumption;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.husbandry.advice.Sources;
import org.tidewright.husbandry.check.Cautions;
import org.tidewright.husbandry.limit.DisplayLimits;
import org.tidewright.husbandry.limit.Limit;
import org.tidewright.husbandry.water.DrainDownStudy;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.source.Basis;
import org.tidewright.seawater.gas.MolarMass;
import org.tidewright.twin.rehearsal.Band;
import org.tidewright.twin.rehearsal.Bound;
import org.tidewright.twin.rehearsal.FirstTime;
import org.tidewright.twin.rehearsal.Outage;
import org.tidewright.twin.rehearsal.OutageOrder;
import org.tidewright.twin.tank.Basins;

/** Rehearses a power cut on a plan and tells what came of it. */
public final class OutageRehearsal {
    /** Trace of the display's temperature. */
    public static final String DISPLAY_TEMPERATURE = "display_temperature";

    /** Trace of the display's oxygen. */
    public static final String DISPLAY_OXYGEN = "display_oxygen";

    private final Plan plan;
    private final OutageOrder order;
    private final Sources sources = new Sources();
    private final DisplayLimits limits;
    private final @Nullable DrainDownStudy study;
    private final Outage outage;
    private final Outage.Result result;
    private final List<Crossing> crossings;

    /** The rehearsal of an order. */
    public static OutageReport of(Plan plan, OutageOrder order) {
        return new OutageRehearsal(plan, order).report();
    }

    /** The first minutes alone, which take no draws. */
    public static WaterReport water(Plan plan, OutageOrder order) {
        DrainDownStudy study = plan.hasSump() ? DrainDownStudy.of(plan, order.airHolesClear(), false) : null;
        return WaterWords.report(study, order, new Sources());
    }

    private OutageRehearsal(Plan plan, OutageOrder order) {
        this.plan = plan;
        this.order = order;
        this.limits = DisplayLimits.of(plan, sources);
        this.study = plan.hasSump() ? DrainDownStudy.of(plan, order.airHolesClear(), false) : null;
        Basins.Volumes volumes =
                study == null ? Outage.volumesOf(plan) : Outage.volumesAfter(study.cut(), study.result());
        this.outage = new Outage(plan, order, volumes, bounds());
        this.result = outage.rehearse(Outage.DRAWS);
        this.crossings = crossings(result.firstTimes());
    }

    private OutageReport report() {
        WaterReport water = WaterWords.report(study, order, sources);
        return new OutageReport(
                plan,
                order,
                water.told().then(OutageWords.lead(order, crossings)),
                water,
                traces(),
                crossings,
                remarks(),
                result.parameters().stream().map(Assumption::of).toList(),
                sources.all(),
                Cautions.of(plan));
    }

    // ── limits ──

    private List<Bound> bounds() {
        List<Bound> bounds = new ArrayList<>();
        for (Limit limit : limits.ofTemperature()) {
            bounds.add(new Bound(
                    name(DISPLAY_TEMPERATURE, limit),
                    Bound.Quantity.TEMPERATURE,
                    limit.value(),
                    limit.forbiddenBelow()));
        }
        for (Limit limit : limits.ofOxygen()) {
            double molar = limit.value() / MolarMass.OXYGEN;
            bounds.add(new Bound(name(DISPLAY_OXYGEN, limit), Bound.Quantity.OXYGEN, molar, limit.forbiddenBelow()));
        }
        return bounds;
    }

    private static String name(String trace, Limit limit) {
        return trace + (limit.forbiddenBelow() ? " below " : " above ") + limit.words();
    }

    private List<Crossing> crossings(Map<String, FirstTime> of) {
        List<Crossing> found = new ArrayList<>();
        for (Limit limit : limits.ofTemperature()) {
            found.add(crossing(DISPLAY_TEMPERATURE, limit, of));
        }
        found.addAll(oxygenCrossings(of));
        found.sort(Comparator.comparingDouble(crossing -> crossing.after().value()));
        return List.copyOf(found);
    }

    private List<Crossing> oxygenCrossings(Map<String, FirstTime> of) {
        return limits.ofOxygen().stream()
                .map(limit -> crossing(DISPLAY_OXYGEN, limit, of))
                .toList();
    }

    private static Crossing crossing(String trace, Limit limit, Map<String, FirstTime> of) {
        FirstTime time = of.get(name(trace, limit));
        if (time == null) {
            throw new IllegalStateException("nothing watched " + name(trace, limit));
        }
        return new Crossing(trace, limit, OutageWords.after(time), time.share());
    }

    // ── traces ──

    private List<Trace> traces() {
        List<Trace> traces = new ArrayList<>();
        traces.add(new Trace(
                DISPLAY_TEMPERATURE,
                "Temperature, display",
                Measure.TEMPERATURE,
                result.time(),
                result.displayTemperature(),
                limits.ofTemperature()));
        traces.add(new Trace(
                DISPLAY_OXYGEN,
                "Oxygen, display",
                Measure.CONCENTRATION,
                result.time(),
                inMass(result.displayOxygen()),
                limits.ofOxygen()));
        if (result.sumpTemperature() != null) {
            traces.add(new Trace(
                    "sump_temperature",
                    "Temperature, sump",
                    Measure.TEMPERATURE,
                    result.time(),
                    result.sumpTemperature(),
                    List.of()));
        }
        traces.add(new Trace(
                "room_temperature",
                "Temperature, room",
                Measure.TEMPERATURE,
                result.time(),
                result.roomTemperature(),
                List.of()));
        return traces;
    }

    private static Band inMass(Band molar) {
        return new Band(inMass(molar.low()), inMass(molar.middle()), inMass(molar.high()));
    }

    private static double[] inMass(double[] molar) {
        return DoubleStream.of(molar).map(value -> value * MolarMass.OXYGEN).toArray();
    }

    // ── what else came out ──

    private List<Sentence> remarks() {
        List<Sentence> remarks = new ArrayList<>();
        if (study != null) {
            remarks.addAll(WaterWords.remarks(plan, order, study, sources));
        }
        if (result.batteryEmpty() != null && result.withoutBackup() != null) {
            remarks.addAll(
                    OutageWords.battery(result.batteryEmpty(), crossings, oxygenCrossings(result.withoutBackup())));
        }
        if (order.backupUsed() && plan.backup() != null && plan.backup().generator() != null) {
            remarks.add(OutageWords.generator(
                    plan.backup().generator(), outage.twin().supplies()));
        }
        String dark = sources.key(
                "The power fails at the end of the night",
                Basis.COMPUTED,
                "no light, so nothing makes oxygen; the room neither heated nor cooled, its air changed as the plan says;"
                        + " nobody feeds, doses or tops up");
        remarks.add(Sentence.of(
                "The rehearsal takes the worst hour: lights off, everything breathing, the room left to the weather",
                new Sentence.Part.Reference(dark),
                "."));
        return remarks;
    }
}
