package org.tidewright.numerics.optimum;

/**
 * The least value of a smooth function of a few variables whose slopes are known.
 *
 * <p>The inverse of the curvature is learnt from the slopes on the way: Broyden, Fletcher, Goldfarb and Shanno, as algorithm
 * 6.1 of Nocedal and Wright 2006, Numerical Optimization, with a step that is shortened until the function falls enough
 * (their equation 3.6a).
 */
public final class QuasiNewton {
    /** Share of what the slope promises that a step must bring. */
    private static final double ENOUGH = 1e-4;

    /** A step that is too long is cut to no less than this share at once. */
    private static final double SHORTEST = 0.1;

    private QuasiNewton() {}

    /** A function with its slopes. */
    @FunctionalInterface
    public interface Sloping {
        /**
         * Its value at a place.
         *
         * @param slopes to be filled in, one along each variable
         */
        double at(double[] place, double[] slopes);
    }

    /**
     * Where it came to.
     *
     * @param evaluations of the function
     * @param settled whether it stopped because no slope was left, and not for want of evaluations
     */
    public record Least(double[] place, double value, double[] slopes, int evaluations, boolean settled) {}

    /**
     * Goes down.
     *
     * @param reach of each variable: how far from the start it may well have to go; sets the first step
     * @param tolerance fall of the function that is not worth another step
     * @param most evaluations
     */
    public static Least minimise(Sloping function, double[] start, double[] reach, double tolerance, int most) {
        int size = start.length;
        double[] place = start.clone();
        double[] slopes = new double[size];
        double value = function.at(place, slopes);
        int evaluations = 1;
        double[][] inverse = new double[size][size];
        for (int i = 0; i < size; i++) {
            inverse[i][i] = reach[i] * reach[i];
        }
        while (true) {
            double[] step = new double[size];
            double promised = 0;
            for (int i = 0; i < size; i++) {
                for (int j = 0; j < size; j++) {
                    step[i] -= inverse[i][j] * slopes[j];
                }
                promised += step[i] * slopes[i];
            }
            if (-0.5 * promised <= tolerance) {
                return new Least(place, value, slopes, evaluations, true);
            }
            double share = 1;
            double[] next = new double[size];
            double[] nextSlopes = new double[size];
            double nextValue;
            while (true) {
                if (evaluations >= most) {
                    return new Least(place, value, slopes, evaluations, false);
                }
                for (int i = 0; i < size; i++) {
                    next[i] = place[i] + share * step[i];
                }
                nextValue = function.at(next, nextSlopes);
                evaluations++;
                double excess = nextValue - value - share * promised;
                if (excess <= (ENOUGH - 1) * share * promised) {
                    break;
                }
                // Where the parabola through both values and the slope is least, within reason.
                double shorter = -share * promised / (2 * excess);
                share *= Double.isNaN(shorter) ? SHORTEST : Math.max(SHORTEST, Math.min(0.5, shorter));
            }
            learn(inverse, place, next, slopes, nextSlopes);
            place = next;
            slopes = nextSlopes;
            value = nextValue;
        }
    }

    /**
     * Takes what a step showed of the curvature into its inverse, so that it stays positive.
     *
     * <pre>H ← (I - ρ s yᵀ) H (I - ρ y sᵀ) + ρ s sᵀ,   ρ = 1 / yᵀs,   s the step, y by how much the slopes changed</pre>
     */
    private static void learn(double[][] inverse, double[] from, double[] to, double[] before, double[] after) {
        int size = from.length;
        double[] step = new double[size];
        double[] change = new double[size];
        double curved = 0;
        for (int i = 0; i < size; i++) {
            step[i] = to[i] - from[i];
            change[i] = after[i] - before[i];
            curved += step[i] * change[i];
        }
        if (curved <= 0) {
            return;
        }
        double[] turned = new double[size];
        double weight = 0;
        for (int i = 0; i < size; i++) {
            for (int j = 0; j < size; j++) {
                turned[i] += inverse[i][j] * change[j];
            }
            weight += turned[i] * change[i];
        }
        for (int i = 0; i < size; i++) {
            for (int j = 0; j < size; j++) {
                inverse[i][j] += (1 + weight / curved) * step[i] * step[j] / curved
                        - (turned[i] * step[j] + step[i] * turned[j]) / curved;
            }
        }
    }
}
