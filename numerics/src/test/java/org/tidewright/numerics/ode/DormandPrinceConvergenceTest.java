package org.tidewright.numerics.ode;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Orders as proved for the pair: 5 for the result, 4 between (Hairer, Nørsett and Wanner 1993, II.5 and II.6). */
class DormandPrinceConvergenceTest {
    private static final int STEPS = 40;

    static Stream<Problem> problems() {
        return Stream.of(
                Problem.harmonicOscillator(),
                Problem.exponential(),
                Problem.logistic(),
                Problem.weir(),
                Problem.drivenGrowth());
    }

    @ParameterizedTest
    @MethodSource("problems")
    void errorOverAFixedTimeFallsWithTheFifthPowerOfTheStep(Problem problem) {
        double order = log2(errorAtEnd(problem, STEPS) / errorAtEnd(problem, 2 * STEPS));
        assertThat(order).isCloseTo(5, within(0.3));
    }

    @ParameterizedTest
    @MethodSource("problems")
    void errorWithinOneStepFallsWithTheFifthPowerOfTheStepAsOrderFourMeans(Problem problem) {
        double step = problem.end() / STEPS;
        double order = log2(errorWithin(problem, step) / errorWithin(problem, step / 2));
        assertThat(order).isCloseTo(5, within(0.5));
    }

    @ParameterizedTest
    @MethodSource("problems")
    void smallerToleranceGivesASmallerErrorOfItsOwnSize(Problem problem) {
        for (double tolerance : new double[] {1e-4, 1e-6, 1e-8, 1e-10}) {
            double[] state = problem.start().clone();
            new DormandPrince(problem, Tolerance.uniform(problem.size(), tolerance, 0))
                    .advance(0, state, problem.end(), java.util.List.of(), step -> {});
            assertThat(distance(state, problem.solution().apply(problem.end())))
                    .as("error at tolerance %s", tolerance)
                    .isLessThan(30 * tolerance);
        }
    }

    private static double errorAtEnd(Problem problem, int steps) {
        double[] state = problem.start().clone();
        new DormandPrince(problem, Tolerance.uniform(problem.size(), 1, 0))
                .advanceInEqualSteps(0, state, problem.end(), steps, step -> {});
        return distance(state, problem.solution().apply(problem.end()));
    }

    private static double errorWithin(Problem problem, double step) {
        double[] worst = new double[1];
        double[] state = problem.start().clone();
        double[] between = new double[problem.size()];
        new DormandPrince(problem, Tolerance.uniform(problem.size(), 1, 0))
                .advanceInEqualSteps(0, state, step, 1, interpolant -> {
                    for (int i = 1; i < 50; i++) {
                        double time = step * i / 50;
                        interpolant.at(time, between);
                        worst[0] = Math.max(
                                worst[0], distance(between, problem.solution().apply(time)));
                    }
                });
        return worst[0];
    }

    private static double distance(double[] a, double[] b) {
        double largest = 0;
        for (int i = 0; i < a.length; i++) {
            largest = Math.max(largest, Math.abs(a[i] - b[i]));
        }
        return largest;
    }

    private static double log2(double x) {
        return Math.log(x) / Math.log(2);
    }
}
