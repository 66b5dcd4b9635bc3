package org.tidewright.numerics.filter;

/**
 * One number measured: z = h · x + e, where e is normal.
 *
 * @param value z
 * @param row h
 * @param variance of e, 0 or more
 */
public record Measurement(double value, double[] row, double variance) {
    public Measurement {
        if (!Double.isFinite(value) || !(variance >= 0 && variance < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("a measurement of " + value + " with a variance of " + variance
                    + " says nothing; it needs a number and a variance of 0 or more");
        }
    }
}
