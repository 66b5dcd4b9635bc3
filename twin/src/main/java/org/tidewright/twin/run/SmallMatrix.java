package org.tidewright.twin.run;

import java.util.Arrays;

/** A matrix of transport between a few bodies: columns sum to zero. Inverts I - s M once for each s. */
final class SmallMatrix {
    private final int size;
    private final double[] entries;
    private final double[] inverse;
    private final double[] work;
    private final double[] solution;
    private double shiftOfInverse = Double.NaN;

    SmallMatrix(int size) {
        this.size = size;
        entries = new double[size * size];
        inverse = new double[size * size];
        work = new double[size * size];
        solution = new double[size];
    }

    void clear() {
        Arrays.fill(entries, 0);
        shiftOfInverse = Double.NaN;
    }

    /** Adds a transport of so much of what is in one body per time to another. */
    void carry(int from, int to, double rate) {
        entries[from * size + from] -= rate;
        entries[to * size + from] += rate;
    }

    /** product := M values, both read and written at the given places of longer arrays. */
    void multiply(double[] values, int[] places, double[] product) {
        for (int row = 0; row < size; row++) {
            double sum = 0;
            for (int column = 0; column < size; column++) {
                sum += entries[row * size + column] * values[places[column]];
            }
            product[places[row]] = sum;
        }
    }

    /** Prepares to solve with I - shift M. */
    void shiftBy(double shift) {
        if (shift != shiftOfInverse) {
            invert(shift);
            shiftOfInverse = shift;
        }
    }

    /** Solves (I - shift M) x = right in place, at the given places of a longer array. */
    void solve(double[] right, int[] places) {
        for (int row = 0; row < size; row++) {
            double sum = 0;
            for (int column = 0; column < size; column++) {
                sum += inverse[row * size + column] * right[places[column]];
            }
            solution[row] = sum;
        }
        for (int row = 0; row < size; row++) {
            right[places[row]] = solution[row];
        }
    }

    /** The same for several sets of places; written out for three bodies, which most systems have. */
    void solveAll(double[] right, int[][] sets) {
        if (size != 3) {
            for (int[] places : sets) {
                solve(right, places);
            }
            return;
        }
        double a = inverse[0];
        double b = inverse[1];
        double c = inverse[2];
        double d = inverse[3];
        double e = inverse[4];
        double f = inverse[5];
        double g = inverse[6];
        double h = inverse[7];
        double k = inverse[8];
        for (int[] places : sets) {
            double x = right[places[0]];
            double y = right[places[1]];
            double z = right[places[2]];
            right[places[0]] = a * x + b * y + c * z;
            right[places[1]] = d * x + e * y + f * z;
            right[places[2]] = g * x + h * y + k * z;
        }
    }

    /** By Gauss and Jordan without exchange of rows: I - s M is diagonally dominant by columns. */
    private void invert(double shift) {
        if (size == 3) {
            invertThree(shift);
            return;
        }
        for (int i = 0; i < size * size; i++) {
            work[i] = -shift * entries[i];
            inverse[i] = 0;
        }
        for (int i = 0; i < size; i++) {
            work[i * size + i] += 1;
            inverse[i * size + i] = 1;
        }
        for (int pivot = 0; pivot < size; pivot++) {
            double scale = 1 / work[pivot * size + pivot];
            for (int column = 0; column < size; column++) {
                work[pivot * size + column] *= scale;
                inverse[pivot * size + column] *= scale;
            }
            for (int row = 0; row < size; row++) {
                double factor = work[row * size + pivot];
                if (row != pivot && factor != 0) {
                    for (int column = 0; column < size; column++) {
                        work[row * size + column] -= factor * work[pivot * size + column];
                        inverse[row * size + column] -= factor * inverse[pivot * size + column];
                    }
                }
            }
        }
    }

    /** By cofactors. */
    private void invertThree(double shift) {
        double a = 1 - shift * entries[0];
        double b = -shift * entries[1];
        double c = -shift * entries[2];
        double d = -shift * entries[3];
        double e = 1 - shift * entries[4];
        double f = -shift * entries[5];
        double g = -shift * entries[6];
        double h = -shift * entries[7];
        double k = 1 - shift * entries[8];
        double ofA = e * k - f * h;
        double ofB = f * g - d * k;
        double ofC = d * h - e * g;
        double scale = 1 / (a * ofA + b * ofB + c * ofC);
        inverse[0] = scale * ofA;
        inverse[1] = scale * (c * h - b * k);
        inverse[2] = scale * (b * f - c * e);
        inverse[3] = scale * ofB;
        inverse[4] = scale * (a * k - c * g);
        inverse[5] = scale * (c * d - a * f);
        inverse[6] = scale * ofC;
        inverse[7] = scale * (b * g - a * h);
        inverse[8] = scale * (a * e - b * d);
    }
}
