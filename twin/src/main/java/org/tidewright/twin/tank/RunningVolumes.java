package org.tidewright.twin.tank;

import java.util.Map;
import org.tidewright.plan.model.Plan;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.run.State;

/** How much water stands where while everything runs, in the basins of a plan. */
public final class RunningVolumes {
    private RunningVolumes() {}

    /** Display with its box, sump with pipes and gear that drain into it, refugium. */
    public static Basins.Volumes of(Plan plan) {
        if (!plan.hasSump()) {
            Vessels vessels = Vessels.of(plan);
            RunningState running = RunningState.of(plan, vessels, Water.of(plan).viscosity());
            return new Basins.Volumes(vessels.display().shape().volume(running.displayLevel()), 0, 0);
        }
        Plumbing plumbing = Plumbing.of(plan, new Plumbing.Assumptions(true, false));
        return gathered(plumbing.places(), plumbing.runningState());
    }

    /** The water of a plumbing's bodies, gathered into the basins of its plan. */
    public static Basins.Volumes gathered(Map<Body, Place> places, State state) {
        double display = 0;
        double sump = 0;
        double refugium = 0;
        for (Map.Entry<Body, Place> entry : places.entrySet()) {
            double volume = state.get(entry.getKey(), Stock.WATER);
            switch (entry.getValue()) {
                case DISPLAY, OVERFLOW_BOX -> display += volume;
                case SUMP_SECTION, HELD_BACK -> sump += volume;
                case REFUGIUM -> refugium += volume;
                case RESERVOIR, FLOOR -> {
                    // Neither is part of the system's water.
                }
            }
        }
        return new Basins.Volumes(display, sump, refugium);
    }
}
