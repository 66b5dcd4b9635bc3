package org.tidewright.twin.tank;

import static java.util.Objects.requireNonNull;

import java.util.List;
import java.util.Map;
import org.tidewright.plan.model.Gear;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.source.Basis;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.law.hydraulic.FrancisWeir;
import org.tidewright.twin.mechanism.water.Baffle;
import org.tidewright.twin.mechanism.water.Refill;
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

    private static final String RESERVOIR = "top-off reservoir";

    private final Waters waters;
    private final OverflowPlumbing down;
    private final ReturnPlumbing up;
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
        waters = new Waters(plan);
        down = new OverflowPlumbing(requireNonNull(plan.overflow()), waters);
        baffles();
        up = new ReturnPlumbing(plan, waters, assumptions);
        gearRuns = waters.builder().setting("gear runs", 1);
        gear(plan);
        topOffRuns = waters.builder().setting("top-off has power", 1);
        topOff(plan);
        network = waters.builder().build();
    }

    // ── what a rehearsal needs ──

    public Network network() {
        return network;
    }

    public Water water() {
        return waters.water();
    }

    public Vessels vessels() {
        return waters.vessels();
    }

    public RunningState running() {
        return waters.running();
    }

    /** Every place that holds water, in the order a report lists them. */
    public Map<Body, Place> places() {
        return waters.places();
    }

    /** Switch of the return pump. */
    public Setting pumpRuns() {
        return up.pumpRuns();
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
        return down.drainsOpen();
    }

    /** One for each full siphon: 1 while no air is in it. */
    public List<Setting> primed() {
        return down.primed();
    }

    /** One for each line that can run backward: 1 while no air is in it. */
    public List<Setting> seals() {
        return up.seals();
    }

    /** The lines that air enters at once when their pump stops. */
    public List<AiredLine> airedLines() {
        return up.airedLines();
    }

    /** How long the top-off's pump takes to empty its reservoir; 0 without one. */
    public @Unit("s") double topOffRunTime() {
        return topOffRunTime;
    }

    /** Every body as it stands while all runs. */
    public State runningState() {
        return waters.runningState(network);
    }

    // ── assembly ──

    private void baffles() {
        List<Body> sections = waters.sections();
        for (int i = 0; i < sections.size() - 1; i++) {
            Vessels.Section section = waters.vessels().sections().get(i);
            double crest = section.vessel().bottomHeight() + section.baffleLevel();
            waters.builder()
                    .add(new Baffle(
                            sections.get(i),
                            sections.get(i + 1),
                            crest,
                            new FrancisWeir(section.vessel().width(), 0)));
        }
    }

    private void gear(Plan plan) {
        List<Gear> holding = plan.gear().stream()
                .filter(gear -> gear.holdsBack() != null && waters.isSection(gear.standsIn()))
                .toList();
        if (holding.isEmpty()) {
            return;
        }
        Parameter empties = waters.builder()
                .parameter(
                        "time in which a skimmer or reactor runs back",
                        "s",
                        20,
                        8,
                        60,
                        Basis.FROM_MEMORY,
                        "drains through its own pump");
        for (Gear gear : holding) {
            double full = requireNonNull(gear.holdsBack()).in("m^3");
            Body body = waters.place(waters.builder().body(gear.name()), Place.HELD_BACK, full);
            Body section = waters.section(gear.standsIn());
            waters.builder().add(new RunBack(body, section, gearRuns, empties));
            waters.builder().add(new Refill(section, body, full, 0.02, gearRuns, empties));
        }
    }

    private void topOff(Plan plan) {
        Body last = waters.last();
        if (plan.topOff() == null) {
            return;
        }
        Body reservoir = waters.place(
                waters.builder().body(RESERVOIR),
                Place.RESERVOIR,
                plan.topOff().reservoir().in("m^3"));
        topOffRunTime =
                plan.topOff().reservoir().in("m^3") / plan.topOff().pumpFlow().in("m^3/s");
        Setting calls = waters.builder().setting("top-off float hangs low", 0);
        waters.builder()
                .add(new TopOffPump(
                        reservoir,
                        last,
                        plan.topOff().pumpFlow().in("m^3/s"),
                        waters.levelOf(last),
                        topOffRuns,
                        calls));
    }
}
