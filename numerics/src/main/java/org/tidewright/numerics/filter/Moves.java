package org.tidewright.numerics.filter;

import java.util.stream.IntStream;

/** A square matrix that leaves most states as they are: its rows that do not, and in them what is not 0. */
final class Moves {
    private final int[] rows;
    private final int[][] columns;
    private final double[][] factors;

    private Moves(int[] rows, int[][] columns, double[][] factors) {
        this.rows = rows;
        this.columns = columns;
        this.factors = factors;
    }

    static Moves of(double[][] matrix) {
        int size = matrix.length;
        int[] rows = IntStream.range(0, size)
                .filter(i -> IntStream.range(0, size).anyMatch(j -> matrix[i][j] != (i == j ? 1 : 0)))
                .toArray();
        int[][] columns = new int[rows.length][];
        double[][] factors = new double[rows.length][];
        for (int r = 0; r < rows.length; r++) {
            double[] row = matrix[rows[r]];
            columns[r] = IntStream.range(0, size).filter(j -> row[j] != 0).toArray();
            factors[r] = IntStream.of(columns[r]).mapToDouble(j -> row[j]).toArray();
        }
        return new Moves(rows, columns, factors);
    }

    /** M x, in place. */
    void move(double[] vector, double[] scratch) {
        for (int r = 0; r < rows.length; r++) {
            double sum = 0;
            for (int c = 0; c < columns[r].length; c++) {
                sum += factors[r][c] * vector[columns[r][c]];
            }
            scratch[r] = sum;
        }
        for (int r = 0; r < rows.length; r++) {
            vector[rows[r]] = scratch[r];
        }
    }

    /** M S Mᵀ of a symmetric S, in place; it stays exactly symmetric. */
    void moveBothWays(double[][] symmetric, double[][] scratch) {
        for (int r = 0; r < rows.length; r++) {
            double[] moved = scratch[r];
            double first = columns[r].length == 0 ? 0 : factors[r][0];
            double[] from = symmetric[columns[r].length == 0 ? 0 : columns[r][0]];
            for (int j = 0; j < moved.length; j++) {
                moved[j] = first * from[j];
            }
            for (int c = 1; c < columns[r].length; c++) {
                Rows.add(factors[r][c], symmetric[columns[r][c]], moved);
            }
        }
        for (int r = 0; r < rows.length; r++) {
            double[] moved = scratch[r];
            // Among the rows that moved, along the columns too; the rest follow from the symmetry.
            double[] across = new double[r + 1];
            for (int q = 0; q <= r; q++) {
                for (int c = 0; c < columns[q].length; c++) {
                    across[q] += factors[q][c] * moved[columns[q][c]];
                }
            }
            double[] row = symmetric[rows[r]];
            for (int j = 0; j < moved.length; j++) {
                row[j] = moved[j];
                symmetric[j][rows[r]] = moved[j];
            }
            for (int q = 0; q <= r; q++) {
                row[rows[q]] = across[q];
                symmetric[rows[q]][rows[r]] = across[q];
            }
        }
    }
}
