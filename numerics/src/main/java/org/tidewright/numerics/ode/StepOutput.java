package org.tidewright.numerics.ode;

/** An interpolant that its stepper opens, cuts short and closes. */
interface StepOutput extends Interpolant {
    /** Shows a successful trial until it is {@link #close() closed}, which must be before the trial is accepted. */
    void open(double stepFrom, double stepTo, double[] y);

    /** Shortens the step to a crossing within it. */
    void endAt(double time);

    /** Refuses every time from here on: the slopes belong to the next step. */
    void close();
}
