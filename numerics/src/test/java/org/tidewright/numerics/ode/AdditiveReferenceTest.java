package org.tidewright.numerics.ode;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.hipparchus.ode.ExpandableODE;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;

/** The additive method against closed forms of stiff exchange and against another code. */
class AdditiveReferenceTest {
    /** What goes on beside the exchange. */
    interface Reaction {
        void add(double time, double[] y, double[] dy);
    }

    /** Equal vessels in a row, each exchanging at a rate with the next. */
    record Row(int size, double rate, Reaction reaction) implements SplitEquations {
        @Override
        public void slopes(double time, double[] y, double[] dy) {
            exchange(y, dy);
            reaction.add(time, y, dy);
        }

        @Override
        public void linearise(double[] state) {}

        @Override
        public int[] exchanged() {
            return IntStream.range(0, size).toArray();
        }

        @Override
        public void exchange(double[] y, double[] product) {
            Arrays.fill(product, 0);
            for (int i = 0; i + 1 < size; i++) {
                double moved = rate * (y[i] - y[i + 1]);
                product[i] -= moved;
                product[i + 1] += moved;
            }
        }

        /** Thomas's elimination for three diagonals. */
        @Override
        public void solve(double shift, double[] right) {
            double s = shift * rate;
            double[] upper = new double[size];
            for (int i = 0; i < size; i++) {
                double diagonal = 1 + (i > 0 ? s : 0) + (i + 1 < size ? s : 0);
                double pivot = i == 0 ? diagonal : diagonal + s * upper[i - 1];
                upper[i] = -s / pivot;
                right[i] = (right[i] + (i == 0 ? 0 : s * right[i - 1])) / pivot;
            }
            for (int i = size - 2; i >= 0; i--) {
                right[i] -= upper[i] * right[i + 1];
            }
        }

        @Override
        public void damp(double shift, double[] change) {
            solve(shift, change);
        }
    }

    /**
     * A row of three has the modes (1, 1, 1), (1, 0, -1) and (1, -2, 1), which decay by 0, e and 3 e; a loss k from each
     * adds k to all.
     */
    @Test
    void threeVesselsInARowFollowTheirThreeModes() {
        double e = 800;
        double k = 0.6;
        Row row = new Row(3, e, (t, y, dy) -> {
            for (int i = 0; i < 3; i++) {
                dy[i] -= k * y[i];
            }
        });
        double[] state = {1, 0.2, 0.6};
        new AdditiveRungeKutta(row, Tolerance.uniform(3, 1e-8, 0)).advance(0, state, 3, List.of(), step -> {});
        double even = (1 + 0.2 + 0.6) / 3 * Math.exp(-k * 3);
        assertThat(state).containsExactly(new double[] {even, even, even}, within(5e-8));

        double soon = 2e-3;
        double[] early = {1, 0.2, 0.6};
        new AdditiveRungeKutta(row, Tolerance.uniform(3, 1e-8, 0)).advance(0, early, soon, List.of(), step -> {});
        double slope = 0.2 * Math.exp(-e * soon);
        double bend = 0.2 * Math.exp(-3 * e * soon);
        double mean = 0.6;
        double loss = Math.exp(-k * soon);
        assertThat(early)
                .containsExactly(
                        new double[] {
                            loss * (mean + slope + bend), loss * (mean - 2 * bend), loss * (mean - slope + bend)
                        },
                        within(2e-7));
    }

    /**
     * What one vessel gains the other loses: y1' = -e (y1 - y2) + a cos wt, y2' = e (y1 - y2) - a cos wt. Their sum stays
     * and their difference ends as 2 a (2 e cos wt + w sin wt) / (4 e^2 + w^2). An error estimate that only damps what the
     * exchange damps sees nothing of it.
     */
    @Test
    void aDifferenceThatSourcesForceAgainstTheExchangeKeepsToAFewTolerances() {
        double e = 1000;
        double w = 3;
        Row row = new Row(2, e, (t, y, dy) -> {
            double moved = e * Math.cos(w * t);
            dy[0] += moved;
            dy[1] -= moved;
        });
        for (double tolerance : new double[] {1e-4, 1e-6, 1e-8}) {
            double[] state = {1.5, 0.5};
            double end = 2.2;
            new AdditiveRungeKutta(row, Tolerance.uniform(2, tolerance, 0))
                    .advance(0, state, end, List.of(), step -> {});
            double difference = 2 * e * (2 * e * Math.cos(w * end) + w * Math.sin(w * end)) / (4 * e * e + w * w);
            assertThat(state[0] - state[1]).as("tolerance " + tolerance).isCloseTo(difference, within(2 * tolerance));
            assertThat(state[0] + state[1]).isCloseTo(2, within(1e-12));
        }
    }

