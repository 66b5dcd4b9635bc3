package org.tidewright.numerics.ode;

/**
 * The equations could not be carried further. The state handed to the stepper is left at the last accepted step, so a
 * caller can still show how it came to this.
 */
public final class StepRefused extends RuntimeException {
    /** What stood in the way. */
    public enum Reason {
        /** A slope was NaN at a finite state, or not finite at an accepted one: the right-hand side is at fault. */
        SLOPE_NOT_FINITE,
        /** The step fell below what the time's last digits can show: a singularity, or a jump that no guard announces. */
        STEP_UNDERFLOW,
        /** A guard was NaN. */
        GUARD_NOT_A_NUMBER
    }

    private static final long serialVersionUID = 1L;

    private final Reason reason;
    private final int index;
    private final double time;
    private final double step;

    private StepRefused(Reason reason, int index, double time, double step, String message) {
        super(message);
        this.reason = reason;
        this.index = index;
        this.time = time;
        this.step = step;
    }

    static StepRefused slope(int state, double time, double step, double slope, double value) {
        return new StepRefused(
                Reason.SLOPE_NOT_FINITE,
                state,
                time,
                step,
                "The slope of state " + state + " is " + slope + " at time " + time + ", where the state is " + value
                        + " (step " + step + "); a slope must be a finite number");
    }

    static StepRefused underflow(int state, double time, double step, double value) {
        return new StepRefused(
                Reason.STEP_UNDERFLOW,
                state,
                time,
                step,
                "The step fell to " + step + " at time " + time + ", too short to move the time; state " + state + " ("
                        + value + " there) kept missing its tolerance");
    }

    static StepRefused guard(int guard, double time, double step) {
        return new StepRefused(
                Reason.GUARD_NOT_A_NUMBER,
                guard,
                time,
                step,
                "Guard " + guard + " is NaN at time " + time + " (step " + step + "); a guard must have a sign");
    }

    public Reason reason() {
        return reason;
    }

    /** Index of the state at fault, or of the guard when the reason is a guard. */
    public int index() {
        return index;
    }

    /** Time at which it happened; for a slope, that of the trial point. */
    public double time() {
        return time;
    }

    /** Length of the step being tried; 0 before the first one. */
    public double step() {
        return step;
    }
}
