package org.tidewright.numerics.filter;

import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * What is known of a state: normally distributed about a mean.
 *
 * @param mean one value per state
 * @param covariance symmetric, of as many rows and columns
 */
public record Belief(RealVector mean, RealMatrix covariance) {
    public Belief {
        int size = mean.getDimension();
        if (covariance.getRowDimension() != size || covariance.getColumnDimension() != size) {
            throw new IllegalArgumentException("a covariance of " + covariance.getRowDimension() + " by "
                    + covariance.getColumnDimension() + " does not fit " + size + " states");
        }
    }

    /** States known apart from each other, each to its standard error. */
    public static Belief independent(double[] mean, double[] standardErrors) {
        if (mean.length != standardErrors.length) {
            throw new IllegalArgumentException(
                    mean.length + " states cannot have " + standardErrors.length + " standard errors");
        }
        double[] variances = new double[mean.length];
        for (int i = 0; i < variances.length; i++) {
            variances[i] = standardErrors[i] * standardErrors[i];
        }
        return new Belief(MatrixUtils.createRealVector(mean), MatrixUtils.createRealDiagonalMatrix(variances));
    }

    public double mean(int state) {
        return mean.getEntry(state);
    }

    public double standardError(int state) {
        return Math.sqrt(Math.max(0, covariance.getEntry(state, state)));
    }
}
