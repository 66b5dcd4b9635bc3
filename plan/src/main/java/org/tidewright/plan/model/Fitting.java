package org.tidewright.plan.model;

/**
 * Fittings and their loss coefficients K, referred to the velocity in the pipe. Usual value and range from memory of
 * handbook tables (Flow of Fluids, Technical Paper 410; Miller, Internal Flow Systems); between methods they differ by
 * tens of per cent.
 */
public enum Fitting {
    ELBOW_90(0.9, 0.75, 1.5),
    ELBOW_45(0.35, 0.3, 0.5),
    TEE_THROUGH(0.45, 0.3, 0.6),
    TEE_BRANCH(1.4, 1.0, 1.8),
    UNION(0.1, 0.05, 0.15),
    BALL_VALVE(0.08, 0.05, 0.1),
    GATE_VALVE(0.2, 0.1, 0.3),
    SWING_CHECK_VALVE(2.2, 2.0, 2.5),
    SPRING_CHECK_VALVE(7, 5, 10),
    SHARP_ENTRY(0.5, 0.45, 0.57),
    PROJECTING_ENTRY(0.9, 0.8, 1.0),
    STRAINER(1.5, 0.8, 3.0);

    private final double usual;
    private final double least;
    private final double most;

    Fitting(double usual, double least, double most) {
        this.usual = usual;
        this.least = least;
        this.most = most;
    }

    /** Usual loss coefficient, without unit. */
    public double lossCoefficient() {
        return usual;
    }

    /** Lower end of the handbook range. */
    public double leastLossCoefficient() {
        return least;
    }

    /** Upper end of the handbook range. */
    public double mostLossCoefficient() {
        return most;
    }
}
