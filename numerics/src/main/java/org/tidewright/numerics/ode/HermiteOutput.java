package org.tidewright.numerics.ode;

/**
 * The solution over the last accepted step as the cubic through both ends with their damped slopes, of order 2 because of
 * that damping. Each term is a sum of slopes, so linear invariants hold between the ends too.
 *
 * <p>After a jump the slope at the start may be steep because of the fast exchange, although the step damps it at once; the
 * cubic would swing far out. So both slopes are passed through the implicit solve, which leaves slow courses as they are
 * and takes from a steep one what the step damps. What is exchanged only changes places, so sums over the exchanging
 * bodies are those of the plain slopes.
 */
final class HermiteOutput extends StepOutput {
    private final AdditiveTrial trial;
    private final double[] first;
    private final double[] last;

    HermiteOutput(AdditiveTrial trial) {
        super(trial.result);
        this.trial = trial;
        first = new double[trial.result.length];
        last = new double[trial.result.length];
    }

    @Override
    void prepare(double length, double[] y0, double[] y1) {
        trial.calmSlopes(length, first, last);
    }

    @Override
    void between(double share, double length, double[] y0, double[] y1, double[] state) {
        double rest = 1 - share;
        double ofResult = share * share * (3 - 2 * share);
        double ofFirst = length * share * rest * rest;
        double ofLast = -length * share * share * rest;
        for (int i = 0; i < y0.length; i++) {
            state[i] = y0[i] + ofResult * (y1[i] - y0[i]) + ofFirst * first[i] + ofLast * last[i];
        }
    }
}
