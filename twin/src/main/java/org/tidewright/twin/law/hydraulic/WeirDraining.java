package org.tidewright.twin.law.hydraulic;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * A basin of constant area that nothing feeds, draining over a weir with Q = C h^1.5.
 *
 * <pre>dh/dt = -k h^1.5,  k = C/A:   h(t) = (h0^(-1/2) + k t/2)^(-2)</pre>
 *
 * <p>The tail is slow: head falls as 1/t^2, so the film is taken to stop at {@link Weir#FILM_HEAD}.
 *
 * @param surface A, free surface of the basin
 * @param weirFactor C, flow at one metre of head by the law Q = C h^1.5
 * @source separation of variables (closed form)
 * @checkvalue A = 0.675 m^2, C = (2/3) 0.59 sqrt(2g) 0.198 m: from 15.94 mm to 1 mm in 92.78 s
 */
public record WeirDraining(
        @Unit("m^2") double surface, @Unit("m^1.5/s") double weirFactor) {
    public WeirDraining {
        Bounds.positive(surface, "m^2", "free surface of the basin");
        Bounds.positive(weirFactor, "m^1.5/s", "flow of the weir at 1 m of head");
    }

    /** Over the slots of a comb, while the water is no higher than its teeth. */
    public static WeirDraining over(CombWeir comb, @Unit("m^2") double surface) {
        double depth = comb.slotDepth();
        return new WeirDraining(surface, comb.brimfulFlow() / (depth * Math.sqrt(depth)));
    }

    /** Head after a time. */
    @Unit("m")
    public double headAfter(@Unit("s") double time, @Unit("m") double firstHead) {
        Bounds.notNegative(time, "s", "time");
        Bounds.positive(firstHead, "m", "first head");
        double inverseRoot = 1 / Math.sqrt(firstHead) + weirFactor / surface * time / 2;
        return 1 / (inverseRoot * inverseRoot);
    }

    /** Time for the head to fall from one value to a lower one. */
    @Unit("s")
    public double timeBetween(@Unit("m") double firstHead, @Unit("m") double lastHead) {
        Bounds.positive(lastHead, "m", "last head");
        if (!(firstHead >= lastHead)) {
            throw Bounds.refusal(firstHead, "m", "first head", "no less than the last head, " + lastHead + " m");
        }
        return 2 * surface / weirFactor * (1 / Math.sqrt(lastHead) - 1 / Math.sqrt(firstHead));
    }

    /** Time constant of a small change about a running head: A / (dQ/dh). */
    @Unit("s")
    public double timeConstant(@Unit("m") double runningHead) {
        Bounds.positive(runningHead, "m", "running head");
        return surface / (1.5 * weirFactor * Math.sqrt(runningHead));
    }
}
