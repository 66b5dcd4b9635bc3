package org.tidewright.husbandry.water;

import java.util.List;
import org.tidewright.plan.model.Names;
import org.tidewright.plan.model.Plan;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.rehearsal.PowerCut;
import org.tidewright.twin.rehearsal.WaterMovement;
import org.tidewright.twin.tank.Place;
import org.tidewright.twin.tank.Plumbing;
import org.tidewright.twin.tank.RunningHeat;
import org.tidewright.twin.tank.RunningState;
import org.tidewright.twin.tank.Vessels;
import org.tidewright.twin.tank.Water;

/** A plan's water while everything runs. */
public final class SystemWater {
    private static final double PURE_WATER = 1000; // kg/m^3, a thousandth off at 20 °C

    private SystemWater() {}

    /** Levels and flows, as a movement of one sample. */
    public static WaterMovement running(Plan plan) {
        if (plan.hasSump()) {
            return new PowerCut(plan, new Plumbing.Assumptions(true, false)).running();
        }
        Vessels vessels = Vessels.of(plan);
        double level =
                RunningState.of(plan, vessels, Water.of(plan).viscosity()).displayLevel();
        WaterMovement.Vessel display =
                new WaterMovement.Vessel(Names.DISPLAY, Place.DISPLAY, new double[] {level}, new double[] {
                    vessels.display().shape().volume(level)
                });
        return new WaterMovement(new double[] {0}, List.of(display), List.of());
    }

    /** All the water that circulates: vessels, pipes and gear, without the top-off's reservoir. */
    public static @Unit("m^3") double volume(Plan plan) {
        return running(plan).vessels().stream()
                .filter(vessel -> vessel.place() != Place.RESERVOIR && vessel.place() != Place.FLOOR)
                .mapToDouble(vessel -> vessel.volume()[0])
                .sum();
    }

    /** Pure water that evaporates from a plan's open surfaces while everything runs, in its usual room. */
    public static @Unit("m^3/s") double evaporation(Plan plan) {
        return RunningHeat.of(plan)
                        .evaporation(
                                plan.water().temperature().in("degC"),
                                plan.room().temperature().in("degC"),
                                plan.room().humidity().in("1"))
                / PURE_WATER;
    }
}
