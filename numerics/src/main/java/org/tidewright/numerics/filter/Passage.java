package org.tidewright.numerics.filter;

import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * How a state moves from one time to a later one: x⁺ = F x + g + w, where w is normal with covariance Q.
 *
 * @param matrix F
 * @param input g, what is known to come or go
 * @param noise Q, of what is not known
 */
public record Passage(RealMatrix matrix, RealVector input, RealMatrix noise) {
    /** What is believed after it. */
    Belief carry(Belief before) {
        RealVector mean = matrix.operate(before.mean()).add(input);
        RealMatrix covariance =
                matrix.multiply(before.covariance()).multiplyTransposed(matrix).add(noise);
        return new Belief(mean, Symmetry.of(covariance));
    }
}
