package org.tidewright.numerics.filter;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * What a time of some length does to the states of a {@link StructuralModel}:
 *
 * <pre>F = exp(G Δ),   Q = Σ s² M,   M = ∫ v vᵀ dt,   v = exp(G t) d,   from 0 to Δ</pre>
 *
 * <p>What depends on the length alone is worked out once, so that sizes can be tried one after the other. M is found by
 * Gauss's rule: exactly for a walk, whose v is a straight line, and to some 12 digits where something falls back.
 */
public final class Stretch {
    private final StructuralModel model;
    private final double time;
    private final double[][] matrix;
    private final Shape[] shapes;

    /** M of one noise, as far as it is not 0. */
    private record Shape(int[] states, double[][] values) {}

    Stretch(StructuralModel model, double time) {
        this.model = model;
        this.time = time;
        int size = model.size();
        matrix = new double[size][size];
        double[] unit = new double[size];
        for (int j = 0; j < size; j++) {
            unit[j] = 1;
            double[] column = model.after(unit, time);
            for (int i = 0; i < size; i++) {
                matrix[i][j] = column[i];
            }
            unit[j] = 0;
        }
        shapes = model.directions().stream().map(this::shape).toArray(Shape[]::new);
    }

    private Shape shape(double[] direction) {
        // Whatever a noise reaches at all, it has reached by the end.
        double[] reached = model.after(direction, Math.max(time, 1e-3));
        int[] states = IntStream.range(0, direction.length)
                .filter(i -> direction[i] != 0 || reached[i] != 0)
                .toArray();
        double[][] values = new double[states.length][states.length];
        Quadrature.over(time, model.fastest(), (place, weight) -> {
            double[] state = model.after(direction, place);
            for (int i = 0; i < states.length; i++) {
                for (int j = 0; j < states.length; j++) {
                    values[i][j] += weight * state[states[i]] * state[states[j]];
                }
            }
        });
        return new Shape(states, values);
    }

    /** Its length. */
    public double time() {
        return time;
    }

    /** A copy of F, for a passage in which more happens. */
    public double[][] matrix() {
        double[][] copy = new double[matrix.length][];
        for (int i = 0; i < copy.length; i++) {
            copy[i] = matrix[i].clone();
        }
        return copy;
    }

    /** A passage in which nothing comes, without noise: {@link #shake} fills that in. */
    public Passage passage() {
        int size = matrix.length;
        return new Passage(matrix, new double[size], new double[size][size]);
    }

    /**
     * Fills in the noise of a passage in place of what was there.
     *
     * @param sizes s of each noise
     */
    public void shake(Passage passage, double[] sizes) {
        double[][] noise = passage.noise();
        for (double[] row : noise) {
            Arrays.fill(row, 0);
        }
        for (int source = 0; source < shapes.length; source++) {
            double variance = sizes[source] * sizes[source];
            int[] states = shapes[source].states();
            double[][] values = shapes[source].values();
            for (int i = 0; i < states.length; i++) {
                for (int j = 0; j < states.length; j++) {
                    noise[states[i]][states[j]] += variance * values[i][j];
                }
            }
        }
    }

    /**
     * Slope of the log likelihood along the logarithm of the size of a noise, as far as it comes from here.
     *
     * @param later hindsight of the end, gone back over what was measured there
     */
    public double slope(int source, double size, Hindsight later) {
        return size * size * later.leverage(shapes[source].states(), shapes[source].values());
    }

    /**
     * What comes evenly within the time, as it will stand at the end: ∫ exp(G t) b dt.
     *
     * @param amounts in all, b Δ
     */
    public double[] evenly(double[] amounts) {
        if (time == 0) {
            return amounts.clone();
        }
        double[] sum = new double[amounts.length];
        Quadrature.over(
                time, model.fastest(), (place, weight) -> Rows.add(weight / time, model.after(amounts, place), sum));
        return sum;
    }
}
