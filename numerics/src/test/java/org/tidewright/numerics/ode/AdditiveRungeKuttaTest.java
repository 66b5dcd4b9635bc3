package org.tidewright.numerics.ode;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.tidewright.testkit.Draw;
import org.tidewright.testkit.SeededCases;

/** Vessels that exchange their water fast, with something slow going on in them, against closed forms. */
class AdditiveRungeKuttaTest {
    /**
     * Two vessels that exchange at a rate e each way; the first loses by k y. Its exchange is known to the method only by a
     * share, which is 1 where it knows it all.
     *
     * @param evaluations counts calls
     */
    record TwoVessels(double exchangeRate, double loss, double known, int[] evaluations) implements SplitEquations {
        @Override
        public int size() {
            return 2;
        }

        @Override
        public void slopes(double time, double[] y, double[] dy) {
            evaluations[0]++;
            double moved = exchangeRate * (y[0] - y[1]);
            dy[0] = -moved - loss * y[0];
            dy[1] = moved;
        }

        @Override
        public void linearise(double[] state) {}

        @Override
        public int[] exchanged() {
            return new int[] {0, 1};
        }

        @Override
        public void exchange(double[] y, double[] product) {
            double moved = known * exchangeRate * (y[0] - y[1]);
            product[0] = -moved;
            product[1] = moved;
        }

        @Override
        public void solve(double shift, double[] right) {
            double s = shift * known * exchangeRate;
            double sum = right[0] + right[1];
            double difference = (right[0] - right[1]) / (1 + 2 * s);
            right[0] = (sum + difference) / 2;
            right[1] = (sum - difference) / 2;
        }

        @Override
        public void damp(double shift, double[] change) {
            solve(shift, change);
        }

        /** By the two eigenvalues of the matrix. */
        double[] solution(double[] start, double time) {
            double half = loss / 2;
            double root = Math.sqrt(exchangeRate * exchangeRate + half * half);
            double[] values = {-exchangeRate - half + root, -exchangeRate - half - root};
            // Eigenvectors (e, l + e + k) from the first row, l + e = -k/2 +- root.
            double[] second = {half + root, half - root};
            double det = exchangeRate * second[1] - exchangeRate * second[0];
            double a = (start[0] * second[1] - start[1] * exchangeRate) / det;
            double b = (exchangeRate * start[1] - second[0] * start[0]) / det;
            double growA = a * Math.exp(values[0] * time);
            double growB = b * Math.exp(values[1] * time);
            return new double[] {exchangeRate * (growA + growB), second[0] * growA + second[1] * growB};
        }
    }

    @Test
    void errorFallsWithTheFourthPowerOfTheStepHoweverMuchOfTheExchangeIsTakenImplicitly() {
        for (double known : new double[] {0, 0.4, 1, 1.7}) {
            double order = log2(errorInEqualSteps(known, 40) / errorInEqualSteps(known, 80));
            assertThat(order).as("share %s of the exchange known", known).isCloseTo(4, within(0.35));
        }
    }

    private static double errorInEqualSteps(double known, int steps) {
        TwoVessels vessels = new TwoVessels(1, 0.7, known, new int[1]);
        double[] start = {1, 0.2};
        double[] state = start.clone();
        new AdditiveRungeKutta(vessels, Tolerance.uniform(2, 1, 0)).advanceInEqualSteps(0, state, 4, steps, step -> {});
        return distance(state, vessels.solution(start, 4));
    }

    @Test
    void followsTheSlowLossInSlowStepsWhenTheExchangeIsTenThousandTimesFaster() {
        TwoVessels vessels = new TwoVessels(1e4, 1, 1, new int[1]);
        double[] start = {1, 0.3};
        double[] state = start.clone();
        new AdditiveRungeKutta(vessels, Tolerance.uniform(2, 1e-6, 0)).advance(0, state, 5, List.of(), step -> {});
        assertThat(state).containsExactly(vessels.solution(start, 5), within(3e-5));
        assertThat(vessels.evaluations()[0]).isLessThan(1500);
        TwoVessels explicit = new TwoVessels(1e4, 1, 1, new int[1]);
        new DormandPrince(explicit, Tolerance.uniform(2, 1e-6, 0)).advance(0, start.clone(), 5, List.of(), step -> {});
        assertThat(explicit.evaluations()[0]).isGreaterThan(50 * vessels.evaluations()[0]);
    }

