package org.tidewright.numerics.ode;

import java.util.List;

/** What advances a state by steps whose length it chooses itself, and lands on crossings. One object serves one thread. */
public interface Stepper {
    /**
     * Advances {@code state} in place from {@code time} to {@code end}, or to just past the first crossing of a guard.
     *
     * <p>A guard crosses when it goes from a strict sign to zero or to the other sign, in its direction. One that is
     * exactly zero at {@code time} does not cross by leaving zero. At a stop the guards that crossed have already changed
     * sign, so an advance from there does not find the same crossing again; guards that cross within 1e-9 and within
     * 1e-10 of the step of each other stop it together. Guards are read four times a step: two crossings of one guard within a
     * quarter of a step can be missed, unless the maximum step forbids so long a step.
     *
     * @param time where {@code state} holds
     * @param state one value per state; on return, the solution at {@link Stop#time()}; after a {@link StepRefused}, the
     *     solution at the last accepted step
     * @param end not before {@code time}
     * @param guards numbered by their place; they must depend on time and state alone
     * @param listener sees every accepted step, the last one only up to the stop
     * @throws StepRefused when a slope or guard is not a number, or the step shrinks to nothing
     */
    Stop advance(double time, double[] state, double end, List<? extends Guard> guards, StepListener listener);

    /** The step the next advance will try first: the last good one, or NaN before there is one. */
    double suggestedStep();

    /**
     * Sets the step the next advance will try first.
     *
     * @param step positive, or NaN to forget the last one and choose afresh, as before the first advance
     */
    void suggestStep(double step);
}
