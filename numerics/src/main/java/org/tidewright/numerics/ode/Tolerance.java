package org.tidewright.numerics.ode;

import java.util.Arrays;

/**
 * How closely a step must agree with its check: for state i the local error is to stay below
 *
 * <pre>absolute[i] + relative |y[i]|</pre>
 *
 * in root mean square over the states (Hairer, Nørsett and Wanner 1993, Solving Ordinary Differential Equations I,
 * eqs. II.4.10-4.11). States with an infinite tolerance are left out: they only count what flows, and nothing depends on
 * them.
 */
public final class Tolerance {
    private final double[] absolute;
    private final double relative;
    private final double maximumStep;
    private final int judged;
    private final int firstJudged;

    private Tolerance(double[] absolute, double relative, double maximumStep) {
        for (int i = 0; i < absolute.length; i++) {
            if (!(absolute[i] > 0)) {
                throw new IllegalArgumentException(
                        "Absolute tolerance of state " + i + " is " + absolute[i] + "; it must be positive");
            }
        }
        if (!(relative >= 0 && relative < 1)) {
            throw new IllegalArgumentException("Relative tolerance is " + relative + "; it must lie in [0, 1)");
        }
        if (!(maximumStep > 0)) {
            throw new IllegalArgumentException("Maximum step is " + maximumStep + "; it must be positive");
        }
        this.absolute = absolute;
        int first = 0;
        while (first < absolute.length && absolute[first] == Double.POSITIVE_INFINITY) {
            first++;
        }
        firstJudged = first;
        judged = (int) Arrays.stream(absolute).filter(Double::isFinite).count();
        this.relative = relative;
        this.maximumStep = maximumStep;
    }

    /**
     * A tolerance with one absolute part per state and no bound on the step.
     *
     * @param absolute one positive value per state, in that state's unit; infinite for one that is not judged
     * @param relative fraction of the state's size, from 0 to below 1
     */
    public static Tolerance of(double[] absolute, double relative) {
        return new Tolerance(absolute.clone(), relative, Double.POSITIVE_INFINITY);
    }

    /**
     * A tolerance with the same absolute part for every state and no bound on the step.
     *
     * @param size number of states
     * @param absolute positive value for every state
     * @param relative fraction of the state's size, from 0 to below 1
     */
    public static Tolerance uniform(int size, double absolute, double relative) {
        double[] each = new double[size];
        Arrays.fill(each, absolute);
        return new Tolerance(each, relative, Double.POSITIVE_INFINITY);
    }

    /**
     * The same tolerance with no step longer than the one given.
     *
     * @param step longest step allowed, positive
     */
    public Tolerance withMaximumStep(double step) {
        return new Tolerance(absolute, relative, step);
    }

    int size() {
        return absolute.length;
    }

    double maximumStep() {
        return maximumStep;
    }

    /** Root mean square of {@code deviation} in units of the tolerance at states of the given sizes. */
    double norm(double[] deviation, double[] state, double[] other) {
        double sum = 0;
        for (int i = firstJudged; i < absolute.length; i++) {
            double scaled = deviation[i] / allowed(i, Math.max(Math.abs(state[i]), Math.abs(other[i])));
            sum += scaled * scaled;
        }
        return judged == 0 ? 0 : Math.sqrt(sum / judged);
    }

    double allowed(int index, double size) {
        return absolute[index] + relative * size;
    }
}
