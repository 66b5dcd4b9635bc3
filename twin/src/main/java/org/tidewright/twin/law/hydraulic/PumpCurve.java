package org.tidewright.twin.law.hydraulic;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/** Head a running pump gives at a flow, falling from the shut-off head at no flow to none at the free flow. */
public interface PumpCurve {
    /** Head at a flow; the shut-off head for a flow of 0 or less, none beyond the free flow. */
    @Unit("m")
    double head(@Unit("m^3/s") double flow);

    /** Flow at a head: the free flow for a head of 0 or less, none at or above the shut-off head. */
    @Unit("m^3/s")
    double flow(@Unit("m") double head);

    /** Greatest head, at no flow. */
    @Unit("m")
    double shutOffHead();

    /** Greatest flow, at no head. */
    @Unit("m^3/s")
    double freeFlow();

    /**
     * The same pump at another speed.
     *
     * <pre>Q ~ n,  H ~ n^2:   H(Q, n) = n^2 H_1(Q/n)</pre>
     *
     * @param ratio n, speed as a share of the speed this curve is for; 0 is a pump that stands still
     * @source affinity laws of centrifugal pumps
     */
    default PumpCurve atSpeed(@Unit("1") double ratio) {
        Bounds.within(ratio, "1", 0, 2, "speed ratio");
        return new ScaledPump(this, ratio, ratio * ratio);
    }

    /**
     * The same pump with scale and snails in it: shut-off head and free flow both cut by a share.
     *
     * @param share lost, 0 for a clean pump
     * @source common practice: 10-30 % a year without cleaning
     */
    default PumpCurve worn(@Unit("1") double share) {
        Bounds.within(share, "1", 0, 1, "share lost to wear");
        return new ScaledPump(this, 1 - share, 1 - share);
    }

    /**
     * Least speed ratio that lifts a static head; below it the pump turns and nothing flows.
     *
     * <pre>n_min = sqrt(H_static / H_0)</pre>
     *
     * @source affinity laws
     */
    @Unit("1")
    default double leastSpeed(@Unit("m") double staticHead) {
        return Math.sqrt(Math.max(0, Bounds.finite(staticHead, "m", "static head")) / shutOffHead());
    }
}
