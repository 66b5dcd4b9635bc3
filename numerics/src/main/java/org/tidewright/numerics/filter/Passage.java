package org.tidewright.numerics.filter;

/** How a state moves from one time to a later one: x⁺ = F x + g + w, where w is normal with covariance Q. */
public final class Passage {
    private final double[] input;
    private final double[][] noise;
    private final Moves forth;
    private final Moves back;

    /**
     * A passage.
     *
     * @param matrix F
     * @param input g, what is known to come or go
     * @param noise Q, of what is not known; it may be filled anew before the passage is used again
     */
    public Passage(double[][] matrix, double[] input, double[][] noise) {
        this.input = input;
        this.noise = noise;
        forth = Moves.of(matrix);
        back = Moves.of(transposed(matrix));
    }

    private Passage(Passage other, double[][] noise) {
        input = other.input;
        forth = other.forth;
        back = other.back;
        this.noise = noise;
    }

    /** The same with another noise. */
    public Passage shakenBy(double[][] otherNoise) {
        return new Passage(this, otherNoise);
    }

    /** Nothing moves. */
    static Passage none(int states) {
        double[][] identity = new double[states][states];
        for (int i = 0; i < states; i++) {
            identity[i][i] = 1;
        }
        return new Passage(identity, new double[states], new double[states][states]);
    }

    /** g. */
    public double[] input() {
        return input;
    }

    /** Q. */
    public double[][] noise() {
        return noise;
    }

    /** F. */
    Moves forth() {
        return forth;
    }

    /** Fᵀ. */
    Moves back() {
        return back;
    }

    private static double[][] transposed(double[][] matrix) {
        double[][] transposed = new double[matrix.length][matrix.length];
        for (int i = 0; i < matrix.length; i++) {
            for (int j = 0; j < matrix.length; j++) {
                transposed[j][i] = matrix[i][j];
            }
        }
        return transposed;
    }
}
