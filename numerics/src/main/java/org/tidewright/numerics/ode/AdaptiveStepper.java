package org.tidewright.numerics.ode;

import java.util.List;

/** The loop of steps that every method shares: tries, step choice, crossings, and the account of slopes. */
final class AdaptiveStepper implements Stepper {
    /** Below this many last places of time, a step no longer moves it well. */
    private static final double SHORTEST_STEP_IN_LAST_PLACES = 16;

    private static final double ROUNDING_OF_A_STEP = 1e-9;

    private final Equations equations;
    private final Tolerance tolerance;
    private final Trial trial;
    private final StepOutput output;
    private final StepControl control;
    private final Crossings crossings;
    private final double[] weights;
    private double suggestedStep = Double.NaN;

    AdaptiveStepper(Equations equations, Tolerance tolerance, Trial trial) {
        if (tolerance.size() != equations.size()) {
            throw new IllegalArgumentException("The tolerance has " + tolerance.size() + " absolute parts for "
                    + equations.size() + " states; it must have one each");
        }
        this.equations = equations;
        this.tolerance = tolerance;
        this.trial = trial;
        output = trial.output();
        control = new StepControl(trial.errorOrder());
        crossings = new Crossings(equations.size(), output);
        weights = new double[trial.slopeCount()];
    }

    @Override
    public Stop advance(double time, double[] state, double end, List<? extends Guard> guards, StepListener listener) {
        requireStart(time, state, end);
        double now = time;
        if (now == end) {
            return new Stop(end, new int[0]);
        }
        trial.begin(now, state);
        crossings.begin(now, state, guards);
        control.restart();
        double step = firstStep(now, state, end);
        while (true) {
            double next = nextTime(now, step, end);
            double length = next - now;
            if (next < end && !(length >= SHORTEST_STEP_IN_LAST_PLACES * Math.ulp(now))) {
                int worst = trial.worstState(state);
                throw StepRefused.underflow(worst, now, length, state[worst]);
            }
            double error = trial.attempt(now, next, state);
            if (!(error <= 1)) {
                step = length * control.factorAfterRejection(error);
                continue;
            }
            step = afterAcceptance(step, length, error);
            suggestedStep = step;
            output.open(now, next, state);
            double crossing = crossings.first();
            if (crossing <= next) {
                tellWeights((crossing - now) / length, length);
                return stopAt(crossing, state, listener);
            }
            listener.step(output);
            output.close();
            tellWeights(1, length);
            trial.accept(state);
            now = next;
            if (now == end) {
                return new Stop(end, new int[0]);
            }
        }
    }

    private void tellWeights(double share, double length) {
        trial.weights(share, length, weights);
        equations.advanced(weights);
    }

    @Override
    public double suggestedStep() {
        return suggestedStep;
    }

    @Override
    public void suggestStep(double step) {
        if (step <= 0) {
            throw new IllegalArgumentException("Suggested step is " + step + "; it must be positive, or NaN for none");
        }
        suggestedStep = step;
    }

    /** Advances by equal steps whatever their error, to show the order of a method. */
    void advanceInEqualSteps(double time, double[] state, double end, int steps, StepListener listener) {
        requireStart(time, state, end);
        trial.begin(time, state);
        double now = time;
        for (int i = 1; i <= steps; i++) {
            double next = i == steps ? end : time + (end - time) * i / steps;
            trial.attempt(now, next, state);
            output.open(now, next, state);
            listener.step(output);
            output.close();
            trial.accept(state);
            now = next;
        }
    }

    private double firstStep(double now, double[] state, double end) {
        double longest = Math.min(tolerance.maximumStep(), end - now);
        double wanted = Double.isNaN(suggestedStep)
                ? trial.firstStep(now, state, longest)
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
        output.endAt(crossing);
        listener.step(output);
        output.at(crossing, state);
        output.close();
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
