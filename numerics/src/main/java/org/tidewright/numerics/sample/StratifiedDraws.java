package org.tidewright.numerics.sample;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * An ensemble of n draws in which each name has exactly one value in each of n equal strata of its distribution, in an
 * order of its own: Latin hypercube sampling (McKay, Beckman and Conover 1979, Technometrics 21, 239-245). Quantiles of
 * results settle with fewer draws than independent ones need.
 *
 * <p>A value depends on seed, n, draw and name only: a name added later leaves the others as they were. Uniform and
 * normal of one name are the same draw in two coats. Safe to share between threads.
 */
public final class StratifiedDraws {
    /** So many strata leave each value 28 bits of its own within its stratum, and the division exact enough. */
    private static final int MOST_DRAWS = 1 << 20;

    private static final int BITS_WITHIN_STRATUM = 28;
    private static final long ORDER = -1;

    private final long seed;
    private final int count;
    private final Map<String, int[]> strata = new ConcurrentHashMap<>();

    /**
     * An ensemble.
     *
     * @param seed any number
     * @param count number of draws, from 1 to 1 048 576
     */
    public StratifiedDraws(long seed, int count) {
        if (count < 1 || count > MOST_DRAWS) {
            throw new IllegalArgumentException("Number of draws is " + count + "; it must lie in 1 to " + MOST_DRAWS);
        }
        this.seed = seed;
        this.count = count;
    }

    /** Number of draws. */
    public int count() {
        return count;
    }

    /**
     * A value in (0, 1): over all draws, one in each interval from k/n to (k+1)/n.
     *
     * @param name of the quantity
     * @param draw from 0 to below {@link #count()}
     */
    public double uniform(String name, int draw) {
        if (draw < 0 || draw >= count) {
            throw new IllegalArgumentException("Draw is " + draw + "; it must lie in 0 to " + (count - 1));
        }
        int stratum = strata.computeIfAbsent(name, this::order)[draw];
        return (stratum + Bits.fraction(Bits.of(seed, draw, name), BITS_WITHIN_STRATUM)) / count;
    }

    /**
     * A standard normal value, stratified likewise.
     *
     * @param name of the quantity
     * @param draw from 0 to below {@link #count()}
     */
    public double normal(String name, int draw) {
        return StandardNormal.quantile(uniform(name, draw));
    }

    /** Which stratum each draw takes: a shuffle (Durstenfeld 1964, CACM 7, 420) by the name's own bits. */
    private int[] order(String name) {
        int[] order = new int[count];
        long source = Bits.of(seed, ORDER, name);
        for (int i = 0; i < count; i++) {
            int j = (int) (((Bits.sequence(source, i) >>> 32) * (i + 1)) >>> 32);
            order[i] = order[j];
            order[j] = i;
        }
        return order;
    }
}
