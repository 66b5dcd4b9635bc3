package org.tidewright.numerics.ode;

/**
 * One step of a method on trial: its stages, its result, its error, and what lies between. Slopes are numbered by stage;
 * the slope at the result is the last of them and becomes the first one of the next step.
 */
interface Trial {
    /** Takes the first slope afresh: nothing is kept from before, for the equations' settings may have changed. */
    void begin(double time, double[] y);

    /** Tries the step and returns its error in units of the tolerance: infinite when the trial ran off to infinity. */
    double attempt(double from, double to, double[] y);

    /** Moves {@code y} to the result; the last slope becomes the first one of the next step. */
    void accept(double[] y);

    /** A first step from the sizes of the state, of its slope and of the slope's change. */
    double firstStep(double time, double[] y, double longest);

    /** The state whose error in the last trial was the largest part of its tolerance, or not finite. */
    int worstState(double[] y);

    /** The step just tried, as a function of time; see {@link StepOutput#open}. */
    StepOutput output();

    /**
     * Weights by which the slopes make up the change from the start of the step to a place in it.
     *
     * @param share of the step, 1 for all of it
     * @param length of the step
     * @param weights one per slope
     */
    void weights(double share, double length, double[] weights);

    /** Number of slopes. */
    int slopeCount();

    /** Order of the error that {@link #attempt} gives, as a power of the step. */
    int errorOrder();
}
