package org.tidewright.twin.rehearsal;

import java.util.List;
import org.tidewright.plan.model.Plan;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.mechanism.water.ReturnPump;
import org.tidewright.twin.mechanism.water.RimSpill;
import org.tidewright.twin.run.Accuracy;
import org.tidewright.twin.run.Occurrence;
import org.tidewright.twin.run.Run;
import org.tidewright.twin.run.State;
import org.tidewright.twin.tank.Plumbing;

/** What the water does in the minutes after the power goes, and after it comes back. */
public final class PowerCut {
    /** By then only a film still creeps. */
    private static final double SETTLED_AFTER = 600;

    private static final double RESTART_WATCHED = 900;

    private final Plumbing plumbing;

    /**
     * What happened.
     *
     * @param movement every level and flow in time
     * @param log events in order of time
     * @param end where the water stands in the end
     * @param conservationError water made or lost by the run, which rounding alone may cause
     */
    public record Result(
            WaterMovement movement,
            List<Occurrence> log,
            State end,
            @Unit("m^3") double conservationError) {
        /** When an event first happened, infinite if it did not. */
        public @Unit("s") double firstTime(String event) {
            return log.stream()
                    .filter(occurrence -> occurrence.event().equals(event))
                    .mapToDouble(Occurrence::time)
                    .findFirst()
                    .orElse(Double.POSITIVE_INFINITY);
        }

        /** Water that came on to the floor during the run. */
        public @Unit("m^3") double spilled() {
            double[] floor = movement.vessel(Plumbing.FLOOR).volume();
            return floor[floor.length - 1] - floor[0];
        }

        /** Whether the return pump drew air. */
        public boolean pumpDrewAir() {
            return Double.isFinite(firstTime(ReturnPump.DRAWS_AIR));
        }

        /** When a vessel first stood at its rim, infinite if it did not. */
        public @Unit("s") double overRim(String vessel) {
            return firstTime(RimSpill.event(vessel));
        }
    }

    public PowerCut(Plan plan, Plumbing.Assumptions assumptions) {
        plumbing = Plumbing.of(plan, assumptions);
    }

    public Plumbing plumbing() {
        return plumbing;
    }

    /** Everything stops at once and stays off. */
    public Result everythingStops() {
        State state = plumbing.runningState();
        Run run = new Run(plumbing.network(), plumbing.network().usualParameters(), state, Accuracy.OF_WATER_LEVELS);
        powerOff(run);
        return record(run, state, SETTLED_AFTER);
    }

    /**
     * The power comes back after the water has settled.
     *
     * @param siphonForms whether the full siphon purges its air and runs again, or keeps drawing air
     * @param end where {@link #everythingStops} left the water
     */
    public Result powerReturns(State end, boolean siphonForms) {
        State state = end.copy();
        double[] parameters = plumbing.network().usualParameters();
        if (!siphonForms) {
            plumbing.network().parameters().stream()
                    .filter(parameter -> parameter.name().equals(Plumbing.PURGE_TIME))
                    .forEach(parameter -> parameters[parameter.index()] = 1e9);
        }
        Run run = new Run(plumbing.network(), parameters, state, Accuracy.OF_WATER_LEVELS);
        // Air stands in the drains; the pump pushes it out of the return line at once.
        plumbing.primed().forEach(primed -> run.set(primed, 0));
        return record(run, state, RESTART_WATCHED);
    }

    /**
     * The drains stop and the pump goes on: a hung overflow has lost its siphon, or every drain is blocked.
     *
     * @param topOffRuns whether the top-off refills the sinking last section
     */
    public Result drainsStop(boolean topOffRuns) {
        State state = plumbing.runningState();
        Run run = new Run(plumbing.network(), plumbing.network().usualParameters(), state, Accuracy.OF_WATER_LEVELS);
        plumbing.drainsOpen().forEach(open -> run.set(open, 0));
        run.set(plumbing.topOffRuns(), topOffRuns ? 1 : 0);
        return record(run, state, RESTART_WATCHED + (topOffRuns ? plumbing.topOffRunTime() : 0));
    }

    /** The water while all runs, as a movement of one sample. */
    public WaterMovement running() {
        State state = plumbing.runningState();
        Run run = new Run(plumbing.network(), plumbing.network().usualParameters(), state, Accuracy.OF_WATER_LEVELS);
        Recorder recorder = new Recorder(plumbing, new double[1]);
        recorder.take(0, run.now());
        return recorder.movement();
    }

    private void powerOff(Run run) {
        for (Setting setting : List.of(plumbing.pumpRuns(), plumbing.gearRuns(), plumbing.topOffRuns())) {
            run.set(setting, 0);
        }
        for (Plumbing.AiredLine line : plumbing.airedLines()) {
            run.set(line.airSince(), run.time());
            run.setAt(run.time() + line.stopsAfter(), line.seal(), 0);
        }
    }

    private Result record(Run run, State state, double until) {
        double before = state.total(Stock.WATER);
        Recorder recorder = new Recorder(plumbing, sampleTimes(until));
        run.until(until, sampleTimes(until), recorder);
        return new Result(recorder.movement(), List.copyOf(run.log()), state, state.total(Stock.WATER) - before);
    }

    /** Every half second for two minutes, then ever more sparsely. */
    private static double[] sampleTimes(double until) {
        int fine = 241;
        int coarse = (int) Math.ceil((until - 120) / Math.max(10, (until - 120) / 100));
        double[] times = new double[fine + coarse];
        for (int i = 0; i < fine; i++) {
            times[i] = 0.5 * i;
        }
        for (int i = 1; i <= coarse; i++) {
            times[fine - 1 + i] = 120 + (until - 120) * i / coarse;
        }
        return times;
    }
}
