package org.tidewright.numerics.ode;

import static org.tidewright.numerics.ode.Tableau.*;

/**
 * The solution over the last accepted step, of order 4.
 *
 * <pre>
 * y(from + u h) = y0 + u (r2 + (1-u) (r3 + u (r4 + (1-u) r5)))
 * r2 = y1 - y0,  r3 = h k1 - r2,  r4 = r2 - h k7 - r3
 * r5 = h (d1 k1 + d3 k3 + d4 k4 + d5 k5 + d6 k6 + d7 k7)
 * </pre>
 *
 * <p>Hairer, Nørsett and Wanner 1993, section II.6, as in the function CONTD5 of their code DOPRI5. Each term is a sum of
 * slopes, so linear invariants hold between the ends too.
 */
final class DenseOutput implements StepOutput {
    private final Stages stages;
    private final double[] r2;
    private final double[] r3;
    private final double[] r4;
    private final double[] r5;
    private double[] start;
    private double from;
    private double stepEnd;
    private double to = Double.NaN;
    private boolean prepared;

    DenseOutput(int size, Stages stages) {
        this.stages = stages;
        start = new double[size];
        r2 = new double[size];
        r3 = new double[size];
        r4 = new double[size];
        r5 = new double[size];
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
            System.arraycopy(stages.result, 0, state, 0, start.length);
            return;
        }
        if (!prepared) {
            prepare();
        }
        double u = (time - from) / (stepEnd - from);
        double v = 1 - u;
        for (int i = 0; i < start.length; i++) {
            state[i] = start[i] + u * (r2[i] + v * (r3[i] + u * (r4[i] + v * r5[i])));
        }
    }

    private void prepare() {
        double h = stepEnd - from;
        for (int i = 0; i < start.length; i++) {
            double change = stages.result[i] - start[i];
            double bend = h * stages.k1[i] - change;
            r2[i] = change;
            r3[i] = bend;
            r4[i] = change - h * stages.k7[i] - bend;
            r5[i] = h
                    * (D1 * stages.k1[i]
                            + D3 * stages.k3[i]
                            + D4 * stages.k4[i]
                            + D5 * stages.k5[i]
                            + D6 * stages.k6[i]
                            + D7 * stages.k7[i]);
        }
        prepared = true;
    }
}
