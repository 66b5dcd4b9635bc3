package org.tidewright.numerics.filter;

/**
 * How a state moves from one time to a later one: x⁺ = F x + g + w, where w is normal with covariance Q.
 *
 * @param matrix F
 * @param input g, what is known to come or go
 * @param noise Q, of what is not known
 */
public record Passage(double[][] matrix, double[] input, double[][] noise) {
    /** Nothing moves. */
    static Passage none(int states) {
        double[][] identity = new double[states][states];
        for (int i = 0; i < states; i++) {
            identity[i][i] = 1;
        }
        return new Passage(identity, new double[states], new double[states][states]);
    }
}
