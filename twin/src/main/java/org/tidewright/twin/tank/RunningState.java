package org.tidewright.twin.tank;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tidewright.plan.model.Overflow;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.Refugium;
import org.tidewright.plan.model.ReturnLine;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.law.hydraulic.DrainMouth;
import org.tidewright.twin.law.hydraulic.FrancisWeir;
import org.tidewright.twin.law.hydraulic.Manifold;
import org.tidewright.twin.law.hydraulic.PumpCurve;
import org.tidewright.twin.law.hydraulic.TabulatedPump;
import org.tidewright.twin.law.hydraulic.Weir;

/**
 * Flows and levels while everything runs: the pump's curve meets its pipes, the overflow and the baffles carry what it
 * brings. Levels are above each vessel's inside bottom.
 *
 * @param displayFlow through the display
 * @param refugiumFlow through the refugium, 0 without one
 * @param displayLevel over the bottom of the display
 * @param crestHead water over the overflow's crest, 0 without one
 * @param boxLevel in the overflow box
 * @param sectionLevels of the sump's sections, in order
 * @param refugiumLevel in the refugium
 */
public record RunningState(
        @Unit("m^3/s") double displayFlow,
        @Unit("m^3/s") double refugiumFlow,
        @Unit("m") double displayLevel,
        @Unit("m") double crestHead,
        @Unit("m") double boxLevel,
        @Unit("m") double[] sectionLevels,
        @Unit("m") double refugiumLevel) {
    private static final int MOST_ROUNDS = 50;
    private static final double AGREED = 1e-9;

    /** The running state of a plan. */
    public static RunningState of(Plan plan, Vessels vessels, @Unit("m^2/s") double viscosity) {
        if (!plan.hasSump()) {
            double level = requireNonNull(plan.display().waterLevel()).in("m");
            return new RunningState(0, 0, level, 0, 0, new double[0], 0);
        }
        Overflow overflow = requireNonNull(plan.overflow());
        ReturnLine line = requireNonNull(plan.returnLine());
        double crest = overflow.crest().in("m");
        Weir weir = Laws.overflowWeir(overflow);
        PumpCurve pump = pump(line);
        double lastLevel = requireNonNull(requireNonNull(plan.sump())
                        .sections()
                        .get(plan.sump().sections().size() - 1)
                        .waterLevel())
                .in("m");
        double drawHeight = vessels.lastSection().vessel().bottomHeight() + lastLevel;
        Refugium refugium = plan.refugium();
        double displayLevel = crest;
        double refugiumLevel = refugium == null ? 0 : refugium.crest().in("m");
        double displayFlow = 0;
        double refugiumFlow = 0;
        // The head over the crest lifts the surface the pump works against by a few millimetres: settle the two.
        for (int round = 0; round < MOST_ROUNDS; round++) {
            List<Double> heads = new ArrayList<>();
            heads.add(vessels.display().bottomHeight() + Math.max(displayLevel, lowestMouth(line)) - drawHeight);
            if (refugium != null) {
                double mouth = refugium.outlet().lowerEdge().in("m");
                heads.add(requireNonNull(vessels.refugium()).bottomHeight()
                        + Math.max(refugiumLevel, mouth)
                        - drawHeight);
            }
            Manifold.Division division = Laws.manifold(plan, heads).divide(pump, viscosity);
            double before = displayFlow + refugiumFlow;
            displayFlow = division.branchFlows().get(0);
            displayLevel = crest + weir.head(displayFlow);
            if (refugium != null) {
                refugiumFlow = division.branchFlows().get(1);
                refugiumLevel =
                        refugium.crest().in("m") + Laws.refugiumWeir(refugium).head(refugiumFlow);
            }
            if (Math.abs(displayFlow + refugiumFlow - before) < AGREED * (displayFlow + refugiumFlow)) {
                break;
            }
        }
        return new RunningState(
                displayFlow,
                refugiumFlow,
                displayLevel,
                displayLevel - crest,
                boxLevel(overflow, displayFlow),
                sectionLevels(plan, vessels, displayFlow, refugiumFlow, lastLevel),
                refugiumLevel);
    }

    /** Levels of the sump's sections, in order, were the last one run at another level under the same flow. */
    @Unit("m")
    public double[] sectionLevelsAt(Plan plan, Vessels vessels, @Unit("m") double lastLevel) {
        return sectionLevels(plan, vessels, displayFlow, refugiumFlow, lastLevel);
    }

    static PumpCurve pump(ReturnLine line) {
        double[] flows = line.pump().curve().stream()
                .mapToDouble(point -> point.flow().in("m^3/s"))
                .toArray();
        double[] heads = line.pump().curve().stream()
                .mapToDouble(point -> point.head().in("m"))
                .toArray();
        PumpCurve curve = new TabulatedPump(flows, heads);
        return line.pump().speed() == null
                ? curve
                : curve.atSpeed(line.pump().speed().in("1"));
    }

    private static double lowestMouth(ReturnLine line) {
        return line.outlets().stream()
                .mapToDouble(outlet -> outlet.lowerEdge().in("m"))
                .min()
                .orElse(0);
    }

    /** Above the box's own bottom: the valve sets it for a siphon, the lip for a standpipe. */
    private static double boxLevel(Overflow overflow, double flow) {
        double bottom =
                overflow.box().bottom() == null ? 0 : overflow.box().bottom().in("m");
        if (overflow.box().runningLevel() != null) {
            return overflow.box().runningLevel().in("m") - bottom;
        }
        Overflow.Drain working = overflow.drains().get(0);
        double head = new DrainMouth(working.pipe().bore().in("m")).head(flow);
        return working.inlet().in("m") + head - bottom;
    }

    /** From the last section back: each stands at its baffle plus the head over it, or at its neighbour's level. */
    private static double[] sectionLevels(
            Plan plan, Vessels vessels, double displayFlow, double refugiumFlow, double lastLevel) {
        List<Vessels.Section> sections = vessels.sections();
        double[] levels = new double[sections.size()];
        levels[levels.length - 1] = lastLevel;
        for (int i = sections.size() - 2; i >= 0; i--) {
            double flow = (drainEntersBy(plan, vessels, i) ? displayFlow : 0)
                    + (refugiumEntersBy(plan, vessels, i) ? refugiumFlow : 0);
            Weir baffle = new FrancisWeir(sections.get(i).vessel().width(), 0);
            levels[i] = Math.max(sections.get(i).baffleLevel() + baffle.head(flow), levels[i + 1]);
        }
        return levels;
    }

    private static boolean drainEntersBy(Plan plan, Vessels vessels, int section) {
        String into = requireNonNull(plan.overflow()).drains().get(0).into();
        return into == null || vessels.sections().indexOf(vessels.section(into)) <= section;
    }

    private static boolean refugiumEntersBy(Plan plan, Vessels vessels, int section) {
        @Nullable Refugium refugium = plan.refugium();
        return refugium != null && vessels.sections().indexOf(vessels.section(refugium.into())) <= section;
    }
}
