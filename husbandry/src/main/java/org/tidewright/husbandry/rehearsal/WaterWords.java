package org.tidewright.husbandry.rehearsal;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.husbandry.advice.Sources;
import org.tidewright.husbandry.water.DrainDownStudy;
import org.tidewright.husbandry.water.FallBack;
import org.tidewright.plan.model.Names;
import org.tidewright.plan.model.Overflow;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.ReturnLine;
import org.tidewright.plan.source.Basis;
import org.tidewright.twin.mechanism.water.ReturnPump;
import org.tidewright.twin.rehearsal.OutageOrder;
import org.tidewright.twin.rehearsal.PowerCut;
import org.tidewright.twin.rehearsal.WaterMovement;
import org.tidewright.twin.tank.Place;

/** Tells what the water did. */
final class WaterWords {
    private WaterWords() {}

    static WaterReport report(@Nullable DrainDownStudy study, OutageOrder order, Sources sources) {
        if (study == null) {
            return new WaterReport(
                    null,
                    new double[0],
                    null,
                    true,
                    Sentence.of("The floor stays dry: no vessel stands below another, so nothing falls back."));
        }
        String key = DrainDownStudy.source(sources);
        Figure room = Figure.about(Measure.VOLUME, study.room(), study.doubt());
        boolean dry = study.room() >= 0;
        return new WaterReport(
                study.result().movement(), study.roomLeft(), room, dry, told(study, order, room, dry, key));
    }

    private static Sentence told(DrainDownStudy study, OutageOrder order, Figure room, boolean dry, String key) {
        if (dry) {
            return Sentence.of(
                    "The floor stays dry, with ", Sentence.figure(room, key), " of room to spare in the sump.");
        }
        Figure spilled = Figure.about(Measure.VOLUME, -study.room(), study.doubt());
        Figure after = Figure.exact(Measure.DURATION, floodStarts(study));
        if (order.airHolesClear()) {
            return Sentence.of(
                    Sentence.alarm("Lower the sump’s running level today:"),
                    " in a power cut ",
                    Sentence.figure(spilled, key),
                    " reach the floor, the first of it after ",
                    after,
                    ".");
        }
        return Sentence.of(
                Sentence.alarm("Clear the air hole today:"),
                " blocked, it lets the return line draw the display down to its nozzle, and ",
                Sentence.figure(spilled, key),
                " reach the floor, the first of it after ",
                after,
                ".");
    }

    private static double floodStarts(DrainDownStudy study) {
        double first = Double.POSITIVE_INFINITY;
        for (WaterMovement.Vessel vessel : study.result().movement().vessels()) {
            if (vessel.place() == Place.SUMP_SECTION || vessel.place() == Place.DISPLAY) {
                first = Math.min(first, study.result().overRim(vessel.name()));
            }
        }
        return first;
    }

    static List<Sentence> remarks(Plan plan, OutageOrder order, DrainDownStudy study, Sources sources) {
        List<Sentence> remarks = new ArrayList<>();
        String bound = sources.key(
                "The most that can fall back",
                Basis.COMPUTED,
                "geometry alone: areas times heights, contents of pipes and gear; the run stays within it");
        remarks.add(FallBack.of(plan, order.airHolesClear()).told(bound));
        remarks.add(course(study));
        ReturnLine line = requireNonNull(plan.returnLine());
        if (line.checkValve() != ReturnLine.CheckValve.NONE) {
            DrainDownStudy held = DrainDownStudy.of(plan, true, true);
            remarks.add(Sentence.of(
                    "If the check valve held, ",
                    Figure.about(Measure.VOLUME, held.room(), held.doubt()),
                    " of room would be left. It is not counted: a flap that leaks is its usual end, and brings back the"
                            + " same water later."));
        }
        PowerCut.Result restart = study.cut().powerReturns(study.result().end(), false);
        remarks.add(restart(plan, restart));
        if (requireNonNull(plan.overflow()).kind() == Overflow.Kind.HANG_ON) {
            remarks.add(hungOverflow(plan, study.cut().drainsStop(plan.topOff() != null)));
        }
        return remarks;
    }

    private static Sentence course(DrainDownStudy study) {
        double siphon = study.result().firstTime("return line siphon broken");
        double hole = study.result().firstTime("return line air hole free");
        double over = Math.min(siphon, hole);
        Figure fell = Figure.about(Measure.VOLUME, study.fellBack(), study.doubt());
        if (Double.isInfinite(over)) {
            return Sentence.of(
                    "In all ", fell, " fall back into the sump. No hand is quick enough: only the geometry acts.");
        }
        return Sentence.of(
                "In the run ",
                fell,
                " fell back into the sump; air stopped the return line after ",
                Figure.exact(Measure.DURATION, over),
                ". No hand is that quick: only the geometry acts.");
    }

    private static Sentence restart(Plan plan, PowerCut.Result restart) {
        if (restart.spilled() > 1e-4) {
            return Sentence.of(
                    "When the power returns and the siphon does not form again, the display runs over its rim after ",
                    Figure.exact(Measure.DURATION, restart.overRim(Names.DISPLAY)),
                    " and puts ",
                    Figure.exact(Measure.VOLUME, restart.spilled()),
                    " on the floor within a quarter of an hour.");
        }
        double highest = 0;
        for (double level : restart.movement().vessel(Names.DISPLAY).level()) {
            highest = Math.max(highest, level);
        }
        Figure under = Figure.exact(Measure.LEVEL, plan.display().height().in("m") - highest);
        if (restart.pumpDrewAir()) {
            return Sentence.of(
                    "When the power returns and the siphon does not form again, the return pump draws air after ",
                    Figure.exact(Measure.DURATION, restart.firstTime(ReturnPump.DRAWS_AIR)),
                    "; the display stays ",
                    under,
                    " under its rim.");
        }
        return Sentence.of(
                "When the power returns, the pump may start by itself: even if the siphon does not form again, the display"
                        + " stays ",
                under,
                " under its rim and the pump keeps its water.");
    }

    private static Sentence hungOverflow(Plan plan, PowerCut.Result lost) {
        if (lost.spilled() > 1e-4) {
            return Sentence.of(
                    "If the hung overflow loses its siphon while the pump runs on, ",
                    Figure.exact(Measure.VOLUME, lost.spilled()),
                    plan.topOff() == null
                            ? " of the return section reach the floor."
                            : " reach the floor, the top-off’s reservoir counted.");
        }
        return Sentence.of(
                "If the hung overflow loses its siphon while the pump runs on, the floor stays dry: the pump runs dry after ",
                Figure.exact(Measure.DURATION, lost.firstTime(ReturnPump.DRAWS_AIR)),
                ".");
    }
}
