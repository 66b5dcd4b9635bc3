package org.tidewright.numerics.ode;

import java.util.Arrays;

/**
 * One trial step of the additive method. Stage i solves
 *
 * <pre>
 * Y_i - h g X(Y_i) = y + h sum_j&lt;i [ aE_ij F_j + (aI_ij - aE_ij) X(Y_j) ]
 * y_new = y + h sum b_i F_i,   error = (I - h g X')^-1 (h sum (b_i - b^_i) F_i - d) + d,   d = y_new - Y_s
 * </pre>
 *
 * <p>F_i is the whole right-hand side at Y_i and the explicit part is F - X: so the method has its order whatever X is, and
 * the step is a sum of slopes, which keeps what they conserve. The error is passed through the implicit solve, as is
 * usual for stiff methods, or the fast exchange would be judged by what it damps at once (Hosea and Shampine 1996, Appl.
 * Numer. Math. 20, 21-37). Only d is not: the last stage, implicit in full, and the result differ by what the explicit part
 * gets wrong of a difference the exchange holds up, and the solve would hide it.
 */
final class AdditiveStages implements Trial {
    private final AdditiveTableau tableau;
    private final int stages;
    private final SplitEquations equations;
    private final Tolerance tolerance;
    private final int size;
    private final int unread;
    private final int[] exchanged;

    /** Slopes by stage; the last is that at the result. */
    final double[][] slopes;

    /** X(Y) by stage, on the exchanged states only. */
    private final double[][] products;

    final double[] result;
    private final double[] stage;
    private final double[] lastStage;
    private final double[] error;
    private double[] carry;
    private double[] carryAfter;
    private final HermiteOutput output;

    AdditiveStages(AdditiveTableau tableau, SplitEquations equations, Tolerance tolerance) {
        this.tableau = tableau;
        stages = tableau.stages();
        this.equations = equations;
        this.tolerance = tolerance;
        size = equations.size();
        unread = equations.unread();
        exchanged = equations.exchanged().clone();
        slopes = new double[stages + 1][size];
        products = new double[stages][size];
        result = new double[size];
        stage = new double[size];
        lastStage = new double[size];
        error = new double[size];
        carry = new double[size];
        carryAfter = new double[size];
        output = new HermiteOutput(this);
    }

    @Override
    public StepOutput output() {
        return output;
    }

    @Override
    public int slopeCount() {
        return stages + 1;
    }

    @Override
    public int errorOrder() {
        return tableau.order();
    }

    @Override
    public void begin(double time, double[] y) {
        Arrays.fill(carry, 0);
        equations.evaluating(0);
        equations.slopes(time, y, slopes[0]);
        for (int i = 0; i < size; i++) {
            if (!Double.isFinite(slopes[0][i])) {
                throw StepRefused.slope(i, time, 0, slopes[0][i], y[i]);
            }
        }
        equations.linearise(y);
    }

    @Override
    public double attempt(double from, double to, double[] y) {
        double h = to - from;
        equations.exchange(y, products[0]);
        for (int i = 1; i < stages; i++) {
            gather(i, h, y);
            solveStage(h * tableau.gamma(), products[i]);
            if (!slope(i, from + tableau.nodes()[i] * h, stage, h)) {
                return Double.POSITIVE_INFINITY;
            }
        }
        for (int k : exchanged) {
            lastStage[k] = stage[k];
        }
        finish(h, y);
        if (!slope(stages, to, result, h)) {
            return Double.POSITIVE_INFINITY;
        }
        dampError(h);
        double norm = tolerance.norm(error, y, result);
        return Double.isNaN(norm) ? Double.POSITIVE_INFINITY : norm;
    }

    /** Solves Y - shift X(Y) = right in place; what it moved, over the shift, is X(Y). */
    private void solveStage(double shift, double[] product) {
        for (int k : exchanged) {
            product[k] = stage[k];
        }
        equations.solve(shift, stage);
        for (int k : exchanged) {
            product[k] = (stage[k] - product[k]) / shift;
        }
    }

    /**
     * The right-hand side of a stage. One sweep for each number of earlier stages lets the loop become vector code;
     * what no slope reads is left out.
     */
    private void gather(int i, double h, double[] y) {
        double[] a = tableau.explicit()[i];
        double[] f0 = slopes[0];
        double[] f1 = slopes[1];
        double[] f2 = slopes[2];
        double[] f3 = slopes[3];
        double[] f4 = slopes[4];
        switch (i) {
            case 1 -> {
                for (int k = unread; k < size; k++) {
                    stage[k] = y[k] + h * (a[0] * f0[k]);
                }
            }
            case 2 -> {
                for (int k = unread; k < size; k++) {
                    stage[k] = y[k] + h * (a[0] * f0[k] + a[1] * f1[k]);
                }
            }
            case 3 -> {
                for (int k = unread; k < size; k++) {
                    stage[k] = y[k] + h * (a[0] * f0[k] + a[1] * f1[k] + a[2] * f2[k]);
                }
            }
            case 4 -> {
                for (int k = unread; k < size; k++) {
                    stage[k] = y[k] + h * (a[0] * f0[k] + a[1] * f1[k] + a[2] * f2[k] + a[3] * f3[k]);
                }
            }
            default -> {
                for (int k = unread; k < size; k++) {
                    stage[k] = y[k] + h * (a[0] * f0[k] + a[1] * f1[k] + a[2] * f2[k] + a[3] * f3[k] + a[4] * f4[k]);
                }
            }
        }
        for (int j = 0; j < i; j++) {
            double weight = h * (tableau.implicit()[i][j] - a[j]);
            double[] product = products[j];
            for (int k : exchanged) {
                stage[k] += weight * product[k];
            }
        }
    }

