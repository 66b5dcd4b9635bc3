package org.tidewright.numerics.ode;

import java.util.Arrays;

/**
 * One step of a method on trial: its stages, its result, its error, and what lies between. Slopes are numbered by stage;
 * the slope at the result is the last of them and becomes the first one of the next step.
 *
 * <p>Every update is a sum of slopes, so what the right-hand side conserves linearly the step conserves. The rounding
 * of y + ... is carried from step to step and given back (compensated summation: Møller 1965, BIT 5, 37-50; the error of
 * a sum by Knuth, The Art of Computer Programming 2, section 4.2.2), or a total would wander over the many steps of a
 * long run.
 */
abstract class Trial {
    private final Equations equations;
    final Tolerance tolerance;
    final int size;
    private final int last;

    /** Slopes by stage; the last is that at the result. */
    final double[][] slopes;

    final double[] result;

    /** Scratch for the state of a stage. */
    final double[] stage;

    final double[] error;
    private double[] carry;
    private double[] carryAfter;

    Trial(Equations equations, Tolerance tolerance, int slopeCount) {
        this.equations = equations;
        this.tolerance = tolerance;
        size = equations.size();
        last = slopeCount - 1;
        slopes = new double[slopeCount][size];
        result = new double[size];
        stage = new double[size];
        error = new double[size];
        carry = new double[size];
        carryAfter = new double[size];
    }

    /** Tries the step and returns its error in units of the tolerance: infinite when the trial ran off to infinity. */
    abstract double attempt(double from, double to, double[] y);

    /** The step just tried, as a function of time; see {@link StepOutput#open}. */
    abstract StepOutput output();

    /**
     * Weights by which the slopes make up the change from the start of the step to a place in it.
     *
     * @param share of the step, 1 for all of it
     * @param length of the step
     * @param weights one per slope
     */
    abstract void weights(double share, double length, double[] weights);

    /** Order of the error that {@link #attempt} gives, as a power of the step. */
    abstract int errorOrder();

    final int slopeCount() {
        return slopes.length;
    }

    /** Takes the first slope afresh: nothing is kept from before, for the equations' settings may have changed. */
    void begin(double time, double[] y) {
        Arrays.fill(carry, 0);
        equations.evaluating(0);
        double[] first = slopes[0];
        equations.slopes(time, y, first);
        for (int i = 0; i < size; i++) {
            if (!Double.isFinite(first[i])) {
                throw StepRefused.slope(i, time, 0, first[i], y[i]);
            }
        }
    }

    /** Moves {@code y} to the result; the last slope becomes the first one of the next step. */
    void accept(double[] y) {
        equations.carriedOver(last);
        System.arraycopy(result, 0, y, 0, size);
        double[] first = slopes[0];
        slopes[0] = slopes[last];
        slopes[last] = first;
        double[] old = carry;
        carry = carryAfter;
        carryAfter = old;
    }

    /** Writes y + change, with what rounding took from the steps before, as the result. */
    final void moveBy(double[] change, double[] y) {
        for (int i = 0; i < size; i++) {
            double moved = change[i] + carry[i];
            double sum = y[i] + moved;
            double movedKept = sum - y[i];
            carryAfter[i] = (y[i] - (sum - movedKept)) + (moved - movedKept);
            result[i] = sum;
        }
    }

    /** The error in units of the tolerance. */
    final double errorNorm(double[] y) {
        double norm = tolerance.norm(error, y, result);
        return Double.isNaN(norm) ? Double.POSITIVE_INFINITY : norm;
    }

    /**
     * First step by Hairer, Nørsett and Wanner 1993, section II.4, "Starting Step Size": from the sizes of the state, of
     * its slope and of the slope's change over a small explicit Euler step.
     */
    final double firstStep(double time, double[] y, double longest) {
        double[] k1 = slopes[0];
        double[] k2 = slopes[1];
        double sizeOfState = tolerance.norm(y, y, y);
        double sizeOfSlope = tolerance.norm(k1, y, y);
        double small = sizeOfState < 1e-5 || sizeOfSlope < 1e-5 ? 1e-6 : 0.01 * sizeOfState / sizeOfSlope;
        small = Math.min(small, longest);
        for (int i = 0; i < size; i++) {
            stage[i] = y[i] + small * k1[i];
        }
        if (!slope(1, time + small, stage, small)) {
            return small * 1e-3;
        }
        for (int i = 0; i < size; i++) {
            error[i] = k2[i] - k1[i];
        }
        double sizeOfCurvature = tolerance.norm(error, y, y) / small;
        double steepest = Math.max(sizeOfSlope, sizeOfCurvature);
        double fitting =
                steepest <= 1e-15 ? Math.max(1e-6, small * 1e-3) : StrictMath.pow(0.01 / steepest, 1.0 / errorOrder());
        return Math.min(Math.min(100 * small, fitting), longest);
    }

    /** The state whose error in the last trial was the largest part of its tolerance, or not finite. */
    final int worstState(double[] y) {
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
    final boolean slope(int number, double time, double[] at, double step) {
        equations.evaluating(number);
        double[] k = slopes[number];
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