    @Test
    void betweenTheEndsOfALongStepAfterAJumpTheSolutionDoesNotSwingOut() {
        TwoVessels vessels = new TwoVessels(1e4, 1, 1, new int[1]);
        double[] start = {1, 0};
        double[] between = new double[2];
        double[] lowest = {1, 1};
        double[] highest = {0, 0};
        new AdditiveRungeKutta(vessels, Tolerance.uniform(2, 1e-3, 0)).advance(0, start, 3, List.of(), step -> {
            for (int i = 1; i < 20; i++) {
                step.at(step.from() + (step.to() - step.from()) * i / 20, between);
                for (int k = 0; k < 2; k++) {
                    lowest[k] = Math.min(lowest[k], between[k]);
                    highest[k] = Math.max(highest[k], between[k]);
                }
            }
        });
        assertThat(Math.min(lowest[0], lowest[1])).isGreaterThan(-1e-3);
        assertThat(Math.max(highest[0], highest[1])).isLessThan(1.001);
    }

    @Test
    void landsOnACrossingWhereTheClosedFormCrosses() {
        TwoVessels vessels = new TwoVessels(2000, 1, 1, new int[1]);
        Guard half = guard((time, y) -> y[0] - 0.25);
        double[] state = {0.5, 0.5};
        Stop stop = new AdditiveRungeKutta(
                        vessels, Tolerance.uniform(2, 1e-8, 0).withMaximumStep(0.05))
                .advance(0, state, 9, List.of(half), step -> {});
        double[] there = vessels.solution(new double[] {0.5, 0.5}, stop.time());
        assertThat(stop.crossed()).containsExactly(0);
        assertThat(state[0]).isCloseTo(0.25, within(1e-9));
        assertThat(there[0] + there[1]).isCloseTo(state[0] + state[1], within(1e-6));
        // Of the difference that the exchange keeps up, 6e-5, the step knows less exactly: it is damped, not followed.
        assertThat(there[0]).isCloseTo(0.25, within(1e-5));
    }

    @Test
    void whatIsOnlyExchangedIsKeptToRoundingOverAHundredThousandSteps() {
        TwoVessels vessels = new TwoVessels(50, 0, 0.9, new int[1]);
        double[] state = {1, 0.1};
        new AdditiveRungeKutta(vessels, Tolerance.uniform(2, 1e-3, 0).withMaximumStep(0.01))
                .advance(0, state, 1000, List.of(), step -> {});
        assertThat(state[0] + state[1]).isCloseTo(1.1, within(1e-14));
    }

    /** Equations that remember every slope by its stage, as those do that keep account. */
    static final class Remembering implements SplitEquations {
        private final int size;
        private final double[][] exchange;
        private final double[] rates;
        private final double[][] slopes = new double[8][];
        final double[] told;
        private int stage;

        Remembering(Draw draw, boolean stiff) {
            size = draw.whole(2, 5);
            exchange = new double[size][size];
            rates = new double[size];
            told = new double[size];
            for (int i = 0; i < size; i++) {
                rates[i] = draw.between(-1, 0.3);
                for (int j = 0; j < size; j++) {
                    if (i != j) {
                        double rate = draw.between(0, stiff ? 30 : 1);
                        exchange[i][j] += rate;
                        exchange[j][j] -= rate;
                    }
                }
            }
        }

        @Override
        public int size() {
            return size;
        }

        @Override
        public void slopes(double time, double[] y, double[] dy) {
            for (int i = 0; i < size; i++) {
                dy[i] = rates[i] * Math.sin(time + y[i]);
                for (int j = 0; j < size; j++) {
                    dy[i] += exchange[i][j] * y[j];
                }
            }
            slopes[stage] = dy.clone();
        }

        @Override
        public void evaluating(int newStage) {
            stage = newStage;
        }

        @Override
        public void carriedOver(int last) {
            slopes[0] = slopes[last];
        }

        @Override
        public void advanced(double[] weights) {
            for (int i = 0; i < weights.length; i++) {
                for (int k = 0; k < size; k++) {
                    told[k] += weights[i] == 0 ? 0 : weights[i] * slopes[i][k];
                }
            }
        }

        @Override
        public void linearise(double[] state) {}

        @Override
        public int[] exchanged() {
            return IntStream.range(0, size).toArray();
        }

        @Override
        public void exchange(double[] y, double[] product) {
            for (int i = 0; i < size; i++) {
                product[i] = 0;
                for (int j = 0; j < size; j++) {
                    product[i] += exchange[i][j] * y[j];
                }
            }
        }

        @Override
        public void damp(double shift, double[] change) {
            solve(shift, change);
        }

