package org.tidewright.numerics.field;

import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * A field with a mean of zero that was measured at some places (kriging, Gaussian process regression).
 *
 * <p>Rasmussen and Williams 2006, Gaussian Processes for Machine Learning: predictions are their equations 2.25 and 2.26,
 * what is expected of a point that is left out their 5.12, the likelihood their 2.30.
 */
public final class GaussianField {
    /** Share of a place's own variance below which its measurement cannot be told from exact. */
    private static final double ROUNDING = 1e-12;

    private final Covariance covariance;
    private final double[][] places;
    private final RealVector values;
    private final CholeskyDecomposition factor;
    private final RealMatrix inverse;
    private final RealVector weights;

    /** What to expect: mean and variance. */
    public record Expected(double mean, double variance) {
        public double deviation() {
            return Math.sqrt(variance);
        }
    }

    /**
     * A field and what was measured of it.
     *
     * @param places a row each; none leaves the field unknown
     * @param errors one standard error of each value, independent of each other
     */
    public GaussianField(Covariance covariance, double[][] places, double[] values, double[] errors) {
        if (places.length != values.length || places.length != errors.length) {
            throw new IllegalArgumentException(places.length + " places, " + values.length + " values and "
                    + errors.length + " errors do not belong together");
        }
        this.covariance = covariance;
        this.places = places.clone();
        this.values = new ArrayRealVector(values);
        int size = places.length;
        RealMatrix spread = MatrixUtils.createRealMatrix(Math.max(1, size), Math.max(1, size));
        spread.setEntry(0, 0, 1);
        for (int i = 0; i < size; i++) {
            for (int j = 0; j < i; j++) {
                double shared = covariance.of(places[i], places[j]);
                spread.setEntry(i, j, shared);
                spread.setEntry(j, i, shared);
            }
            double own = covariance.of(places[i], places[i]);
            spread.setEntry(i, i, own * (1 + ROUNDING) + errors[i] * errors[i]);
        }
        factor = new CholeskyDecomposition(spread, 1e-9, 0);
        inverse = factor.getSolver().getInverse();
        weights = size == 0 ? new ArrayRealVector(1) : factor.getSolver().solve(this.values);
    }

    /** What to expect at a place, the measurements known. */
    public Expected at(double[] place) {
        double before = covariance.of(place, place);
        if (places.length == 0) {
            return new Expected(0, before);
        }
        RealVector shared = new ArrayRealVector(places.length);
        for (int i = 0; i < places.length; i++) {
            shared.setEntry(i, covariance.of(place, places[i]));
        }
        double known = shared.dotProduct(inverse.operate(shared));
        return new Expected(shared.dotProduct(weights), Math.max(0, before - known));
    }

    /** The mean alone of what to expect at a place, which is quicker. */
    public double meanAt(double[] place) {
        double mean = 0;
        for (int i = 0; i < places.length; i++) {
            mean += weights.getEntry(i) * covariance.of(place, places[i]);
        }
        return mean;
    }

    /** What the others let expect of one of the measurements, its own error included. */
    public Expected without(int point) {
        double variance = 1 / inverse.getEntry(point, point);
        return new Expected(values.getEntry(point) - weights.getEntry(point) * variance, variance);
    }

    /** Logarithm of how likely the measurements are; comparable between covariances over the same measurements. */
    public double logLikelihood() {
        double half = 0;
        for (int i = 0; i < places.length; i++) {
            half += Math.log(factor.getL().getEntry(i, i));
        }
        double misfit = places.length == 0 ? 0 : values.dotProduct(weights);
        return -misfit / 2 - half - places.length / 2.0 * Math.log(2 * Math.PI);
    }
}
