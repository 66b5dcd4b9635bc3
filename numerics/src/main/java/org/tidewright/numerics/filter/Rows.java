package org.tidewright.numerics.filter;

import java.util.Arrays;

/** Sums over rows of numbers, most of which are 0: what a 0 would multiply is passed over. */
final class Rows {
    private Rows() {}

    static double dot(double[] row, double[] other) {
        double sum = 0;
        for (int i = 0; i < row.length; i++) {
            sum += row[i] * other[i];
        }
        return sum;
    }

    /** Adds a multiple of a row to another. */
    static void add(double factor, double[] row, double[] onto) {
        for (int i = 0; i < row.length; i++) {
            onto[i] += factor * row[i];
        }
    }

    /** row · matrix, into a result that is overwritten. */
    static void multiply(double[] row, double[][] matrix, double[] result) {
        Arrays.fill(result, 0);
        for (int i = 0; i < row.length; i++) {
            if (row[i] != 0) {
                add(row[i], matrix[i], result);
            }
        }
    }

    /** row · matrix · row. */
    static double quadratic(double[] row, double[][] matrix) {
        double sum = 0;
        for (int i = 0; i < row.length; i++) {
            if (row[i] != 0) {
                sum += row[i] * dot(matrix[i], row);
            }
        }
        return sum;
    }

    /** matrix · symmetric · matrixᵀ, exactly symmetric, into a result that is overwritten. */
    static void sandwich(double[][] matrix, double[][] symmetric, double[][] result, double[][] scratch) {
        int size = matrix.length;
        for (int i = 0; i < size; i++) {
            multiply(matrix[i], symmetric, scratch[i]);
        }
        transpose(scratch); // now symmetric · matrixᵀ
        for (int i = 0; i < size; i++) {
            multiply(matrix[i], scratch, result[i]);
        }
        for (int i = 0; i < size; i++) {
            for (int j = 0; j < i; j++) {
                double middle = 0.5 * (result[i][j] + result[j][i]);
                result[i][j] = middle;
                result[j][i] = middle;
            }
        }
    }

    private static void transpose(double[][] square) {
        for (int i = 0; i < square.length; i++) {
            for (int j = 0; j < i; j++) {
                double held = square[i][j];
                square[i][j] = square[j][i];
                square[j][i] = held;
            }
        }
    }
}
