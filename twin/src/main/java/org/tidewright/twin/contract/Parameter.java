package org.tidewright.twin.contract;

import org.tidewright.plan.source.Basis;
import org.tidewright.seawater.unit.Unit;

/**
 * A number a mechanism depends on that is not known exactly.
 *
 * @param index position among the network's parameters
 * @param name with the body or device it belongs to, unique in its network
 * @param unit coherent, as in {@link org.tidewright.seawater.unit.Unit}
 * @param usual middle of its distribution
 * @param low 5 of 100 draws lie below
 * @param high 95 of 100 draws lie below
 * @param basis ground it stands on
 * @param source the publication or practice, in words
 */
public record Parameter(
        int index,
        String name,
        String unit,
        @Unit("*") double usual,
        @Unit("*") double low,
        @Unit("*") double high,
        Basis basis,
        String source)
        implements Drawn {
    /** Standard normal quantile of 0.95: standard errors from the middle to where 95 of 100 lie below. */
    @Unit("1")
    public static final double NORMAL_95 = 1.6448536269514722;

    public Parameter {
        if (!(low <= usual && usual <= high)) {
            throw new IllegalArgumentException(
                    name + ": " + low + " ≤ " + usual + " ≤ " + high + " does not hold (" + unit + ")");
        }
    }

    @Override
    public double in(Draw draw) {
        return draw.value(this);
    }

    /**
     * The value at a standard normal deviate: log-normal on each side of the middle where all is positive, else normal
     * on each side, so that low and high are met at ±1.645. What cannot be negative is never below 0, and a share, a number
     * whose high end is at most 1, never above 1.
     */
    public @Unit("*") double at(@Unit("1") double deviate) {
        double end = deviate < 0 ? low : high;
        double share = Math.abs(deviate) / NORMAL_95;
        if (low < 0) {
            return usual + (end - usual) * share;
        }
        double value = low > 0 ? usual * Math.pow(end / usual, share) : Math.max(0, usual + (end - usual) * share);
        return unit.equals("1") && high <= 1 ? Math.min(1, value) : value;
    }
}
