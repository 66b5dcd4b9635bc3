package org.tidewright.numerics.ode;

import java.util.function.DoubleFunction;

/** Equations whose solution is known in closed form. */
@SuppressWarnings("ArrayRecordComponent") // a fixed start, copied by whoever changes it
record Problem(String name, double[] start, double end, Right right, DoubleFunction<double[]> solution)
        implements Equations {
    /** The right-hand side. */
    interface Right {
        void slopes(double time, double[] state, double[] slope);
    }

    @Override
    public int size() {
        return start.length;
    }

    @Override
    public void slopes(double time, double[] state, double[] slope) {
        right.slopes(time, state, slope);
    }

    @Override
    public String toString() {
        return name;
    }

    /** x'' = -x from x = 1 at rest: x = cos t. */
    static Problem harmonicOscillator() {
        return new Problem(
                "harmonic oscillator",
                new double[] {1, 0},
                10,
                (t, y, dy) -> {
                    dy[0] = y[1];
                    dy[1] = -y[0];
                },
                t -> new double[] {Math.cos(t), -Math.sin(t)});
    }

    /** y' = -y: y = exp(-t). */
    static Problem exponential() {
        return new Problem(
                "exponential", new double[] {1}, 3, (t, y, dy) -> dy[0] = -y[0], t -> new double[] {Math.exp(-t)});
    }

    /** y' = y (1 - y) from 0.1: y = 1 / (1 + 9 exp(-t)). */
    static Problem logistic() {
        return new Problem("logistic", new double[] {0.1}, 6, (t, y, dy) -> dy[0] = y[0] * (1 - y[0]), t ->
                new double[] {1 / (1 + 9 * Math.exp(-t))});
    }

    /** Basin draining over a weir, h' = -k h^1.5: h = (h0^-1/2 + k t / 2)^-2. */
    static Problem weir() {
        double k = 0.8;
        double h0 = 0.04;
        return new Problem(
                "basin draining over a weir",
                new double[] {h0},
                10,
                (t, y, dy) -> dy[0] = -k * y[0] * Math.sqrt(y[0]),
                t -> new double[] {Math.pow(1 / Math.sqrt(h0) + k * t / 2, -2)});
    }

    /** y' = y cos t, which depends on time: y = exp(sin t). */
    static Problem drivenGrowth() {
        return new Problem(
                "growth driven by the hour", new double[] {1}, 6, (t, y, dy) -> dy[0] = y[0] * Math.cos(t), t ->
                        new double[] {Math.exp(Math.sin(t))});
    }
}
