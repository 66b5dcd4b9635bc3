package org.tidewright.twin.law.hydraulic;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * Losses at one place of a pipe that follow from its bores, as coefficients K: head lost = K v^2 / (2g). The pieces whose
 * K is a matter of measurement are catalogued in {@code org.tidewright.plan.model.Fitting}.
 */
public final class LocalLoss {
    /**
     * K of a pipe's end in a vessel, under water or in air: the speed head is lost.
     *
     * @source Borda and Carnot, exact for an even velocity
     */
    @Unit("1")
    public static final double EXIT = 1;

    private LocalLoss() {}

    /**
     * Loss of a nozzle that narrows the pipe at its end, exit included, on the pipe's speed.
     *
     * <pre>K = (d / d_n)^4</pre>
     *
     * @param bore d of the pipe
     * @param nozzleBore d_n
     * @source velocity head of the jet, without contraction (from memory)
     * @validity smooth, well-tapered nozzles
     * @checkvalue d / d_n = 2: 16
     */
    @Unit("1")
    public static double nozzle(@Unit("m") double bore, @Unit("m") double nozzleBore) {
        Bounds.positive(bore, "m", "bore of the pipe");
        if (!(nozzleBore > 0 && nozzleBore <= bore)) {
            throw Bounds.refusal(nozzleBore, "m", "bore of the nozzle", "more than 0 and no more than " + bore + " m");
        }
        double ratio = bore / nozzleBore;
        return ratio * ratio * ratio * ratio;
    }

    /**
     * Loss of two pieces of pipe joined with a step in bore, on the speed in the narrow one.
     *
     * <pre>widening: K = (1 - b^2)^2;   narrowing: K = 0.5 (1 - b^2);   b = narrow bore / wide bore</pre>
     *
     * @param firstBore in the direction of flow
     * @param secondBore in the direction of flow
     * @source widening: Borda and Carnot, exact for a sudden one; narrowing: handbook form from memory, Rennels and
     *     Hudson 2012 give up to 0.12 more
     */
    @Unit("1")
    public static double step(@Unit("m") double firstBore, @Unit("m") double secondBore) {
        Bounds.positive(firstBore, "m", "first bore");
        Bounds.positive(secondBore, "m", "second bore");
        double ratio = Math.min(firstBore, secondBore) / Math.max(firstBore, secondBore);
        double areaLost = 1 - ratio * ratio;
        return secondBore > firstBore ? areaLost * areaLost : 0.5 * areaLost;
    }

    /**
     * Length of straight pipe that would lose as much as a fitting.
     *
     * <pre>L_e = K d / f</pre>
     *
     * @param loss K
     * @param bore d
     * @param frictionFactor f
     * @source definition
     */
    @Unit("m")
    public static double equivalentLength(
            @Unit("1") double loss, @Unit("m") double bore, @Unit("1") double frictionFactor) {
        Bounds.notNegative(loss, "1", "loss coefficient");
        Bounds.positive(bore, "m", "bore");
        return loss * bore / Bounds.positive(frictionFactor, "1", "friction factor");
    }
}
