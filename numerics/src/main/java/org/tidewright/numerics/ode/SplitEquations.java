package org.tidewright.numerics.ode;

/**
 * Equations dy/dt = F(t, y) that contain a fast exchange X(y), linear in what is exchanged. {@link #slopes} gives the whole of
 * F; X only has to be near the fast part: the better it is, the longer the steps. Its parts must sum to zero where F
 * conserves.
 */
public interface SplitEquations extends Equations {
    /** Chooses X for the step that begins at this state. */
    void linearise(double[] state);

    /** How many of the states, the first ones, no slope reads: they only count what flows. */
    default int unread() {
        return 0;
    }

    /** The states X touches, in rising order; the same for all steps. */
    int[] exchanged();

    /** Writes X(y) into {@code product} for the exchanged states and leaves the others alone. */
    void exchange(double[] state, double[] product);

    /**
     * Finds y with y - shift X(y) = right, in place.
     *
     * @param shift not negative, in units of time
     */
    void solve(double shift, double[] right);

    /**
     * Takes from a change or an error what the exchange damps within a time: solves (I - shift dX/dy) x = change in place, the
     * derivative as it was at the start of the step.
     *
     * @param shift not negative, in units of time
     */
    void damp(double shift, double[] change);
}
