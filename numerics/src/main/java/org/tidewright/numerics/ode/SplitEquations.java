package org.tidewright.numerics.ode;

/**
 * Equations dy/dt = F(t, y) that contain a fast linear exchange L y. {@link #slopes} gives the whole of F; L only has to be
 * near the fast part: the better it is, the longer the steps. Columns of L must sum to zero where F conserves.
 */
public interface SplitEquations extends Equations {
    /** Chooses L for the step that begins at this state. */
    void linearise(double[] state);

    /** How many of the states, the first ones, no slope reads: they only count what flows. */
    default int unread() {
        return 0;
    }

    /** The states L touches, in rising order; the same for all steps. */
    int[] exchanged();

    /** Writes L y into {@code product} for the exchanged states and leaves the others alone. */
    void exchange(double[] state, double[] product);

    /**
     * Solves (I - shift L) x = right in place.
     *
     * @param shift not negative, in units of time
     */
    void solve(double shift, double[] right);
}