    /** Passes the error through the implicit solve, all but what the last stage and the result differ by. */
    private void dampError(double h) {
        for (int k : exchanged) {
            error[k] -= result[k] - lastStage[k];
        }
        equations.damp(h * tableau.gamma(), error);
        for (int k : exchanged) {
            error[k] += result[k] - lastStage[k];
        }
    }

    private void finish(double h, double[] y) {
        double[] b = tableau.weights();
        double[] lower = tableau.embedded();
        double[] change = stage;
        Arrays.fill(change, 0);
        Arrays.fill(error, 0);
        for (int i = 0; i < stages; i++) {
            double ofResult = h * b[i];
            double ofError = h * (b[i] - lower[i]);
            double[] f = slopes[i];
            for (int k = 0; k < size; k++) {
                change[k] += ofResult * f[k];
                error[k] += ofError * f[k];
            }
        }
        for (int k = 0; k < size; k++) {
            double moved = change[k] + carry[k];
            double sum = y[k] + moved;
            double movedKept = sum - y[k];
            carryAfter[k] = (y[k] - (sum - movedKept)) + (moved - movedKept);
            result[k] = sum;
        }
    }

    @Override
    public void accept(double[] y) {
        equations.carriedOver(stages);
        System.arraycopy(result, 0, y, 0, size);
        double[] first = slopes[0];
        slopes[0] = slopes[stages];
        slopes[stages] = first;
        double[] old = carry;
        carry = carryAfter;
        carryAfter = old;
        equations.linearise(y);
    }

    /** The slopes at both ends of a step without what the step damps. */
    void calmSlopes(double h, double[] first, double[] last) {
        System.arraycopy(slopes[0], 0, first, 0, size);
        System.arraycopy(slopes[stages], 0, last, 0, size);
        equations.damp(h * tableau.gamma(), first);
        equations.damp(h * tableau.gamma(), last);
    }

    /** From the polynomial of {@link HermiteOutput}, the exchange within it left out: it only changes places. */
    @Override
    public void weights(double share, double length, double[] weights) {
        double rest = 1 - share;
        double ofResult = share * share * (3 - 2 * share);
        for (int i = 0; i < stages; i++) {
            weights[i] = length * ofResult * tableau.weights()[i];
        }
        weights[0] += length * share * rest * rest;
        weights[stages] = -length * share * share * rest;
    }

    @Override
    public double firstStep(double time, double[] y, double longest) {
        double sizeOfState = tolerance.norm(y, y, y);
        double sizeOfSlope = tolerance.norm(slopes[0], y, y);
        double small = sizeOfState < 1e-5 || sizeOfSlope < 1e-5 ? 1e-6 : 0.01 * sizeOfState / sizeOfSlope;
        small = Math.min(small, longest);
        for (int i = 0; i < size; i++) {
            stage[i] = y[i] + small * slopes[0][i];
        }
        if (!slope(1, time + small, stage, small)) {
            return small * 1e-3;
        }
        for (int i = 0; i < size; i++) {
            error[i] = slopes[1][i] - slopes[0][i];
        }
        double sizeOfCurvature = tolerance.norm(error, y, y) / small;
        double steepest = Math.max(sizeOfSlope, sizeOfCurvature);
        double fitting =
                steepest <= 1e-15 ? Math.max(1e-6, small * 1e-3) : StrictMath.pow(0.01 / steepest, 1.0 / errorOrder());
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
    private boolean slope(int number, double time, double[] at, double step) {
        equations.evaluating(number);
        double[] k = slopes[number];
        equations.slopes(time, at, k);
        for (int i = 0; i < size; i++) {
            if (!(Math.abs(k[i]) <= Double.MAX_VALUE)) {
                if (Double.isNaN(k[i]) && allFinite(at)) {
                    throw StepRefused.slope(i, time, step, k[i], at[i]);
                }
                Arrays.fill(error, 0);
                error[i] = Double.POSITIVE_INFINITY;
                return false;
            }
        }
        return true;
    }

    private static boolean allFinite(double[] values) {
        for (double value : values) {
            if (!Double.isFinite(value)) {
                return false;
            }
        }
        return true;
    }
}
