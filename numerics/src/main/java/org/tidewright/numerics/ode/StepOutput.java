package org.tidewright.numerics.ode;

import org.jspecify.annotations.Nullable;

/** An interpolant that its stepper opens, cuts short and closes. */
abstract class StepOutput implements Interpolant {
    private final double[] result;
    private double @Nullable [] start;
    private double from;
    private double stepEnd;
    private double to = Double.NaN;
    private boolean prepared;

    /**
     * Output of steps that end in {@code result}.
     *
     * @param result filled anew by every trial
     */
    StepOutput(double[] result) {
        this.result = result;
    }

    /** Shows a successful trial until it is {@link #close() closed}, which must be before the trial is accepted. */
    final void open(double stepFrom, double stepTo, double[] y) {
        from = stepFrom;
        stepEnd = stepTo;
        to = stepTo;
        start = y;
        prepared = false;
    }

    /** Shortens the step to a crossing within it. */
    final void endAt(double time) {
        to = time;
    }

    /** Refuses every time from here on: the slopes belong to the next step. */
    final void close() {
        to = Double.NaN;
    }

    @Override
    public final double from() {
        return from;
    }

    @Override
    public final double to() {
        return to;
    }

    @Override
    public final void at(double time, double[] state) {
        if (start == null || !(time >= from && time <= to)) {
            throw new IllegalArgumentException("Time " + time + " is outside the step from " + from + " to "
                    + (Double.isNaN(to) ? stepEnd + ", which is over" : to));
        }
        if (time == stepEnd) {
            System.arraycopy(result, 0, state, 0, result.length);
            return;
        }
        double length = stepEnd - from;
        if (!prepared) {
            prepare(length, start, result);
            prepared = true;
        }
        between((time - from) / length, length, start, result, state);
    }

    /** Gathers what {@link #between} needs, once a step. */
    abstract void prepare(double length, double[] y0, double[] y1);

    /** Writes the solution at a share of the step, from {@code y0} to {@code y1}. */
    abstract void between(double share, double length, double[] y0, double[] y1, double[] state);
}
