package org.tidewright.numerics.ode;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleBiFunction;
import org.junit.jupiter.api.Test;

class CrossingsTest {
    private static final double GRAVITY = 9.80665;

    private record Line(Direction direction, ToDoubleBiFunction<Double, double[]> of) implements Guard {
        @Override
        public double value(double time, double[] state) {
            return of.applyAsDouble(time, state);
        }
    }

    private static Guard rising(ToDoubleBiFunction<Double, double[]> of) {
        return new Line(Guard.Direction.RISING, of);
    }

    private static Guard falling(ToDoubleBiFunction<Double, double[]> of) {
        return new Line(Guard.Direction.FALLING, of);
    }

    private static Guard either(ToDoubleBiFunction<Double, double[]> of) {
        return new Line(Guard.Direction.EITHER, of);
    }

    private static Problem problem(double[] start, Problem.Right right) {
        return new Problem("", start, 0, right, t -> new double[0]);
    }

    /** x = cos t, its slope -sin t: zero at pi/2 falling, 3 pi/2 rising, and so on. */
    private static DormandPrince oscillator() {
        return new DormandPrince(Problem.harmonicOscillator(), Tolerance.uniform(2, 1e-12, 1e-12));
    }

    @Test
    void bouncingBallHitsTheFloorAtTheTimesOfTheClosedForm() {
        // Dropped from 1 m: t0 = sqrt(2 h / g); each flight lasts the rebound ratio times the one before, the first 2 r
        // t0.
        double ratio = 0.9;
        Problem ball = problem(new double[] {1, 0}, (t, y, dy) -> {
            dy[0] = y[1];
            dy[1] = -GRAVITY;
        });
        DormandPrince stepper = new DormandPrince(ball, Tolerance.uniform(2, 1e-10, 1e-10));
        List<Guard> floor = List.of(falling((t, y) -> y[0]));
        double[] state = ball.start().clone();
        double drop = Math.sqrt(2 / GRAVITY);
        double expected = drop;
        double flight = 2 * ratio * drop;
        double time = 0;
        for (int bounce = 0; bounce < 20; bounce++) {
            Stop stop = stepper.advance(time, state, 100, floor, step -> {});
            assertThat(stop.crossed()).containsExactly(0);
            assertThat(stop.time()).as("bounce %d", bounce).isCloseTo(expected, within(1e-9));
            assertThat(state[0]).isNotPositive();
            time = stop.time();
            // Lift the ball to the floor: what it fell past it is the location's tolerance.
            state[0] = 0;
            state[1] = -ratio * state[1];
            expected += flight;
            flight *= ratio;
        }
    }

    @Test
    void tankEmptiesWhenTorricellisLawSays() {
        // h' = -k sqrt(h): sqrt(h) = sqrt(h0) - k t / 2, empty at 2 sqrt(h0) / k.
        double k = 0.01;
        Problem tank = problem(new double[] {0.36}, (t, y, dy) -> dy[0] = -k * Math.sqrt(Math.max(0, y[0])));
        double[] state = tank.start().clone();
        DormandPrince stepper = new DormandPrince(tank, Tolerance.uniform(1, 1e-14, 1e-12));
        Stop stop = stepper.advance(0, state, 1000, List.of(falling((t, y) -> y[0])), step -> {});
        assertThat(stop.crossed()).containsExactly(0);
        assertThat(stop.time()).isCloseTo(2 * Math.sqrt(0.36) / k, within(1e-4));
    }

    @Test
    void tankReachesALevelWhenTorricellisLawSays() {
        double k = 0.01;
        Problem tank = problem(new double[] {0.36}, (t, y, dy) -> dy[0] = -k * Math.sqrt(Math.max(0, y[0])));
        double[] state = tank.start().clone();
        DormandPrince stepper = new DormandPrince(tank, Tolerance.uniform(1, 1e-14, 1e-12));
        Stop stop = stepper.advance(0, state, 1000, List.of(falling((t, y) -> y[0] - 0.01)), step -> {});
        assertThat(stop.time()).isCloseTo(2 * (0.6 - 0.1) / k, within(1e-8));
        assertThat(state[0]).isCloseTo(0.01, within(1e-12));
    }

    @Test
    void stopsJustPastTheCrossingSoThatTheNextAdvanceFindsTheNextOne() {
        DormandPrince stepper = oscillator();
        List<Guard> zero = List.of(either((t, y) -> y[0]));
        double[] state = {1, 0};
        double time = 0;
        for (int i = 0; i < 10; i++) {
            double before = Math.signum(zero.get(0).value(time, state));
            Stop stop = stepper.advance(time, state, 100, zero, step -> {});
            assertThat(stop.crossed()).containsExactly(0);
            assertThat(stop.time()).isCloseTo(Math.PI * (i + 0.5), within(2e-10));
            assertThat(Math.signum(zero.get(0).value(stop.time(), state))).isEqualTo(-before);
            time = stop.time();
        }
    }

