package org.tidewright.twin.tank;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.Refugium;
import org.tidewright.plan.model.ReturnLine;
import org.tidewright.plan.source.Basis;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.law.hydraulic.ReturnSiphon;
import org.tidewright.twin.mechanism.water.BackSiphon;
import org.tidewright.twin.mechanism.water.OverflowWeir;
import org.tidewright.twin.mechanism.water.Refill;
import org.tidewright.twin.mechanism.water.ReturnPump;
import org.tidewright.twin.mechanism.water.RunBack;

/** The way up: the return pump, its line to the display, the branch to a refugium; and both run backward. */
final class ReturnPlumbing {
    private final Waters waters;
    private final Plumbing.Assumptions assumptions;
    private final Setting pumpRuns;
    private final List<Plumbing.AiredLine> airedLines = new ArrayList<>();
    private final List<Setting> seals = new ArrayList<>();

    ReturnPlumbing(Plan plan, Waters waters, Plumbing.Assumptions assumptions) {
        this.waters = waters;
        this.assumptions = assumptions;
        pumpRuns = waters.builder().setting("return pump runs", 1);
        returnLine(plan, requireNonNull(plan.returnLine()));
        if (plan.refugium() != null) {
            refugium(plan.refugium(), requireNonNull(waters.refugium()));
        }
    }

    /** Switch of the return pump. */
    Setting pumpRuns() {
        return pumpRuns;
    }

    /** One for each line that can run backward: 1 while no air is in it. */
    List<Setting> seals() {
        return seals;
    }

    /** The lines that air enters at once when their pump stops. */
    List<Plumbing.AiredLine> airedLines() {
        return airedLines;
    }

    private void returnLine(Plan plan, ReturnLine line) {
        Body display = waters.display();
        Body refugium = waters.refugium();
        Body last = waters.last();
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
            waters.builder().add(new ReturnPump(last, branch, outlets, lift, intake, pumpRuns));
        }
        Setting sealed = waters.builder().setting("return line sealed", 1);
        seals.add(sealed);
        Parameter empties = waters.builder()
                .parameter(
                        "time in which the return pipe runs empty",
                        "s",
                        3,
                        1,
                        6,
                        Basis.FROM_MEMORY,
                        "free fall through a few bends");
        Body pipe = waters.place(
                waters.builder().body("return pipe"),
                Place.HELD_BACK,
                Laws.bare(line.pipe()).contents());
        waters.builder().add(new RunBack(pipe, last, sealed, empties));
        waters.builder().add(new Refill(last, pipe, Laws.bare(line.pipe()).contents(), intake, pumpRuns, empties));
        boolean held = assumptions.checkValveWorks() && line.checkValve() != ReturnLine.CheckValve.NONE;
        if (!held) {
            waters.builder()
                    .add(backSiphon(
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
                            waters.water().viscosity());
                }
                return table.to(outlet, first, second);
            }
        };
    }

    private void refugium(Refugium refugium, Body body) {
        Parameter coefficient = waters.builder()
                .parameter(
                        "flow over the refugium's crest, factor",
                        "1",
                        1,
                        0.85,
                        1.15,
                        Basis.FROM_MEMORY,
                        "weir laws (Francis 1883, ISO 1438) below the heads they are calibrated for");
        double crest = body.bottomHeight() + refugium.crest().in("m");
        waters.builder()
                .add(new OverflowWeir(
                        body, waters.section(refugium.into()), crest, Laws.refugiumWeir(refugium), coefficient));
        Setting sealed = waters.builder().setting("refugium feed sealed", 1);
        seals.add(sealed);
        waters.builder()
                .add(backSiphon(
                        "refugium feed",
                        body,
                        waters.last(),
                        List.of(refugium.outlet()),
                        Laws.backSiphon(refugium.feed()),
                        sealed,
                        fadeTime("refugium feed")));
    }

    private Parameter fadeTime(String line) {
        return waters.builder()
                .parameter(
                        "time an air hole takes to stop the " + line,
                        "s",
                        Plumbing.AIR_HOLE_TIME,
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
        Setting fadeStart = waters.builder().setting(name + " air hole free since", Double.POSITIVE_INFINITY);
        if (mouthThere >= waters.levelOf(from)) {
            airedLines.add(new Plumbing.AiredLine(sealed, fadeStart, 0));
        } else if (deepestAir >= waters.levelOf(from)) {
            airedLines.add(new Plumbing.AiredLine(sealed, fadeStart, fadeTime.usual()));
        }
        return new BackSiphon(
                name,
                from,
                to,
                from.bottomHeight() + mouthThere,
                from.bottomHeight() + deepestAir,
                line,
                waters.water().viscosity(),
                pumpRuns,
                sealed,
                fadeTime,
                fadeStart);
    }
}
