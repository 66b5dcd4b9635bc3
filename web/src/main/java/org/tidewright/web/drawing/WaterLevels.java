package org.tidewright.web.drawing;

import org.jspecify.annotations.Nullable;
import org.tidewright.plan.model.Plan;
import org.tidewright.twin.rehearsal.WaterMovement;
import org.tidewright.twin.rehearsal.WaterMovement.Vessel;

/** One moment of a run, as the drawing asks for it: levels in millimetres. */
record WaterLevels(Plan plan, WaterMovement run, int sample) {
    /** Water less than this on the floor is not drawn, m³. */
    static final double PUDDLE = 0.05e-3;

    /** A share of what pipes and gear hold at the start, below which they are drawn empty. */
    static final double EMPTY = 0.3;

    /** Height of a surface above its vessel's bottom, mm; NaN where there is none. */
    double level(String key) {
        Vessel vessel = WaterKeys.vessel(run, plan, key);
        return vessel == null ? Double.NaN : 1000 * vessel.level()[sample];
    }

    /** The same while all ran. */
    double running(String key) {
        Vessel vessel = WaterKeys.vessel(run, plan, key);
        return vessel == null ? Double.NaN : 1000 * vessel.level()[0];
    }

    double flow(String key) {
        double flow = WaterKeys.flow(run, plan, key, sample);
        return Math.abs(flow) < 2e-6 ? 0 : flow;
    }

    /** Whether a pipe still holds water. */
    boolean isFull(String key) {
        boolean emptiesAtOnce = key.startsWith("drain-") || key.equals(PipeRoutes.REFUGIUM_OVERFLOW);
        return flow(key) != 0 || (!emptiesAtOnce && heldBack() > EMPTY);
    }

    private double heldBack() {
        Vessel held = WaterKeys.vessel(run, plan, WaterKeys.HELD_BACK);
        return held == null || held.volume()[0] <= 0 ? 1 : held.volume()[sample] / held.volume()[0];
    }

    /** How full the top-off reservoir is; nearly, where the run does not say. */
    double reservoirShare() {
        Vessel reservoir = WaterKeys.vessel(run, plan, WaterKeys.RESERVOIR);
        if (reservoir == null || plan.topOff() == null) {
            return 0.85;
        }
        double whole = plan.topOff().reservoir().in("m^3");
        return whole <= 0 ? 0 : Math.min(1, reservoir.volume()[sample] / whole);
    }

    /** Water on the floor, m³. */
    double onFloor() {
        @Nullable Vessel floor = WaterKeys.vessel(run, plan, WaterKeys.FLOOR);
        return floor == null ? 0 : floor.volume()[sample];
    }

    boolean floorIsWet() {
        return onFloor() > PUDDLE;
    }
}