    @Test
    void countsOnlyItsOwnDirection() {
        double[] state = {1, 0};
        Stop up = oscillator().advance(0, state, 100, List.of(rising((t, y) -> y[0])), step -> {});
        assertThat(up.time()).isCloseTo(1.5 * Math.PI, within(1e-9));
        state = new double[] {1, 0};
        Stop down = oscillator().advance(0, state, 100, List.of(falling((t, y) -> y[0])), step -> {});
        assertThat(down.time()).isCloseTo(0.5 * Math.PI, within(1e-9));
    }

    @Test
    void zeroAtTheStartDoesNotFireAtOnce() {
        // The slope, -sin t, is exactly zero at the start, then falls; it next crosses zero at pi, rising.
        double[] state = {1, 0};
        Stop stop = oscillator().advance(0, state, 100, List.of(either((t, y) -> y[1])), step -> {});
        assertThat(stop.time()).isCloseTo(Math.PI, within(1e-9));
    }

    @Test
    void reachingZeroExactlyAtTheEndFiresThereAndNotAgain() {
        DormandPrince stepper = new DormandPrince(Problem.exponential(), Tolerance.uniform(1, 1e-8, 1e-8));
        List<Guard> timer = List.of(rising((t, y) -> t - 2));
        double[] state = {1};
        Stop stop = stepper.advance(0, state, 2, timer, step -> {});
        assertThat(stop.time()).isEqualTo(2.0);
        assertThat(stop.crossed()).containsExactly(0);
        Stop after = stepper.advance(2, state, 4, timer, step -> {});
        assertThat(after.reachedEnd()).isTrue();
    }

    @Test
    void levelThatComesToRestAtZeroFires() {
        // Falls at unit rate and stays at zero from t = 1 on: never negative.
        Problem clamped = problem(new double[] {1}, (t, y, dy) -> dy[0] = -1);
        double[] state = {1};
        Stop stop = new DormandPrince(clamped, Tolerance.uniform(1, 1e-9, 0))
                .advance(0, state, 3, List.of(falling((t, y) -> Math.max(0, y[0]))), step -> {});
        assertThat(stop.crossed()).containsExactly(0);
        assertThat(stop.time()).isCloseTo(1, within(1e-9));
    }

    @Test
    void twoCrossingsWithinOneStepAreFound() {
        // One step from 0 to 10 over a guard positive from 2.2 to 2.9 only: the points between the ends must show it.
        Problem still = problem(new double[] {0}, (t, y, dy) -> dy[0] = 1);
        DormandPrince stepper = new DormandPrince(still, Tolerance.uniform(1, 1, 0));
        List<Guard> window = List.of(either((t, y) -> (y[0] - 2.2) * (2.9 - y[0])));
        stepper.suggestStep(10);
        double[] state = {0};
        Stop enter = stepper.advance(0, state, 10, window, step -> {});
        assertThat(enter.time()).isCloseTo(2.2, within(1e-9));
        Stop leave = stepper.advance(enter.time(), state, 10, window, step -> {});
        assertThat(leave.time()).isCloseTo(2.9, within(1e-9));
        assertThat(stepper.advance(leave.time(), state, 10, window, step -> {}).reachedEnd())
                .isTrue();
    }

    @Test
    void guardsThatCrossTogetherStopTogether() {
        double[] state = {1, 0};
        List<Guard> guards = List.of(
                falling((t, y) -> y[0]),
                rising((t, y) -> t - 5),
                rising((t, y) -> -7 * y[0]),
                rising((t, y) -> t - Math.PI / 2 - 5e-13));
        Stop stop = oscillator().advance(0, state, 100, guards, step -> {});
        assertThat(stop.crossed()).containsExactly(0, 2, 3);
        for (int crossed : stop.crossed()) {
            assertThat(guards.get(crossed).value(stop.time(), state) * (crossed == 0 ? -1 : 1))
                    .isPositive();
        }
    }

    @Test
    void guardsThatCrossAtDifferentTimesStopOneAfterTheOther() {
        DormandPrince stepper = new DormandPrince(Problem.exponential(), Tolerance.uniform(1, 1e-4, 1e-4));
        List<Guard> timers =
                List.of(rising((t, y) -> t - 2.000001), rising((t, y) -> t - 2), rising((t, y) -> t - 2.00000001));
        double[] state = {1};
        List<Integer> order = new ArrayList<>();
        Stop stop = new Stop(0, new int[0]);
        do {
            stop = stepper.advance(stop.time(), state, 3, timers, step -> {});
            for (int crossed : stop.crossed()) {
                order.add(crossed);
            }
        } while (!stop.reachedEnd());
        assertThat(order).containsExactly(1, 2, 0);
    }

