package org.tidewright.numerics.ode;

/** A function of time and state whose change of sign is an event the stepper must land on. */
public interface Guard {
    /** Which change of sign counts. */
    enum Direction {
        RISING,
        FALLING,
        EITHER
    }

    double value(double time, double[] state);

    Direction direction();
}
