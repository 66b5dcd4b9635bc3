package org.tidewright.numerics.filter;

import java.util.Arrays;
import java.util.List;

/**
 * States that wander, some of them driving others: levels and their slopes, regressors, constants. In continuous time,
 *
 * <pre>dx = G x dt + Σ s d dW   with G² = 0, one independent white noise W for each {@link Wandering}</pre>
 *
 * <p>so that a passage of any length Δ has a closed form, and two passages in a row are the one of both lengths together:
 *
 * <pre>
 * F = I + G Δ,   Q = Σ s² [ d dᵀ Δ + (d cᵀ + c dᵀ) Δ²/2 + c cᵀ Δ³/3 ],   c = G d
 * </pre>
 *
 * <p>A state may instead fade: it falls back to 0 within a time T and is shaken at the same time, so that its variance comes
 * to rest at s² (Ornstein and Uhlenbeck); F = exp(-Δ/T), Q = s² (1 - F²).
 *
 * <p>Harvey 1989, Forecasting, Structural Time Series Models and the Kalman Filter, sections 9.1 and 9.2.
 */
public final class StructuralModel {
    private final double[][] drive;
    private final double[] fading;
    private final List<Wandering> wanderings;
    private final double[][] driven;

    /**
     * What shakes the states.
     *
     * @param direction d, what it moves by how much
     * @param fadesWithin T, where it is a single fading state that it moves; else infinite
     */
    public record Wandering(double[] direction, double fadesWithin) {
        /** Without a way back. */
        public static Wandering along(double[] direction) {
            return new Wandering(direction, Double.POSITIVE_INFINITY);
        }

        /** Of one state that falls back to 0. */
        public static Wandering fading(int states, int state, double within) {
            double[] direction = new double[states];
            direction[state] = 1;
            return new Wandering(direction, within);
        }
    }

    /**
     * A model.
     *
     * @param drive G: by how much each state (row) moves in a unit of time for each unit of another (column)
     * @param wanderings what shakes it
     */
    public StructuralModel(double[][] drive, List<Wandering> wanderings) {
        this.drive = drive;
        this.wanderings = List.copyOf(wanderings);
        int size = drive.length;
        fading = new double[size];
        for (int i = 0; i < size; i++) {
            for (int j = 0; j < size; j++) {
                for (int k = 0; k < size; k++) {
                    if (drive[i][j] * drive[j][k] != 0) {
                        throw new IllegalArgumentException(
                                "state " + k + " drives " + j + ", which drives " + i + "; only one step is allowed");
                    }
                }
            }
        }
        driven = new double[wanderings.size()][size];
        for (int source = 0; source < driven.length; source++) {
            Wandering wandering = wanderings.get(source);
            for (int i = 0; i < size; i++) {
                driven[source][i] = Rows.dot(drive[i], wandering.direction());
                if (wandering.direction()[i] != 0 && Double.isFinite(wandering.fadesWithin())) {
                    fading[i] = 1 / wandering.fadesWithin();
                }
            }
            if (Double.isFinite(wandering.fadesWithin()) && Rows.dot(driven[source], driven[source]) != 0) {
                throw new IllegalArgumentException("a state that fades cannot drive others");
            }
        }
    }

    /** How many states it has. */
    public int size() {
        return drive.length;
    }

    /** A passage without noise: {@link #shake} fills it in. */
    public Passage passage(double time, double[] input) {
        int size = drive.length;
        double[][] matrix = new double[size][size];
        for (int i = 0; i < size; i++) {
            Rows.add(time, drive[i], matrix[i]);
            matrix[i][i] += Math.exp(-time * fading[i]);
        }
        return new Passage(matrix, input, new double[size][size]);
    }

    /**
     * Fills in the noise of a passage in place of what was there.
     *
     * @param sizes s of each wandering
     */
    public void shake(Passage passage, double time, double[] sizes) {
        double[][] noise = passage.noise();
        for (double[] row : noise) {
            Arrays.fill(row, 0);
        }
        for (int source = 0; source < driven.length; source++) {
            double[] direct = wanderings.get(source).direction();
            double[] through = driven[source];
            double variance = sizes[source] * sizes[source];
            double first = variance * directShare(source, time);
            double second = variance * time * time / 2;
            double third = variance * time * time * time / 3;
            for (int i = 0; i < direct.length; i++) {
                if (direct[i] != 0 || through[i] != 0) {
                    Rows.add(first * direct[i] + second * through[i], direct, noise[i]);
                    Rows.add(second * direct[i] + third * through[i], through, noise[i]);
                }
            }
        }
    }

    /**
     * Slope of the log likelihood along the logarithm of the size of a wandering, as far as it comes from one passage.
     *
     * @param later hindsight of the end of the passage, gone back over what was measured there
     */
    public double slope(int source, double size, double time, Hindsight later) {
        double[] direct = wanderings.get(source).direction();
        double[] through = driven[source];
        return size
                * size
                * (directShare(source, time) * later.leverage(direct, direct)
                        + time * time * later.leverage(direct, through)
                        + time * time * time / 3 * later.leverage(through, through));
    }

    /** Of a wandering's variance, what enters within a time. */
    private double directShare(int source, double time) {
        double within = wanderings.get(source).fadesWithin();
        return Double.isFinite(within) ? -Math.expm1(-2 * time / within) : time;
    }
}
