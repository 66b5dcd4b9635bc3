package org.tidewright.numerics.filter;

import org.hipparchus.linear.RealMatrix;

/** Rounding makes a covariance lopsided; this sets it upright. */
final class Symmetry {
    private Symmetry() {}

    static RealMatrix of(RealMatrix matrix) {
        return matrix.add(matrix.transpose()).scalarMultiply(0.5);
    }
}
