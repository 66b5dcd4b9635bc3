package org.tidewright.numerics.ode;

import static org.tidewright.numerics.ode.Tableau.*;

import java.util.Arrays;

/**
 * One trial step: the seven slopes, the result and its error.
 *
 * <pre>
 * y_new = y + h (b1 k1 + b3 k3 + b4 k4 + b5 k5 + b6 k6)
 * error = h (e1 k1 + e3 k3 + e4 k4 + e5 k5 + e6 k6 + e7 k7)
 * </pre>
 *
 * <p>Every update is a sum of slopes, so what the right-hand side conserves linearly the step conserves. The rounding
 * of y + ... is carried from step to step and given back (compensated summation: Møller 1965, BIT 5, 37-50; the error of
 * a sum by Knuth, The Art of Computer Programming 2, section 4.2.2), or a total would wander over the many steps of a
 * long run.
 */
final class Stages implements Trial {
    private static final int LAST = 6;

    private final Equations equations;
    private final Tolerance tolerance;
    private final int size;

    double[] k1;
    final double[] k2;
    final double[] k3;
    final double[] k4;
    final double[] k5;
    final double[] k6;
    double[] k7;
    /** The result of the trial. */
    final double[] result;

    private final double[] stage;
    private final double[] error;
    private double[] carry;
    private double[] carryAfter;
    private final DenseOutput output;

    Stages(Equations equations, Tolerance tolerance) {
        this.equations = equations;
        this.tolerance = tolerance;
        size = equations.size();
        k1 = new double[size];
        k2 = new double[size];
        k3 = new double[size];
        k4 = new double[size];
        k5 = new double[size];
        k6 = new double[size];
        k7 = new double[size];
        result = new double[size];
        stage = new double[size];
        error = new double[size];
        carry = new double[size];
        carryAfter = new double[size];
        output = new DenseOutput(this);
    }

    @Override
    public StepOutput output() {
        return output;
    }

    @Override
    public int slopeCount() {
        return LAST + 1;
    }

    @Override
    public int errorOrder() {
        return 5;
    }

