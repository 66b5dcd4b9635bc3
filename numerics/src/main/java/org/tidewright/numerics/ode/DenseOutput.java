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
final class DenseOutput extends StepOutput {
    private final ExplicitTrial trial;
    private final double[] r2;
    private final double[] r3;
    private final double[] r4;
    private final double[] r5;

    DenseOutput(ExplicitTrial trial) {
        super(trial.result);
        this.trial = trial;
        int size = trial.result.length;
        r2 = new double[size];
        r3 = new double[size];
        r4 = new double[size];
        r5 = new double[size];
    }

    @Override
    void prepare(double length, double[] y0, double[] y1) {
        double[][] k = trial.slopes;
        for (int i = 0; i < y0.length; i++) {
            double change = y1[i] - y0[i];
            double bend = length * k[0][i] - change;
            r2[i] = change;
            r3[i] = bend;
            r4[i] = change - length * k[6][i] - bend;
            r5[i] = length * (D1 * k[0][i] + D3 * k[2][i] + D4 * k[3][i] + D5 * k[4][i] + D6 * k[5][i] + D7 * k[6][i]);
        }
    }

    @Override
    void between(double share, double length, double[] y0, double[] y1, double[] state) {
        double rest = 1 - share;
        for (int i = 0; i < y0.length; i++) {
            state[i] = y0[i] + share * (r2[i] + rest * (r3[i] + share * (r4[i] + rest * r5[i])));
        }
    }
}
