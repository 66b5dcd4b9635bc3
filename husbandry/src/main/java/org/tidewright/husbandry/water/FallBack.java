package org.tidewright.husbandry.water;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.plan.model.Overflow;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.Refugium;
import org.tidewright.plan.model.ReturnLine;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.law.hydraulic.DrainDown;
import org.tidewright.twin.law.hydraulic.ReturnOutlet;
import org.tidewright.twin.tank.Laws;
import org.tidewright.twin.tank.Plumbing;
import org.tidewright.twin.tank.RunningState;
import org.tidewright.twin.tank.Vessels;
import org.tidewright.twin.tank.Water;

/**
 * The most that can fall back into the sump, by geometry alone: no flow, no time. The twin's run must stay within it.
 *
 * @param display of the display and its overflow box, the return line and what gear lets go
 * @param refugium water above the refugium's crest, or above its feed's mouth where that draws deeper
 */
public record FallBack(DrainDown display, @Unit("m^3") double refugium) {

    /** The bound for a plan with a sump, the check valve counted as absent. */
    public static FallBack of(Plan plan, boolean airHolesClear) {
        Vessels vessels = Vessels.of(plan);
        RunningState running = RunningState.of(plan, vessels, Water.of(plan).viscosity());
        Overflow overflow = requireNonNull(plan.overflow());
        Vessels.Vessel box = requireNonNull(vessels.box());
        double crest = overflow.crest().in("m");
        double deepest = ReturnOutlet.deepest(
                requireNonNull(plan.returnLine()).outlets().stream()
                        .map(outlet -> outlet(outlet, crest))
                        .toList(),
                airHolesClear);
        // A mouth over the crest can draw only from the water that stands over it, which is counted already.
        double siphonDepth = Math.max(0, deepest + (airHolesClear ? drawnWhileHoleStops(plan, vessels, running) : 0));
        DrainDown display = DrainDown.of(
                vessels.display().shape().surface(running.displayLevel()),
                running.crestHead(),
                siphonDepth,
                box.shape().surface(running.boxLevel() / 2),
                running.boxLevel(),
                Math.min(running.boxLevel(), boxIntake(overflow, vessels)),
                pipes(plan, running),
                gear(plan));
        return new FallBack(display, refugium(plan, vessels, running, airHolesClear));
    }

    /** A hole takes seconds to let in enough air: how much deeper the line draws meanwhile, at most to its mouth. */
    private static @Unit("m") double drawnWhileHoleStops(Plan plan, Vessels vessels, RunningState running) {
        ReturnLine line = requireNonNull(plan.returnLine());
        double least = line.outlets().stream()
                .mapToDouble(outlet -> outlet.airHole() == null
                        ? 0
                        : outlet.airHole().height().in("m") - outlet.lowerEdge().in("m"))
                .min()
                .orElse(0);
        double drop = vessels.display().bottomHeight()
                + running.displayLevel()
                - vessels.lastSection().vessel().bottomHeight()
                - running.sectionLevels()[running.sectionLevels().length - 1];
        double flow =
                Laws.backSiphon(line).flow(Math.max(0, drop), Water.of(plan).viscosity());
        double area = vessels.display().shape().surface(running.displayLevel());
        return Math.min(least, flow * Plumbing.AIR_HOLE_TIME / 2 / area);
    }

    /** All of it. */
    public @Unit("m^3") double total() {
        return display.total() + refugium;
    }

    /** {@code At most 49 L can fall back: 13 L stand over the crest, …} */
    public Sentence told(String source) {
        List<Object> words = new ArrayList<>();
        words.add("At most ");
        words.add(Sentence.figure(Figure.exact(Measure.VOLUME, total()), source));
        words.add(" can fall back: ");
        part(words, display.overTheCrest(), " over the crest, ");
        part(words, display.siphon(), " through the return line, ");
        part(words, display.box(), " from the overflow box, ");
        part(words, refugium, " from the refugium, ");
        part(words, display.pipes(), " out of the pipes, ");
        part(words, display.gear(), " out of skimmer and reactors, ");
        String last = (String) words.remove(words.size() - 1);
        words.add(last.substring(0, last.length() - 2) + ".");
        return Sentence.of(words.toArray());
    }

    private static void part(List<Object> words, double volume, String from) {
        if (volume > 1e-5) {
            words.add(Figure.exact(Measure.VOLUME, volume));
            words.add(from);
        }
    }

    private static ReturnOutlet outlet(ReturnLine.Outlet outlet, double crest) {
        double depth = crest - outlet.lowerEdge().in("m");
        return new ReturnOutlet(
                depth,
                outlet.airHole() == null
                        ? OptionalDouble.empty()
                        : OptionalDouble.of(crest - outlet.airHole().height().in("m")));
    }

    /** Lowest mouth of the drains above the box's own bottom. */
    private static double boxIntake(Overflow overflow, Vessels vessels) {
        double bottom =
                requireNonNull(vessels.box()).bottomHeight() - vessels.display().bottomHeight();
        double lowest = overflow.drains().stream()
                .mapToDouble(drain -> drain.inlet().in("m"))
                .min()
                .orElseThrow();
        return Math.max(0, lowest - bottom);
    }

    private static double pipes(Plan plan, RunningState running) {
        double sum = Laws.bare(requireNonNull(plan.returnLine()).pipe()).contents();
        Overflow.Drain working = requireNonNull(plan.overflow()).drains().get(0);
        if (working.kind() == Overflow.DrainKind.SIPHON && running.displayFlow() > 0) {
            sum += Laws.bare(working.pipe()).contents();
        }
        return sum;
    }

    private static double gear(Plan plan) {
        return plan.gear().stream()
                .mapToDouble(
                        gear -> gear.holdsBack() == null ? 0 : gear.holdsBack().in("m^3"))
                .sum();
    }

    private static double refugium(Plan plan, Vessels vessels, RunningState running, boolean airHolesClear) {
        Refugium refugium = plan.refugium();
        if (refugium == null) {
            return 0;
        }
        boolean hole = airHolesClear && refugium.outlet().airHole() != null;
        double mouth = hole
                ? requireNonNull(refugium.outlet().airHole()).height().in("m")
                : refugium.outlet().lowerEdge().in("m");
        double lowest = Math.min(refugium.crest().in("m"), mouth);
        Vessels.Vessel vessel = requireNonNull(vessels.refugium());
        return vessel.shape().volume(running.refugiumLevel()) - vessel.shape().volume(lowest);
    }
}
