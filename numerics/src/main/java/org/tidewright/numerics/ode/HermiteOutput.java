package org.tidewright.numerics.ode;

/**
 * The solution over the last accepted step as the cubic through both ends with their slopes, of order 3. Each term is a sum
 * of slopes, so linear invariants hold between the ends too.
 *
 * <p>On the slow course of stiff equations both slopes are slow, and so is the cubic between them.
 */
final class HermiteOutput implements StepOutput {
    private final AdditiveStages stages;
    private double[] start = {};
    private double from;
    private double stepEnd;
    private double to = Double.NaN;
    private final int size;

    HermiteOutput(int size, AdditiveStages stages) {
        this.size = size;
        this.stages = stages;
    }

    @Override
    public void open(double stepFrom, double stepTo, double[] y) {
        from = stepFrom;
        stepEnd = stepTo;
        to = stepTo;
        start = y;
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
        double[] first = stages.slopes[0];
        double[] last = stages.slopes[stages.slopes.length - 1];
        for (int i = 0; i < size; i++) {
            state[i] = start[i] + ofResult * (stages.result[i] - start[i]) + ofFirst * first[i] + ofLast * last[i];
        }
    }
}
