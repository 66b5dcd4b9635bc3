package org.tidewright.numerics.ode;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class DormandPrinceTest {
    private static Problem problem(double[] start, Problem.Right right) {
        return new Problem("", start, 0, right, t -> new double[0]);
    }

    /** Three vessels that pass water round in a ring at rates that rise and fall: the total cannot change. */
    private static Problem ring() {
        return problem(new double[] {0.7, 0.2, 0.1}, (t, y, dy) -> {
            double first = (1.3 + Math.sin(t)) * y[0];
            double second = 0.9 * y[1] * y[1];
            double third = (0.7 + 0.5 * Math.cos(3 * t)) * y[2];
            dy[0] = third - first;
            dy[1] = first - second;
            dy[2] = second - third;
        });
    }

    @Test
    void keepsATotalThatTheSlopesKeepOverAHundredThousandSteps() {
        double[] state = ring().start().clone();
        new DormandPrince(ring(), Tolerance.uniform(3, 1, 0)).advanceInEqualSteps(0, state, 1000, 100_000, step -> {});
        // Asked for: 1e-14. Without compensated sums it would be off by some 4e-15.
        assertThat(state[0] + state[1] + state[2]).isCloseTo(1, within(3e-16));
    }

    @Test
    void keepsATotalBetweenTheStepsToo() {
        double[] between = new double[3];
        double[] worst = new double[1];
        new DormandPrince(ring(), Tolerance.uniform(3, 1e-4, 1e-4))
                .advance(0, ring().start().clone(), 50, List.of(), step -> {
                    for (int i = 0; i <= 10; i++) {
                        step.at(step.from() + (step.to() - step.from()) * i / 10, between);
                        worst[0] = Math.max(worst[0], Math.abs(between[0] + between[1] + between[2] - 1));
                    }
                });
        assertThat(worst[0]).isLessThan(1e-14);
    }

    @Test
    void sameCallsGiveTheSameBits() {
        List<double[]> first = trace();
        List<double[]> second = trace();
        assertThat(first).hasSameSizeAs(second);
        for (int i = 0; i < first.size(); i++) {
            assertThat(first.get(i)).containsExactly(second.get(i));
        }
    }

    @Test
    void anAdvanceRemembersNothingOfTheOnesBeforeButTheStep() {
        Tolerance tolerance = Tolerance.uniform(3, 1e-7, 1e-7);
        DormandPrince used = new DormandPrince(ring(), tolerance);
        DormandPrince fresh = new DormandPrince(ring(), tolerance);
        double[] other = {0.1, 0.1, 0.8};
        used.advance(0, other, 5, List.of(), step -> {});
        used.suggestStep(0.5);
        fresh.suggestStep(0.5);
        double[] afterUse = ring().start().clone();
        double[] afresh = ring().start().clone();
        used.advance(1, afterUse, 9, List.of(), step -> {});
        fresh.advance(1, afresh, 9, List.of(), step -> {});
        assertThat(afterUse).containsExactly(afresh);
    }

    @Test
    void aRoundingOwedByOneAdvanceIsNotPaidToTheNext() {
        // Doubles near 1e16 lie 2 apart, so 0.3 is owed; a state at rest at zero must stay there.
        double[] rate = {0.3};
        DormandPrince stepper =
                new DormandPrince(problem(new double[] {0}, (t, y, dy) -> dy[0] = rate[0]), Tolerance.uniform(1, 1, 0));
        double[] large = {1e16};
        stepper.advance(0, large, 1, List.of(), step -> {});
        assertThat(large).containsExactly(1e16);
        rate[0] = 0;
        double[] rest = {0};
        stepper.advance(0, rest, 1, List.of(), step -> {});
        assertThat(rest).containsExactly(0);
    }

    private static List<double[]> trace() {
        List<double[]> trace = new ArrayList<>();
        double[] at = new double[3];
        new DormandPrince(ring(), Tolerance.uniform(3, 1e-7, 1e-7))
                .advance(0, ring().start().clone(), 20, List.of(), step -> {
                    step.at(step.from() / 3 + step.to() / 1.5, at);
                    trace.add(new double[] {step.to(), at[0], at[1], at[2]});
                });
        return trace;
    }

    @Test
    void nothingIsAllocatedPerStep() {
        ThreadMXBean thread = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        DormandPrince stepper = new DormandPrince(ring(), Tolerance.uniform(3, 1e-8, 1e-8));
        int[] steps = new int[1];
        StepListener count = step -> steps[0]++;
        Guard never = new Guard() {
            @Override
            public double value(double time, double[] state) {
                return 1 + state[0];
            }

            @Override
            public Direction direction() {
                return Direction.EITHER;
            }
        };
        List<Guard> guards = List.of(never, never);
        double[] state = ring().start().clone();
        stepper.advance(0, state, 10, guards, count);
        steps[0] = 0;
        long before = thread.getCurrentThreadAllocatedBytes();
        stepper.advance(10, state, 1000, guards, count);
        long allocated = thread.getCurrentThreadAllocatedBytes() - before;
        assertThat(steps[0]).isGreaterThan(10_000);
        assertThat(allocated / steps[0]).isZero();
    }

    @Test
    void stepsFollowOneAnotherToTheEndAndNoneIsLongerThanTheMaximum() {
        List<double[]> spans = new ArrayList<>();
        Tolerance tolerance = Tolerance.uniform(1, 1e-3, 1e-3).withMaximumStep(0.25);
        Stop stop = new DormandPrince(Problem.exponential(), tolerance)
                .advance(1, new double[] {1}, 9.1, List.of(), step -> spans.add(new double[] {step.from(), step.to()}));
        assertThat(stop.time()).isEqualTo(9.1);
        assertThat(stop.reachedEnd()).isTrue();
        assertThat(spans.get(0)[0]).isEqualTo(1.0);
        assertThat(spans.get(spans.size() - 1)[1]).isEqualTo(9.1);
        for (int i = 0; i < spans.size(); i++) {
            assertThat(spans.get(i)[1] - spans.get(i)[0]).isPositive().isLessThanOrEqualTo(0.25 + 1e-9);
            assertThat(i == 0 ? 1 : spans.get(i - 1)[1]).isEqualTo(spans.get(i)[0]);
        }
    }

    @Test
    void endOfAStepReadFromTheInterpolantIsTheStateItself() {
        double[] state = {1, 0};
        double[] start = new double[2];
        double[] end = new double[2];
        double[] before = state.clone();
        new DormandPrince(Problem.harmonicOscillator(), Tolerance.uniform(2, 1e-6, 1e-6))
                .advance(0, state, 10, List.of(), step -> {
                    step.at(step.from(), start);
                    assertThat(start).containsExactly(before);
                    step.at(step.to(), end);
                    System.arraycopy(end, 0, before, 0, 2);
                });
        assertThat(end).containsExactly(state);
    }

    @Test
    void anAdvanceOfNoLengthChangesNothing() {
        double[] state = {0.3};
        DormandPrince stepper = new DormandPrince(Problem.exponential(), Tolerance.uniform(1, 1e-6, 1e-6));
        Stop stop = stepper.advance(4, state, 4, List.of(), step -> {
            throw new AssertionError("no step is to be taken");
        });
        assertThat(stop.time()).isEqualTo(4.0);
        assertThat(state).containsExactly(0.3);
    }

    @Test
    void theLastGoodStepIsTheNextFirstGuessEvenAfterAShortEnd() {
        DormandPrince stepper = new DormandPrince(Problem.harmonicOscillator(), Tolerance.uniform(2, 1e-6, 1e-6));
        assertThat(stepper.suggestedStep()).isNaN();
        double[] state = {1, 0};
        stepper.advance(0, state, 20, List.of(), step -> {});
        double good = stepper.suggestedStep();
        stepper.advance(20, state, 20.001, List.of(), step -> {});
        assertThat(stepper.suggestedStep()).isGreaterThanOrEqualTo(good);
        double[] first = {Double.NaN};
        stepper.suggestStep(0.05);
        stepper.advance(20.001, state, 30, List.of(), step -> {
            if (Double.isNaN(first[0])) {
                first[0] = step.to() - step.from();
            }
        });
        assertThat(first[0]).isCloseTo(0.05, within(1e-12));
        stepper.suggestStep(Double.NaN);
        assertThat(stepper.suggestedStep()).isNaN();
    }

    @Test
    void settingsChangedBetweenAdvancesTakeEffectFromTheFirstSlopeOn() {
        // A constant slope is carried exactly; a slope kept from before the change would show at once.
        double[] rate = {1};
        DormandPrince stepper = new DormandPrince(
                problem(new double[] {0}, (t, y, dy) -> dy[0] = rate[0]), Tolerance.uniform(1, 1e-9, 1e-9));
        double[] state = {0};
        stepper.advance(0, state, 10, List.of(), step -> {});
        rate[0] = -1;
        stepper.advance(10, state, 15, List.of(), step -> {});
        assertThat(state[0]).isCloseTo(5, within(1e-12));
    }

    @Test
    void eachStateHasItsOwnAbsoluteTolerance() {
        // Two unlike copies of one problem: the loosely held one must not be what the steps follow.
        Problem twice = problem(new double[] {1, 0, 1e6, 0}, (t, y, dy) -> {
            dy[0] = y[1];
            dy[1] = -y[0];
            dy[2] = 5 * y[3];
            dy[3] = -5 * y[2];
        });
        int loose = steps(twice, new double[] {1e-6, 1e-6, 1e5, 1e5});
        int tight = steps(twice, new double[] {1e-6, 1e-6, 1, 1});
        assertThat(tight).isGreaterThan(3 * loose);
    }

    private static int steps(Problem problem, double[] absolute) {
        int[] count = new int[1];
        new DormandPrince(problem, Tolerance.of(absolute, 0))
                .advance(0, problem.start().clone(), 20, List.of(), step -> count[0]++);
        return count[0];
    }

    @Test
    void aSlopeThatIsNotANumberIsRefusedWithItsStateTimeAndStep() {
        Problem faulty = problem(new double[] {1, 1}, (t, y, dy) -> {
            dy[0] = 1;
            dy[1] = t > 2 ? Double.NaN : -y[1];
        });
        double[] state = {1, 1};
        DormandPrince stepper = new DormandPrince(faulty, Tolerance.uniform(2, 1e-6, 1e-6));
        assertThatThrownBy(() -> stepper.advance(0, state, 5, List.of(), step -> {}))
                .isInstanceOfSatisfying(StepRefused.class, refused -> {
                    assertThat(refused.reason()).isEqualTo(StepRefused.Reason.SLOPE_NOT_FINITE);
                    assertThat(refused.index()).isEqualTo(1);
                    assertThat(refused.time()).isGreaterThan(2);
                    assertThat(refused.step()).isPositive();
                    assertThat(refused).hasMessageContaining("state 1").hasMessageContaining("NaN");
                });
        // Left at the last accepted step, where y0 = 1 + t and y1 = exp(-t).
        assertThat(state[1]).isCloseTo(Math.exp(1 - state[0]), within(1e-5));
        assertThat(state[0]).isGreaterThan(1);
    }

    @Test
    void anInfiniteSlopeAtTheStartIsRefused() {
        Problem faulty = problem(new double[] {0}, (t, y, dy) -> dy[0] = 1 / y[0]);
        assertThatThrownBy(() -> new DormandPrince(faulty, Tolerance.uniform(1, 1e-6, 1e-6))
                        .advance(0, new double[] {0}, 5, List.of(), step -> {}))
                .isInstanceOfSatisfying(StepRefused.class, refused -> {
                    assertThat(refused.reason()).isEqualTo(StepRefused.Reason.SLOPE_NOT_FINITE);
                    assertThat(refused.step()).isZero();
                });
    }

    @Test
    void aSingularityIsRefusedNearItsTime() {
        // y' = y^2 from 1 is 1 / (1 - t): infinite at t = 1.
        Problem blowUp = problem(new double[] {5, 1}, (t, y, dy) -> {
            dy[0] = 0;
            dy[1] = y[1] * y[1];
        });
        DormandPrince stepper = new DormandPrince(blowUp, Tolerance.uniform(2, 1e-9, 1e-9));
        assertThatThrownBy(() -> stepper.advance(0, new double[] {5, 1}, 3, List.of(), step -> {}))
                .isInstanceOfSatisfying(StepRefused.class, refused -> {
                    assertThat(refused.reason()).isEqualTo(StepRefused.Reason.STEP_UNDERFLOW);
                    assertThat(refused.index()).isEqualTo(1);
                    assertThat(refused.time()).isCloseTo(1, within(1e-6));
                });
    }

    @Test
    void aFirstGuessFarTooLongIsCutNotRefused() {
        // Explicit stages of so long a step run off to infinity; the solution itself, 1 / (2 - t), is tame until 1.9.
        Problem problem = problem(new double[] {0.5}, (t, y, dy) -> dy[0] = y[0] * y[0]);
        DormandPrince stepper = new DormandPrince(problem, Tolerance.uniform(1, 1e-10, 1e-10));
        stepper.suggestStep(1e200);
        double[] state = {0.5};
        stepper.advance(0, state, 1.9, List.of(), step -> {});
        assertThat(state[0]).isCloseTo(10, within(1e-6));
    }

    @Test
    void nonsenseIsRefused() {
        DormandPrince stepper = new DormandPrince(Problem.exponential(), Tolerance.uniform(1, 1e-6, 1e-6));
        assertThatThrownBy(() -> stepper.advance(2, new double[] {1}, 1, List.of(), step -> {}))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("from time 2.0 to 1.0");
        assertThatThrownBy(() -> stepper.advance(0, new double[] {1, 2}, 1, List.of(), step -> {}))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> stepper.advance(0, new double[] {Double.NaN}, 1, List.of(), step -> {}))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("State 0");
        assertThatThrownBy(() -> stepper.suggestStep(0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Tolerance.uniform(1, 0, 1e-6)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Tolerance.uniform(1, 1e-6, -1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Tolerance.uniform(1, 1e-6, 0).withMaximumStep(0))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new DormandPrince(Problem.exponential(), Tolerance.uniform(2, 1e-6, 0)))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void anInterpolantIsRefusedOutsideItsStepAndAfterIt() {
        List<Interpolant> kept = new ArrayList<>();
        new DormandPrince(Problem.exponential(), Tolerance.uniform(1, 1e-6, 1e-6))
                .advance(0, new double[] {1}, 3, List.of(), step -> {
                    kept.add(step);
                    assertThatThrownBy(() -> step.at(step.to() + 1e-3, new double[1]))
                            .isInstanceOf(IllegalArgumentException.class);
                });
        assertThatThrownBy(() -> kept.get(0).at(2.9, new double[1]))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("which is over");
    }
}
