package org.tidewright.numerics.filter;

import org.hipparchus.linear.RealVector;

/**
 * One number measured: z = h · x + e, where e is normal.
 *
 * @param value z
 * @param row h
 * @param variance of e, 0 or more
 */
public record Measurement(double value, RealVector row, double variance) {
    public Measurement {
        if (!Double.isFinite(value) || !(variance >= 0 && variance < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("a measurement of " + value + " with a variance of " + variance
                    + " says nothing; it needs a number and a variance of 0 or more");
        }
    }

    /** What was measured less what was to be expected. */
    Innovation against(Belief belief) {
        double expected = row.dotProduct(belief.mean());
        double spread = row.dotProduct(belief.covariance().operate(row)) + variance;
        return new Innovation(value - expected, spread);
    }
}