    /** From the polynomial of {@link DenseOutput}, which is linear in the slopes; at the end of the step, b. */
    @Override
    public void weights(double share, double length, double[] weights) {
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
    public void begin(double time, double[] y) {
        Arrays.fill(carry, 0);
        equations.evaluating(0);
        equations.slopes(time, y, k1);
        for (int i = 0; i < size; i++) {
            if (!Double.isFinite(k1[i])) {
                throw StepRefused.slope(i, time, 0, k1[i], y[i]);
            }
        }
    }

    @Override
    public double attempt(double from, double to, double[] y) {
        double h = to - from;
        for (int i = 0; i < size; i++) {
            stage[i] = y[i] + h * (A21 * k1[i]);
        }
        if (!slope(1, from + C2 * h, stage, k2, h)) {
            return Double.POSITIVE_INFINITY;
        }
        for (int i = 0; i < size; i++) {
            stage[i] = y[i] + h * (A31 * k1[i] + A32 * k2[i]);
        }
        if (!slope(2, from + C3 * h, stage, k3, h)) {
            return Double.POSITIVE_INFINITY;
        }
        for (int i = 0; i < size; i++) {
            stage[i] = y[i] + h * (A41 * k1[i] + A42 * k2[i] + A43 * k3[i]);
        }
        if (!slope(3, from + C4 * h, stage, k4, h)) {
            return Double.POSITIVE_INFINITY;
        }
        for (int i = 0; i < size; i++) {
            stage[i] = y[i] + h * (A51 * k1[i] + A52 * k2[i] + A53 * k3[i] + A54 * k4[i]);
        }
        if (!slope(4, from + C5 * h, stage, k5, h)) {
            return Double.POSITIVE_INFINITY;
        }
        for (int i = 0; i < size; i++) {
            stage[i] = y[i] + h * (A61 * k1[i] + A62 * k2[i] + A63 * k3[i] + A64 * k4[i] + A65 * k5[i]);
        }
        if (!slope(5, to, stage, k6, h)) {
            return Double.POSITIVE_INFINITY;
        }
        for (int i = 0; i < size; i++) {
            double change = h * (B1 * k1[i] + B3 * k3[i] + B4 * k4[i] + B5 * k5[i] + B6 * k6[i]) + carry[i];
            double sum = y[i] + change;
            double changeKept = sum - y[i];
            carryAfter[i] = (y[i] - (sum - changeKept)) + (change - changeKept);
            result[i] = sum;
        }
        if (!slope(LAST, to, result, k7, h)) {
            return Double.POSITIVE_INFINITY;
        }
        for (int i = 0; i < size; i++) {
            error[i] = h * (E1 * k1[i] + E3 * k3[i] + E4 * k4[i] + E5 * k5[i] + E6 * k6[i] + E7 * k7[i]);
        }
        double norm = tolerance.norm(error, y, result);
        return Double.isNaN(norm) ? Double.POSITIVE_INFINITY : norm;
    }

    @Override
    public void accept(double[] y) {
        equations.carriedOver(LAST);
        System.arraycopy(result, 0, y, 0, size);
        double[] first = k1;
        k1 = k7;
        k7 = first;
        double[] old = carry;
        carry = carryAfter;
        carryAfter = old;
    }

    /**
     * First step by Hairer, Nørsett and Wanner 1993, section II.4, "Starting Step Size": from the sizes of the state, of
     * its slope and of the slope's change over a small explicit Euler step.
     */
    @Override
    public double firstStep(double time, double[] y, double longest) {
        double sizeOfState = tolerance.norm(y, y, y);
        double sizeOfSlope = tolerance.norm(k1, y, y);
        double small = sizeOfState < 1e-5 || sizeOfSlope < 1e-5 ? 1e-6 : 0.01 * sizeOfState / sizeOfSlope;
        small = Math.min(small, longest);
        for (int i = 0; i < size; i++) {
            stage[i] = y[i] + small * k1[i];
        }
        if (!slope(1, time + small, stage, k2, small)) {
            return small * 1e-3;
        }
        for (int i = 0; i < size; i++) {
            error[i] = k2[i] - k1[i];
        }
        double sizeOfCurvature = tolerance.norm(error, y, y) / small;
        double steepest = Math.max(sizeOfSlope, sizeOfCurvature);
        double fitting = steepest <= 1e-15 ? Math.max(1e-6, small * 1e-3) : StrictMath.pow(0.01 / steepest, 1.0 / 5);
        return Math.min(Math.min(100 * small, fitting), longest);
    }

    @Override
    public int worstState(double[] y) {
        int worst = 0;
        double most = -1;
        for (int i = 0; i < size; i++) {
            double scaled = Math.abs(error[i]) / tolerance.allowed(i, Math.max(Math.abs(y[i]), Math.abs(result[i])));
            if (!Double.isFinite(scaled)) {
                return i;
            }
            if (scaled > most) {
                most = scaled;
                worst = i;
            }
        }
        return worst;
    }

    /** Evaluates a slope; false when it is infinite, or follows from a state that is. */
    private boolean slope(int number, double time, double[] at, double[] k, double step) {
        equations.evaluating(number);
        equations.slopes(time, at, k);
        for (int i = 0; i < size; i++) {
            if (!(Math.abs(k[i]) <= Double.MAX_VALUE)) {
                refuseIfNotANumber(time, at, k, step);
                Arrays.fill(error, 0);
                error[i] = Double.POSITIVE_INFINITY;
                return false;
            }
        }
        return true;
    }

    private void refuseIfNotANumber(double time, double[] at, double[] k, double step) {
        for (double value : at) {
            if (!Double.isFinite(value)) {
                return;
            }
        }
        for (int i = 0; i < size; i++) {
            if (Double.isNaN(k[i])) {
                throw StepRefused.slope(i, time, step, k[i], at[i]);
            }
        }
    }
}