    @Test
    void guardsAMicrosecondApartAreToldApartHoweverLongTheStep() {
        // The slope is constant, so one step of a million seconds is exact.
        Problem clock = problem(new double[] {0}, (t, y, dy) -> dy[0] = 1);
        DormandPrince stepper = new DormandPrince(clock, Tolerance.uniform(1, 1, 0));
        stepper.suggestStep(1e6);
        double[] state = {0};
        List<Guard> timers = List.of(rising((t, y) -> y[0] - 1.000001), rising((t, y) -> y[0] - 1));
        Stop first = stepper.advance(0, state, 1e6, timers, step -> {});
        assertThat(first.crossed()).containsExactly(1);
        Stop second = stepper.advance(first.time(), state, 1e6, timers, step -> {});
        assertThat(second.crossed()).containsExactly(0);
        assertThat(second.time() - first.time()).isCloseTo(1e-6, within(1e-9));
    }

    @Test
    void guardInTheOtherDirectionNearbyDoesNotFire() {
        // Guard 1 rises through zero at 2 only in the wrong direction; it must not be swept along with guard 0.
        DormandPrince stepper = new DormandPrince(Problem.exponential(), Tolerance.uniform(1, 1e-4, 1e-4));
        double[] state = {1};
        Stop stop =
                stepper.advance(0, state, 3, List.of(rising((t, y) -> t - 2), falling((t, y) -> t - 1.9)), step -> {});
        assertThat(stop.crossed()).containsExactly(0);
    }

    @Test
    void switchesADiscontinuousRightHandSideAtTheEvent() {
        // Heater with a band: warms at 1/h below 26, and cools as T' = -0.5 (T - 20) above; switch points in closed
        // form.
        class Heater implements Equations {
            private boolean on = true;

            @Override
            public int size() {
                return 1;
            }

            @Override
            public void slopes(double time, double[] state, double[] slope) {
                slope[0] = on ? 1 : -0.5 * (state[0] - 20);
            }
        }
        Heater heater = new Heater();
        DormandPrince stepper = new DormandPrince(heater, Tolerance.uniform(1, 1e-11, 1e-11));
        List<Guard> thermostat = List.of(rising((t, y) -> y[0] - 26), falling((t, y) -> y[0] - 25));
        double[] state = {25.5};
        double time = 0;
        double expected = 0.5;
        for (int i = 0; i < 12; i++) {
            Stop stop = stepper.advance(time, state, 1000, thermostat, step -> {});
            assertThat(stop.crossed()).containsExactly(heater.on ? 0 : 1);
            assertThat(stop.time()).as("switch %d", i).isCloseTo(expected, within(1e-8));
            heater.on = !heater.on;
            time = stop.time();
            expected += heater.on ? 1 : Math.log(6.0 / 5) / 0.5;
        }
    }

    @Test
    void listenerSeesTheSolutionUpToTheCrossingOnly() {
        double[] state = {1, 0};
        List<double[]> spans = new ArrayList<>();
        double[] atEnd = new double[2];
        Stop stop = oscillator().advance(0, state, 100, List.of(falling((t, y) -> y[0])), step -> {
            spans.add(new double[] {step.from(), step.to()});
            step.at(step.to(), atEnd);
        });
        assertThat(spans.get(spans.size() - 1)[1]).isEqualTo(stop.time());
        assertThat(atEnd).containsExactly(state);
        for (int i = 1; i < spans.size(); i++) {
            assertThat(spans.get(i)[0]).isEqualTo(spans.get(i - 1)[1]);
        }
    }

    @Test
    void locatesWithinTheDigitsOfTimeLateInALongRun() {
        // A year of seconds: one last place of time is 3.7e-9 s there.
        double year = 31_557_600;
        Problem clock = problem(new double[] {0}, (t, y, dy) -> dy[0] = 1);
        double[] state = {0};
        Stop stop = new DormandPrince(clock, Tolerance.uniform(1, 1e-6, 0))
                .advance(year, state, year + 1000, List.of(rising((t, y) -> y[0] - 123.456)), step -> {});
        assertThat(stop.time()).isCloseTo(year + 123.456, within(5 * Math.ulp(year)));
        assertThat(state[0]).isGreaterThan(123.456);
    }

    @Test
    void guardThatIsNotANumberIsRefusedByItsNumber() {
        double[] state = {1, 0};
        List<Guard> guards = List.of(rising((t, y) -> t - 50), rising((t, y) -> Math.sqrt(3 - t)));
        assertThatThrownBy(() -> oscillator().advance(0, state, 100, guards, step -> {}))
                .isInstanceOfSatisfying(StepRefused.class, refused -> {
                    assertThat(refused.reason()).isEqualTo(StepRefused.Reason.GUARD_NOT_A_NUMBER);
                    assertThat(refused.index()).isEqualTo(1);
                    assertThat(refused.time()).isGreaterThan(3);
                });
    }
}
