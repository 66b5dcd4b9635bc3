package org.tidewright.numerics.ode;

/** A system of ordinary differential equations dy/dt = f(t, y). */
public interface Equations {
    /** Number of states. */
    int size();

    /**
     * Writes f(t, y) into {@code slope}. Must not keep or change {@code state}.
     *
     * @param time independent variable
     * @param state y, of length {@link #size()}
     * @param slope receives dy/dt, same length; every entry is to be written
     */
    void slopes(double time, double[] state, double[] slope);

    default void evaluating(int stage) {}

    default void carriedOver(int from) {}

    default void advanced(double[] weights) {}
}
