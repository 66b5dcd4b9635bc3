package org.tidewright.numerics.ode;

import static org.tidewright.numerics.ode.Tableau.*;

/**
 * One trial step of Dormand and Prince's pair: seven slopes, the result and its error.
 *
 * <pre>
 * y_new = y + h (b1 k1 + b3 k3 + b4 k4 + b5 k5 + b6 k6)
 * error = h (e1 k1 + e3 k3 + e4 k4 + e5 k5 + e6 k6 + e7 k7)
 * </pre>
 */
final class ExplicitTrial extends Trial {
    private static final int LAST = 6;

    private final DenseOutput output;

    ExplicitTrial(Equations equations, Tolerance tolerance) {
        super(equations, tolerance, LAST + 1);
        output = new DenseOutput(this);
    }

    @Override
    StepOutput output() {
        return output;
    }

    @Override
    int errorOrder() {
        return 5;
    }

    /** From the polynomial of {@link DenseOutput}, which is linear in the slopes; at the end of the step, b. */
    @Override
    void weights(double share, double length, double[] weights) {
        double rest = 1 - share;
        for (int i = 0; i <= LAST; i++) {
            double first = i == 0 ? 1 : 0;
            double last = i == LAST ? 1 : 0;
            double bend = first - B[i];
            double inner = B[i] - last - bend + rest * D[i];
            weights[i] = length * share * (B[i] + rest * (bend + share * inner));
        }
    }

    @Override
    double attempt(double from, double to, double[] y) {
        double[] k1 = slopes[0];
        double[] k2 = slopes[1];
        double[] k3 = slopes[2];
        double[] k4 = slopes[3];
        double[] k5 = slopes[4];
        double[] k6 = slopes[5];
        double[] k7 = slopes[LAST];
        double h = to - from;
        for (int i = 0; i < size; i++) {
            stage[i] = y[i] + h * (A21 * k1[i]);
        }
        if (!slope(1, from + C2 * h, stage, h)) {
            return Double.POSITIVE_INFINITY;
        }
        for (int i = 0; i < size; i++) {
            stage[i] = y[i] + h * (A31 * k1[i] + A32 * k2[i]);
        }
        if (!slope(2, from + C3 * h, stage, h)) {
            return Double.POSITIVE_INFINITY;
        }
        for (int i = 0; i < size; i++) {
            stage[i] = y[i] + h * (A41 * k1[i] + A42 * k2[i] + A43 * k3[i]);
        }
        if (!slope(3, from + C4 * h, stage, h)) {
            return Double.POSITIVE_INFINITY;
        }
        for (int i = 0; i < size; i++) {
            stage[i] = y[i] + h * (A51 * k1[i] + A52 * k2[i] + A53 * k3[i] + A54 * k4[i]);
        }
        if (!slope(4, from + C5 * h, stage, h)) {
            return Double.POSITIVE_INFINITY;
        }
        for (int i = 0; i < size; i++) {
            stage[i] = y[i] + h * (A61 * k1[i] + A62 * k2[i] + A63 * k3[i] + A64 * k4[i] + A65 * k5[i]);
        }
        if (!slope(5, to, stage, h)) {
            return Double.POSITIVE_INFINITY;
        }
        for (int i = 0; i < size; i++) {
            stage[i] = h * (B1 * k1[i] + B3 * k3[i] + B4 * k4[i] + B5 * k5[i] + B6 * k6[i]);
        }
        moveBy(stage, y);
        if (!slope(LAST, to, result, h)) {
            return Double.POSITIVE_INFINITY;
        }
        for (int i = 0; i < size; i++) {
            error[i] = h * (E1 * k1[i] + E3 * k3[i] + E4 * k4[i] + E5 * k5[i] + E6 * k6[i] + E7 * k7[i]);
        }
        return errorNorm(y);
    }
}
