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
final class HermiteOutput implements StepOutput {
    private final AdditiveStages stages;
    private double[] start = {};
    private double from;
    private double stepEnd;
    private double to = Double.NaN;
    private final int size;
    private final double[] first;
    private final double[] last;
    private boolean prepared;

    HermiteOutput(int size, AdditiveStages stages) {
        this.size = size;
        this.stages = stages;
        first = new double[size];
        last = new double[size];
    }

    @Override
    public void open(double stepFrom, double stepTo, double[] y) {
        from = stepFrom;
        stepEnd = stepTo;
        to = stepTo;
        start = y;
        prepared = false;
    }

    @Override
    public void endAt(double time) {
        to = time;
    }

    @Override
    public void close() {
        to = Double.NaN;
    }

    @Override
    public double from() {
        return from;
    }

    @Override
    public double to() {
        return to;
    }

    @Override
    public void at(double time, double[] state) {
        if (!(time >= from && time <= to)) {
            throw new IllegalArgumentException("Time " + time + " is outside the step from " + from + " to "
                    + (Double.isNaN(to) ? stepEnd + ", which is over" : to));
        }
        if (time == stepEnd) {
            System.arraycopy(stages.result, 0, state, 0, size);
            return;
        }
        double h = stepEnd - from;
        double u = (time - from) / h;
        double v = 1 - u;
        double ofResult = u * u * (3 - 2 * u);
        double ofFirst = h * u * v * v;
        double ofLast = -h * u * u * v;
        if (!prepared) {
            stages.calmSlopes(h, first, last);
            prepared = true;
        }
        for (int i = 0; i < size; i++) {
            state[i] = start[i] + ofResult * (stages.result[i] - start[i]) + ofFirst * first[i] + ofLast * last[i];
        }
    }
}
