package org.tidewright.numerics.filter;

import org.jspecify.annotations.Nullable;

/**
 * What the measurements after a moment tell of the state then: the slope r of their log likelihood along the state's mean,
 * and its expected curvature N. Both are 0 after the last measurement; going back over a filter's moments and lessons one by
 * one gathers them, with no inverse and whatever states cannot move.
 *
 * <pre>
 * over a measurement:  r ← r + h (v/S - k·r)     N ← (I - k hᵀ)ᵀ N (I - k hᵀ) + h hᵀ/S
 * over a passage:      r ← Fᵀ r                  N ← Fᵀ N F
 * </pre>
 *
 * <p>De Jong 1989, J. Amer. Statist. Assoc. 84, 1085-1088; Durbin and Koopman 2012, Time Series Analysis by State Space
 * Methods, sections 4.4 and 7.5.
 */
public final class Hindsight {
    private final double[] slope;
    private final double[][] curvature;
    private final double[] spare;
    private double @Nullable [][] scratch;

    /** Of a moment after which nothing was measured. */
    public Hindsight(int states) {
        slope = new double[states];
        curvature = new double[states][states];
        spare = new double[states];
    }

    /** Goes back over a measurement. */
    public void goBack(Lesson lesson) {
        double[] row = lesson.measurement().row();
        double[] gain = lesson.gain();
        double variance = lesson.innovation().variance();
        double pull = lesson.innovation().value() / variance - Rows.dot(gain, slope);
        Rows.multiply(gain, curvature, spare);
        double half = 0.5 * (1 / variance + Rows.dot(gain, spare));
        for (int i = 0; i < row.length; i++) {
            spare[i] = half * row[i] - spare[i];
        }
        for (int i = 0; i < row.length; i++) {
            if (row[i] != 0) {
                slope[i] += row[i] * pull;
                Rows.add(row[i], spare, curvature[i]);
                for (int j = 0; j < row.length; j++) {
                    curvature[j][i] += spare[j] * row[i];
                }
            }
        }
    }

    /** Goes back over a passage. */
    public void goBack(Passage passage) {
        passage.back().move(slope, spare);
        if (scratch == null) {
            scratch = new double[slope.length][slope.length];
        }
        passage.back().moveBothWays(curvature, scratch);
    }

    /** What was believed, in the light of what came after. */
    public Belief sharpen(Belief believed) {
        int size = slope.length;
        double[][] before = believed.covariance();
        double[][] covariance = new double[size][size];
        for (int i = 0; i < size; i++) {
            Rows.multiply(before[i], curvature, spare);
            for (int j = 0; j <= i; j++) {
                covariance[i][j] = before[i][j] - Rows.dot(spare, before[j]);
                covariance[j][i] = covariance[i][j];
            }
        }
        return new Belief(sharpenMean(believed), covariance);
    }

    /** The mean of that alone, which is quicker. */
    public double[] sharpenMean(Belief believed) {
        double[] mean = believed.mean().clone();
        for (int i = 0; i < mean.length; i++) {
            mean[i] += Rows.dot(believed.covariance()[i], slope);
        }
        return mean;
    }

    /**
     * How far a measurement stands from what all others, earlier and later, let expect of it; to be asked before going back
     * over it.
     */
    public Innovation againstAllOthers(Lesson lesson) {
        double[] gain = lesson.gain();
        double variance = lesson.innovation().variance();
        double pull = lesson.innovation().value() / variance - Rows.dot(gain, slope);
        double weight = 1 / variance + Rows.quadratic(gain, curvature);
        return new Innovation(pull / weight, 1 / weight);
    }

    /**
     * The jump of the state along a direction, here and at once, that would suit all measurements best, with its variance;
     * infinite where none of them could tell. De Jong and Penzer 1998, J. Amer. Statist. Assoc. 93, 796-806.
     */
    public Innovation jump(double[] direction) {
        double told = Rows.quadratic(direction, curvature);
        return new Innovation(told > 0 ? Rows.dot(direction, slope) / told : 0, 1 / told);
    }

    /**
     * Twice the slope of the log likelihood along the variance of a noise that enters here: r·M r - tr(N M), where M is its
     * covariance for a variance of 1. Koopman and Shephard 1992, Biometrika 79, 823-826.
     *
     * @param states it reaches
     * @param covariance M among them
     */
    double leverage(int[] states, double[][] covariance) {
        double sum = 0;
        for (int i = 0; i < states.length; i++) {
            double ofSlope = slope[states[i]];
            double[] curved = curvature[states[i]];
            for (int j = 0; j < states.length; j++) {
                sum += covariance[i][j] * (ofSlope * slope[states[j]] - curved[states[j]]);
            }
        }
        return sum;
    }

    /** A copy that stays as it is now. */
    public Hindsight copy() {
        Hindsight copy = new Hindsight(slope.length);
        System.arraycopy(slope, 0, copy.slope, 0, slope.length);
        for (int i = 0; i < slope.length; i++) {
            System.arraycopy(curvature[i], 0, copy.curvature[i], 0, slope.length);
        }
        return copy;
    }
}
