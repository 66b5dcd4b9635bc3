package org.tidewright.numerics.sample;

import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * How far one number rises with another over a sample, whatever the curve: the correlation of their ranks.
 *
 * <p>Spearman 1904, American Journal of Psychology 15, 72-101; equal values share the mean of their ranks.
 *
 * <pre>r = sum (u - m)(v - m) / sqrt(sum (u - m)^2 sum (v - m)^2),  m = (n + 1)/2</pre>
 */
public final class RankCorrelation {
    private RankCorrelation() {}

    /**
     * The correlation of two samples, value by value.
     *
     * @param first no NaN among them
     * @param second as many
     * @return from -1 to 1; 0 where one of them does not vary
     */
    public static double of(double[] first, double[] second) {
        if (first.length != second.length) {
            throw new IllegalArgumentException(
                    "There are " + first.length + " values on one side and " + second.length + " on the other");
        }
        double[] one = ranks(first);
        double[] other = ranks(second);
        double mean = (first.length + 1) / 2.0;
        double together = 0;
        double ofOne = 0;
        double ofOther = 0;
        for (int i = 0; i < one.length; i++) {
            together += (one[i] - mean) * (other[i] - mean);
            ofOne += (one[i] - mean) * (one[i] - mean);
            ofOther += (other[i] - mean) * (other[i] - mean);
        }
        return ofOne > 0 && ofOther > 0 ? together / Math.sqrt(ofOne * ofOther) : 0;
    }

    /** Rank of each value, 1 for the smallest; equal ones share the mean of theirs. */
    private static double[] ranks(double[] values) {
        int[] order = IntStream.range(0, values.length)
                .boxed()
                .sorted(Comparator.comparingDouble(i -> values[i]))
                .mapToInt(Integer::intValue)
                .toArray();
        double[] ranks = new double[values.length];
        int from = 0;
        while (from < order.length) {
            int to = from;
            while (to < order.length && values[order[to]] == values[order[from]]) {
                to++;
            }
            for (int i = from; i < to; i++) {
                ranks[order[i]] = (from + 1 + to) / 2.0;
            }
            from = to;
        }
        return ranks;
    }
}
