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
}
