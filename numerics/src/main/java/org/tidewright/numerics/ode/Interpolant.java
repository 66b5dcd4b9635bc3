package org.tidewright.numerics.ode;

/** The solution as a continuous function of time over one accepted step. */
public interface Interpolant {
    /** Time at which the step begins. */
    double from();

    /** Time at which the step ends. */
    double to();

    /**
     * Writes the solution at a time within the step.
     *
     * @param time between {@link #from()} and {@link #to()}, both included
     * @param state receives the solution
     * @throws IllegalArgumentException for a time outside the step
     */
    void at(double time, double[] state);
}
