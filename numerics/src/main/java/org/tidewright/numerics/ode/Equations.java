package org.tidewright.numerics.ode;

/**
 * A system of ordinary differential equations dy/dt = f(t, y).
 *
 * <p>Equations that keep account of what moved may listen to how a step is made of slopes: the change of the state over
 * each step is a weighted sum of the slopes evaluated in it. Slopes are numbered from 0 within a step.
 */
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

    /** The next call of {@link #slopes} is for this stage of the step; it replaces what was there. */
    default void evaluating(int stage) {}

    /** The slope of this stage is stage 0 of the step that begins now. */
    default void carriedOver(int stage) {}

    /**
     * The state has moved on by the sum over all stages of weight times slope, to rounding. Where a crossing cut the step
     * short, so it has too, except that a {@link SplitEquations split} system keeps this for sums over exchanging bodies
     * only: what changed places within the cut step is left out.
     *
     * @param weights by stage, in units of time; valid during the call only
     */
    default void advanced(double[] weights) {}
}
