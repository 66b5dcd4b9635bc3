package org.tidewright.twin.law.hydraulic;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Gravity;
import org.tidewright.seawater.unit.Unit;

/** A drain with its mouth under water and no air in it: a {@link PipeRun} whose valve sets the level. */
public final class FullSiphon {
    private FullSiphon() {}

    /**
     * Flow of the open siphon.
     *
     * <pre>Q = (pi/4) d^2 sqrt(2 g dz / (f L/d + sum K))</pre>
     *
     * @param drain with entry, fittings, valve and exit in its loss sum
     * @param drop dz, from the box's surface to the sump's (outlet under water) or to the outlet (free)
     * @param kinematicViscosity of the water
     * @return none for a drop of 0 or less
     * @source Darcy and Weisbach's equation
     * @checkvalue 25 mm, 1.2 m, sum K 3.5, drop 0.90 m, seawater of 25.5 degC: 3502 L/h
     */
    @Unit("m^3/s")
    public static double capacity(PipeRun drain, @Unit("m") double drop, @Unit("m^2/s") double kinematicViscosity) {
        return drop > 0 ? drain.flow(drop, kinematicViscosity) : Dry.noFlow(drop);
    }

    /**
     * Loss coefficient to add at the valve so that the siphon passes a given flow.
     *
     * <pre>K = 2 g dz / v^2 - f L/d - sum K</pre>
     *
     * @param drain with its valve open
     * @param drop dz as for {@link #capacity}
     * @param flow wanted, greater than 0
     * @param kinematicViscosity of the water
     * @return negative where even the open siphon passes less than that: no valve can help
     * @source Darcy and Weisbach's equation
     * @checkvalue as above throttled to 2500 L/h: 4.249
     */
    @Unit("1")
    public static double throttlingLoss(
            PipeRun drain,
            @Unit("m") double drop,
            @Unit("m^3/s") double flow,
            @Unit("m^2/s") double kinematicViscosity) {
        Bounds.positive(drop, "m", "drop");
        Bounds.positive(flow, "m^3/s", "flow wanted");
        double speed = drain.speed(flow);
        double all = 2 * Gravity.STANDARD * drop / (speed * speed);
        return all - drain.lossCoefficient(speed, kinematicViscosity);
    }

    /**
     * Rise of the box's level that makes up for a small mismatch between what arrives and what the valve was set for.
     *
     * <pre>dh = 2 dz dQ/Q</pre>
     *
     * <p>Large, hence the second, trickling drain.
     *
     * @param drop dz
     * @param mismatch dQ/Q
     * @source derivative of {@link #capacity} at constant loss
     * @checkvalue 1 % at 0.90 m: 18 mm
     */
    @Unit("m")
    public static double levelShift(@Unit("m") double drop, @Unit("1") double mismatch) {
        return 2 * Bounds.notNegative(drop, "m", "drop") * Bounds.finite(mismatch, "1", "mismatch of flow");
    }
}