    /** Consumption after Michaelis and Menten in one vessel, production by the hour in another. */
    private static Row nonlinear(double rate) {
        return new Row(3, rate, (t, y, dy) -> {
            dy[0] -= 0.8 * y[0] / (0.3 + y[0]);
            dy[1] += 0.5 + 0.4 * Math.sin(3 * t);
            dy[2] -= 0.1 * y[2] * y[2];
        });
    }

    @Test
    void agreesWithAnExplicitMethodOfOrderEightOfAnotherCodeOnANonlinearSystem() {
        for (double rate : new double[] {0.5, 30, 400}) {
            Row row = nonlinear(rate);
            double[] ours = {1, 0.4, 0.1};
            new AdditiveRungeKutta(row, Tolerance.uniform(3, 1e-9, 0)).advance(0, ours, 6, List.of(), step -> {});
            OrdinaryDifferentialEquation theirs = new OrdinaryDifferentialEquation() {
                @Override
                public int getDimension() {
                    return 3;
                }

                @Override
                public double[] computeDerivatives(double time, double[] y) {
                    double[] slopes = new double[3];
                    row.slopes(time, y, slopes);
                    return slopes;
                }
            };
            double[] reference = new DormandPrince853Integrator(1e-9, 1, 1e-12, 1e-12)
                    .integrate(new ExpandableODE(theirs), new ODEState(0, new double[] {1, 0.4, 0.1}), 6)
                    .getPrimaryState();
            assertThat(ours).as("rate " + rate).containsExactly(reference, within(2e-8));
        }
    }

    /** A row so stiff that its vessels are one: y' = the mean of what goes on in them. */
    @Test
    void theOrderOfTheSlowCourseStaysAtLeastThreeWhereTheExchangeIsAMillionTimesFaster() {
        double coarse = errorOfTheMean(20);
        double fine = errorOfTheMean(40);
        assertThat(Math.log(coarse / fine) / Math.log(2)).isGreaterThan(3);
    }

    private static double errorOfTheMean(int steps) {
        double[] coarse = {0.5, 0.5, 0.5};
        double[] close = coarse.clone();
        equalSteps(nonlinear(1e6), coarse, steps);
        equalSteps(nonlinear(1e6), close, 2000);
        return Math.abs(Arrays.stream(coarse).sum() - Arrays.stream(close).sum());
    }

    private static void equalSteps(Row row, double[] state, int steps) {
        new AdditiveRungeKutta(row, Tolerance.uniform(3, 1, 0)).advanceInEqualSteps(0, state, 4, steps, step -> {});
    }

    @Test
    void betweenStepsTheErrorFallsAtLeastWithTheSquareOfTheStep() {
        for (double rate : new double[] {1, 1e4}) {
            double coarse = errorBetweenSteps(rate, 40);
            double fine = errorBetweenSteps(rate, 80);
            assertThat(Math.log(coarse / fine) / Math.log(2)).as("rate " + rate).isGreaterThan(1.8);
        }
    }

    /** Where all lose by the same k, the vessels stay together: y = exp(-k t), however fast they exchange. */
    private static double errorBetweenSteps(double rate, int steps) {
        Row row = new Row(3, rate, (t, y, dy) -> {
            for (int i = 0; i < 3; i++) {
                dy[i] -= y[i] * (1 + Math.sin(t));
            }
        });
        double[] state = {1, 1, 1};
        double[] between = new double[3];
        double[] worst = new double[1];
        new AdditiveRungeKutta(row, Tolerance.uniform(3, 1, 0)).advanceInEqualSteps(0, state, 4, steps, step -> {
            double time = 0.37 * step.from() + 0.63 * step.to();
            step.at(time, between);
            worst[0] = Math.max(worst[0], Math.abs(between[1] - Math.exp(Math.cos(time) - 1 - time)));
        });
        return worst[0];
    }

    @Test
    void nothingIsAllocatedPerStep() {
        ThreadMXBean thread = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        // Two vessels, whose exchange is solved without scratch memory.
        AdditiveRungeKuttaTest.TwoVessels vessels = new AdditiveRungeKuttaTest.TwoVessels(300, 1, 0.8, new int[1]);
        AdditiveRungeKutta stepper =
                new AdditiveRungeKutta(vessels, Tolerance.uniform(2, 1e-9, 0).withMaximumStep(1e-3));
        int[] steps = new int[1];
        StepListener count = step -> steps[0]++;
        double[] state = {1, 0.3};
        stepper.advance(0, state, 1, List.of(), count);
        steps[0] = 0;
        long before = thread.getCurrentThreadAllocatedBytes();
        stepper.advance(1, state, 21, List.of(), count);
        long allocated = thread.getCurrentThreadAllocatedBytes() - before;
        assertThat(steps[0]).isGreaterThan(10_000);
        assertThat(allocated / steps[0]).isZero();
    }
}