        /** By Gauss-Seidel to rounding: the matrix is diagonally dominant by columns. */
        @Override
        public void solve(double shift, double[] right) {
            double[] x = right.clone();
            for (int sweep = 0; sweep < 4000; sweep++) {
                for (int i = 0; i < size; i++) {
                    double rest = right[i];
                    for (int j = 0; j < size; j++) {
                        rest += j == i ? 0 : shift * exchange[i][j] * x[j];
                    }
                    x[i] = rest / (1 - shift * exchange[i][i]);
                }
            }
            System.arraycopy(x, 0, right, 0, size);
        }
    }

    @Test
    void everyStepIsTheSumOfItsSlopesByTheWeightsTold() {
        SeededCases.check(60, draw -> {
            List<Stepper> steppers = new ArrayList<>();
            List<Remembering> remembering = new ArrayList<>();
            for (int i = 0; i < 2; i++) {
                Remembering equations = new Remembering(draw, i > 0);
                Tolerance tolerance =
                        Tolerance.uniform(equations.size(), 1e-4, 0).withMaximumStep(0.5);
                remembering.add(equations);
                steppers.add(
                        i == 0
                                ? new DormandPrince(equations, tolerance)
                                : new AdditiveRungeKutta(equations, tolerance));
            }
            for (int i = 0; i < 2; i++) {
                Remembering equations = remembering.get(i);
                double[] start = IntStream.range(0, equations.size())
                        .mapToDouble(k -> draw.between(0, 1))
                        .toArray();
                double[] state = start.clone();
                double end = draw.between(0.5, 4);
                steppers.get(i).advance(0, state, end, List.of(), step -> {});
                double[] told = equations.told;
                for (int k = 0; k < state.length; k++) {
                    assertThat(told[k]).as("stepper " + i).isCloseTo(state[k] - start[k], within(2e-13));
                }
            }
        });
    }

    @Test
    void aStepCutShortByACrossingOfTheExplicitMethodIsTheSumOfItsSlopesToo() {
        SeededCases.check(60, draw -> {
            Remembering equations = new Remembering(draw, false);
            double[] start = new double[equations.size()];
            Arrays.fill(start, 0.5);
            double[] state = start.clone();
            double mark = draw.between(0.51, 0.8);
            Stop stop = new DormandPrince(equations, Tolerance.uniform(equations.size(), 1e-4, 0))
                    .advance(
                            0,
                            state,
                            5,
                            List.of(guard((time, y) -> y[0] - mark), guard((time, y) -> time - 3.3)),
                            s -> {});
            assertThat(stop.crossed()).isNotEmpty();
            for (int k = 0; k < state.length; k++) {
                assertThat(equations.told[k]).isCloseTo(state[k] - start[k], within(2e-13));
            }
        });
    }

    @Test
    void aStepCutShortMovesInAllWhatItsSlopesMoveInAll() {
        SeededCases.check(60, draw -> {
            Remembering equations = new Remembering(draw, true);
            double[] start = new double[equations.size()];
            Arrays.fill(start, 0.5);
            double[] state = start.clone();
            new AdditiveRungeKutta(equations, Tolerance.uniform(equations.size(), 1e-4, 0))
                    .advance(0, state, 5, List.of(guard((time, y) -> time - 3.3)), s -> {});
            double change = Arrays.stream(state).sum() - Arrays.stream(start).sum();
            assertThat(Arrays.stream(equations.told).sum()).isCloseTo(change, within(2e-13));
        });
    }

    @Test
    void theSameCallsGiveTheSameBits() {
        assertThat(once()).isEqualTo(once());
    }

    private static double[] once() {
        double[] state = {1, 0.3};
        new AdditiveRungeKutta(new TwoVessels(300, 1, 0.8, new int[1]), Tolerance.uniform(2, 1e-5, 1e-5))
                .advance(0, state, 5, List.of(), step -> {});
        return state;
    }

    private interface Value {
        double of(double time, double[] state);
    }

    private static Guard guard(Value value) {
        return new Guard() {
            @Override
            public double value(double time, double[] state) {
                return value.of(time, state);
            }

            @Override
            public Direction direction() {
                return Direction.EITHER;
            }
        };
    }

    private static double distance(double[] left, double[] right) {
        double worst = 0;
        for (int i = 0; i < left.length; i++) {
            worst = Math.max(worst, Math.abs(left[i] - right[i]));
        }
        return worst;
    }

    private static double log2(double value) {
        return Math.log(value) / Math.log(2);
    }
}
