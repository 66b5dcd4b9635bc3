package org.tidewright.numerics.filter;

/**
 * The surprise of a measurement: its distance from what was to be expected, and the variance that distance should have.
 *
 * @param value measured less expected
 * @param variance of the state and of the measurement together
 */
public record Innovation(double value, double variance) {
    private static final double LOG_2_PI = Math.log(2 * Math.PI);

    /** In standard errors. */
    public double score() {
        return value / Math.sqrt(variance);
    }

    /** Logarithm of the density that the measurement had beforehand. */
    public double logLikelihood() {
        return -0.5 * (LOG_2_PI + Math.log(variance) + value * value / variance);
    }
}
