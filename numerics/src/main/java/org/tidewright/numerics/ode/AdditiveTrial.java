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
final class AdditiveTrial extends Trial {
    private final AdditiveTableau tableau;
    private final int stages;
    private final SplitEquations equations;
    private final int unread;
    private final int[] exchanged;

    /** X(Y) by stage, on the exchanged states only. */
    private final double[][] products;

    private final double[] lastStage;
    private final HermiteOutput output;

    AdditiveTrial(AdditiveTableau tableau, SplitEquations equations, Tolerance tolerance) {
        super(equations, tolerance, tableau.stages() + 1);
        this.tableau = tableau;
        stages = tableau.stages();
        this.equations = equations;
        unread = equations.unread();
        exchanged = equations.exchanged().clone();
        products = new double[stages][size];
        lastStage = new double[size];
        output = new HermiteOutput(this);
    }

    @Override
    StepOutput output() {
        return output;
    }

    @Override
    int errorOrder() {
        return tableau.order();
    }

    @Override
    void begin(double time, double[] y) {
        super.begin(time, y);
        equations.linearise(y);
    }

    @Override
    void accept(double[] y) {
        super.accept(y);
        equations.linearise(y);
    }

    @Override
    double attempt(double from, double to, double[] y) {
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
        return errorNorm(y);
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
        moveBy(change, y);
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
    void weights(double share, double length, double[] weights) {
        double rest = 1 - share;
        double ofResult = share * share * (3 - 2 * share);
        for (int i = 0; i < stages; i++) {
            weights[i] = length * ofResult * tableau.weights()[i];
        }
        weights[0] += length * share * rest * rest;
        weights[stages] = -length * share * share * rest;
    }
}
