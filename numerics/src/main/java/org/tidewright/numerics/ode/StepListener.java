package org.tidewright.numerics.ode;

/** Sees every accepted step, in order, while it is being taken. */
@FunctionalInterface
public interface StepListener {
    /**
     * Called once for each accepted step.
     *
     * @param step the solution over the step, up to the crossing if one ended it; valid during this call only
     */
    void step(Interpolant step);
}
