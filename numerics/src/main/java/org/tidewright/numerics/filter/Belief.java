package org.tidewright.numerics.filter;

/**
 * What is known of a state: normally distributed about a mean.
 *
 * @param mean one value per state
 * @param covariance symmetric, of as many rows and columns
 */
public record Belief(double[] mean, double[][] covariance) {
    public Belief {
        int size = mean.length;
        for (double[] row : covariance) {
            if (covariance.length != size || row.length != size) {
                throw new IllegalArgumentException("a covariance of " + covariance.length + " by " + row.length
                        + " does not fit " + size + " states");
            }
        }
    }

    /** States known apart from each other, each to its standard error. */
    public static Belief independent(double[] mean, double[] standardErrors) {
        if (mean.length != standardErrors.length) {
            throw new IllegalArgumentException(
                    mean.length + " states cannot have " + standardErrors.length + " standard errors");
        }
        double[][] covariance = new double[mean.length][mean.length];
        for (int i = 0; i < mean.length; i++) {
            covariance[i][i] = standardErrors[i] * standardErrors[i];
        }
        return new Belief(mean, covariance);
    }

    public double mean(int state) {
        return mean[state];
    }

    public double standardError(int state) {
        return Math.sqrt(Math.max(0, covariance[state][state]));
    }

    /** Mean of a sum of states, each times its number in the row. */
    public double mean(double[] row) {
        return Rows.dot(row, mean);
    }

    /** Standard error of such a sum. */
    public double standardError(double[] row) {
        return Math.sqrt(Math.max(0, Rows.quadratic(row, covariance)));
    }
}
