package org.tidewright.numerics.ode;

import java.util.List;

/**
 * Explicit Runge-Kutta stepper of order 5 with an error estimate of order 4, for equations that are not stiff.
 *
 * <p>Dormand and Prince 1980, J. Comput. Appl. Math. 6, 19-26; step choice, first step and dense output after the code
 * DOPRI5 (Hairer, Nørsett and Wanner 1993, Solving Ordinary Differential Equations I, sections II.4-II.6). Crossings are
 * located on the dense output by {@link org.tidewright.numerics.root.Bracketed}, to 1e-12 or closer as far as the digits
 * of time allow. What the right-hand side conserves linearly is conserved to rounding.
 *
 * <p>Same calls, same result, bit for bit. One object serves one thread. Nothing is allocated per step.
 */
public final class DormandPrince {
    /** Below this many last places of time, a step no longer moves it well. */
    private static final double SHORTEST_STEP_IN_LAST_PLACES = 16;

    private static final double ROUNDING_OF_A_STEP = 1e-9;

    private final Equations equations;
    private final Tolerance tolerance;
    private final Stages stages;
    private final StepControl control = new StepControl();
    private final DenseOutput dense;
    private final Crossings crossings;
    private double suggestedStep = Double.NaN;

    /**
     * A stepper for the given equations.
     *
     * @param equations their size must not change; their settings may, between advances
     * @param tolerance with as many absolute parts as there are states
     */
    public DormandPrince(Equations equations, Tolerance tolerance) {
        if (tolerance.size() != equations.size()) {
            throw new IllegalArgumentException("The tolerance has " + tolerance.size() + " absolute parts for "
                    + equations.size() + " states; it must have one each");
        }
        this.equations = equations;
        this.tolerance = tolerance;
        stages = new Stages(equations, tolerance);
        dense = new DenseOutput(equations.size(), stages);
        crossings = new Crossings(equations.size(), dense);
    }

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
    public Stop advance(double time, double[] state, double end, List<? extends Guard> guards, StepListener listener) {
        requireStart(time, state, end);
        double now = time;
        if (now == end) {
            return new Stop(end, new int[0]);
        }
        stages.begin(now, state);
        crossings.begin(now, state, guards);
        control.restart();
        double step = firstStep(now, state, end);
        while (true) {
            double next = nextTime(now, step, end);
            double length = next - now;
            if (next < end && !(length >= SHORTEST_STEP_IN_LAST_PLACES * Math.ulp(now))) {
                int worst = stages.worstState(state);
                throw StepRefused.underflow(worst, now, length, state[worst]);
            }
            double error = stages.attempt(now, next, state);
            if (!(error <= 1)) {
                step = length * control.factorAfterRejection(error);
                continue;
            }
            step = afterAcceptance(step, length, error);
            suggestedStep = step;
            dense.open(now, next, state);
            double crossing = crossings.first();
            if (crossing <= next) {
                return stopAt(crossing, state, listener);
            }
            listener.step(dense);
            dense.close();
            stages.accept(state);
            now = next;
            if (now == end) {
                return new Stop(end, new int[0]);
            }
        }
    }

    /** The step the next advance will try first: the last good one, or NaN before there is one. */
    public double suggestedStep() {
        return suggestedStep;
    }

    /**
     * Sets the step the next advance will try first.
     *
     * @param step positive, or NaN to forget the last one and choose afresh, as before the first advance
     */
    public void suggestStep(double step) {
        if (step <= 0) {
            throw new IllegalArgumentException("Suggested step is " + step + "; it must be positive, or NaN for none");
        }
        suggestedStep = step;
    }

    /** Advances by equal steps whatever their error, to show the order of the method. */
    void advanceInEqualSteps(double time, double[] state, double end, int steps, StepListener listener) {
        requireStart(time, state, end);
        stages.begin(time, state);
        double now = time;
        for (int i = 1; i <= steps; i++) {
            double next = i == steps ? end : time + (end - time) * i / steps;
            stages.attempt(now, next, state);
            dense.open(now, next, state);
            listener.step(dense);
            dense.close();
            stages.accept(state);
            now = next;
        }
    }

    private double firstStep(double now, double[] state, double end) {
        double longest = Math.min(tolerance.maximumStep(), end - now);
        double wanted = Double.isNaN(suggestedStep)
                ? stages.firstStep(now, state, longest)
                : Math.min(suggestedStep, tolerance.maximumStep());
        return Math.max(wanted, 2 * SHORTEST_STEP_IN_LAST_PLACES * Math.ulp(now));
    }

    /** The end if it is within a step; half way there if it is within two, so that no sliver is left for the last. */
    private static double nextTime(double now, double step, double end) {
        double left = end - now;
        if (left <= step * (1 + ROUNDING_OF_A_STEP)) {
            return end;
        }
        return left < 2 * step ? now + left / 2 : now + step;
    }

    /** A step cut short by the end must not make the next advance start small merely because growth is bounded. */
    private double afterAcceptance(double step, double length, double error) {
        double factor = control.factorAfterAcceptance(error);
        double proposed = length * factor;
        if (StepControl.atGreatest(factor)) {
            proposed = Math.max(proposed, step);
        }
        return Math.min(proposed, tolerance.maximumStep());
    }

    private Stop stopAt(double crossing, double[] state, StepListener listener) {
        dense.endAt(crossing);
        listener.step(dense);
        dense.at(crossing, state);
        dense.close();
        return new Stop(crossing, crossings.crossed());
    }

    private void requireStart(double time, double[] state, double end) {
        if (state.length != equations.size()) {
            throw new IllegalArgumentException(
                    "The state has " + state.length + " values; the equations have " + equations.size());
        }
        for (int i = 0; i < state.length; i++) {
            if (!Double.isFinite(state[i])) {
                throw new IllegalArgumentException("State " + i + " is " + state[i] + "; it must be finite");
            }
        }
        if (!Double.isFinite(time) || !(end >= time && end < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "Cannot advance from time " + time + " to " + end + "; the end must be finite and not earlier");
        }
    }
}
