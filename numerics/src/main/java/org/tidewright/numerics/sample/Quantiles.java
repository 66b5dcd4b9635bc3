package org.tidewright.numerics.sample;

import java.util.Arrays;

/**
 * Quantiles of a sample, sorted once.
 *
 * <p>Type 8 of Hyndman and Fan 1996, The American Statistician 50, 361-365, the one they recommend: about median-unbiased
 * whatever the distribution.
 *
 * <pre>Q(p) = x[j] + g (x[j+1] - x[j]),  j + g = n p + (p + 1)/3,  x[j] the j-th smallest, held within 1 to n</pre>
 *
 * <p>A value of positive infinity stands for "never": a quantile that reaches into those is infinite too.
 */
public final class Quantiles {
    /** A position this little past a whole number is that number, or rounding would reach into a "never" beside it. */
    private static final double ROUNDING = 4 * Math.ulp(1.0);

    private final double[] sorted;

    private Quantiles(double[] sorted) {
        this.sorted = sorted;
    }

    /**
     * Sorts a copy of the values.
     *
     * @param values at least one; finite, or positive infinity for "never"
     */
    public static Quantiles of(double[] values) {
        if (values.length == 0) {
            throw new IllegalArgumentException("There is no quantile of no values");
        }
        for (int i = 0; i < values.length; i++) {
            if (!(values[i] > Double.NEGATIVE_INFINITY)) {
                throw new IllegalArgumentException(
                        "Value " + i + " is " + values[i] + "; it must be finite, or positive infinity for never");
            }
        }
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return new Quantiles(sorted);
    }

    /**
     * One quantile of an array; for several of the same array sort once with {@link #of}.
     *
     * @param values at least one; finite, or positive infinity for "never"
     * @param probability from 0 to 1
     */
    public static double quantile(double[] values, double probability) {
        return of(values).at(probability);
    }

    /**
     * The quantile at a probability.
     *
     * @param probability from 0, the smallest value, to 1, the largest
     * @return positive infinity when it reaches into the values that stand for "never"
     */
    public double at(double probability) {
        if (!(probability >= 0 && probability <= 1)) {
            throw new IllegalArgumentException("Probability is " + probability + "; it must lie in 0 to 1");
        }
        int n = sorted.length;
        double position = n * probability + (probability + 1) / 3;
        double whole = Math.floor(position);
        double part = position - whole;
        double lower = value((int) whole);
        if (part <= ROUNDING * n) {
            return lower;
        }
        double upper = value((int) whole + 1);
        return lower == upper ? lower : lower + part * (upper - lower);
    }

    /** Number of values. */
    public int count() {
        return sorted.length;
    }

    private double value(int rank) {
        return sorted[Math.min(Math.max(rank, 1), sorted.length) - 1];
    }
}
