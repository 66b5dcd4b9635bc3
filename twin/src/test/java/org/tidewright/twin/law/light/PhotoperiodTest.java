package org.tidewright.twin.law.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class PhotoperiodTest {
    private static final double HOUR = 3600;

    /** On at 10:00 for 9 h with ramps of 1 h: half at 10:30 and 18:30, full from 11:00 to 18:00, dark at 19:00. */
    @Test
    void theLampFollowsItsTimer() {
        assertThat(timer(9.99)).isZero();
        assertThat(timer(10)).isZero();
        assertThat(timer(10.5)).isCloseTo(0.5, within(1e-12));
        assertThat(timer(11)).isEqualTo(1);
        assertThat(timer(15)).isEqualTo(1);
        assertThat(timer(18.5)).isCloseTo(0.5, within(1e-12));
        assertThat(timer(19)).isZero();
        assertThat(timer(3)).isZero();
    }

    private static double timer(double hour) {
        return Photoperiod.ramped(hour * HOUR, 10 * HOUR, 9 * HOUR, HOUR);
    }

    /** A reversed light, on at 20:00 for 10 h: full at midnight and at 02:00, dark at 06:00 and noon. */
    @Test
    void aReversedLightShinesThroughMidnight() {
        for (double days : new double[] {-3, 0, 1, 1000}) {
            double midnight = days * Photoperiod.DAY;
            assertThat(reversed(midnight)).isEqualTo(1);
            assertThat(reversed(midnight + 2 * HOUR)).isEqualTo(1);
            assertThat(reversed(midnight + 5.5 * HOUR)).isCloseTo(0.5, within(1e-9));
            assertThat(reversed(midnight + 6 * HOUR)).isZero();
            assertThat(reversed(midnight + 12 * HOUR)).isZero();
            assertThat(reversed(midnight + 20.5 * HOUR)).isCloseTo(0.5, within(1e-9));
        }
    }

    private static double reversed(double time) {
        return Photoperiod.ramped(time, 20 * HOUR, 10 * HOUR, HOUR);
    }

    @Test
    void withoutRampsItSwitches() {
        assertThat(Photoperiod.ramped(10 * HOUR, 10 * HOUR, 9 * HOUR, 0)).isEqualTo(1);
        assertThat(Photoperiod.ramped(18.999 * HOUR, 10 * HOUR, 9 * HOUR, 0)).isEqualTo(1);
        assertThat(Photoperiod.ramped(19 * HOUR, 10 * HOUR, 9 * HOUR, 0)).isZero();
        assertThat(Photoperiod.ramped(10 * HOUR, 10 * HOUR, 0, 0)).isZero();
        assertThat(Photoperiod.ramped(3 * HOUR, 10 * HOUR, Photoperiod.DAY, 0)).isEqualTo(1);
    }

    /** Ramps longer than half the day meet in the middle: a triangle, full at its height. */
    @Test
    void rampsTooLongMeetInTheMiddle() {
        assertThat(Photoperiod.ramped(12 * HOUR, 10 * HOUR, 4 * HOUR, 10 * HOUR))
                .isEqualTo(1);
        assertThat(Photoperiod.ramped(11 * HOUR, 10 * HOUR, 4 * HOUR, 10 * HOUR))
                .isCloseTo(0.5, within(1e-12));
        assertThat(Photoperiod.meanOfRamped(4 * HOUR, 10 * HOUR)).isCloseTo(2.0 / 24, within(1e-15));
    }

    /** sin 45 deg a quarter of the day after sunrise, sin 90 deg at noon. */
    @Test
    void theSunStandsHighestAtNoon() {
        assertThat(Photoperiod.halfSine(12 * HOUR, 6 * HOUR, 12 * HOUR)).isEqualTo(1);
        assertThat(Photoperiod.halfSine(9 * HOUR, 6 * HOUR, 12 * HOUR)).isCloseTo(Math.sqrt(0.5), within(1e-12));
        assertThat(Photoperiod.halfSine(6 * HOUR, 6 * HOUR, 12 * HOUR)).isZero();
        assertThat(Photoperiod.halfSine(18 * HOUR, 6 * HOUR, 12 * HOUR)).isZero();
        assertThat(Photoperiod.halfSine(0, 6 * HOUR, 12 * HOUR)).isZero();
        assertThat(Photoperiod.halfSine(0, 6 * HOUR, 0)).isZero();
    }

    @Test
    void theMeansAreThoseOfTheSumOverTheDay() {
        int steps = 86_400;
        double ramped = 0;
        double sun = 0;
        for (int second = 0; second < steps; second++) {
            ramped += Photoperiod.ramped(second + 0.5, 20 * HOUR, 10 * HOUR, HOUR) / steps;
            sun += Photoperiod.halfSine(second + 0.5, 20 * HOUR, 10 * HOUR) / steps;
        }
        assertThat(Photoperiod.meanOfRamped(10 * HOUR, HOUR)).isCloseTo(ramped, within(1e-9));
        assertThat(Photoperiod.meanOfRamped(10 * HOUR, HOUR)).isCloseTo(9.0 / 24, within(1e-15));
        assertThat(Photoperiod.meanOfHalfSine(10 * HOUR)).isCloseTo(sun, within(1e-8));
    }

    @Test
    void aSliverBeforeTheStartIsDark() {
        assertThat(Photoperiod.ramped(-1e-30, 0, 9 * HOUR, HOUR)).isZero();
        assertThat(Photoperiod.ramped(Math.nextDown(10 * HOUR), 10 * HOUR, 9 * HOUR, HOUR))
                .isZero();
    }

    @Test
    void refusesNonsense() {
        assertThatThrownBy(() -> Photoperiod.ramped(0, 0, 9e4, 0)).hasMessageContaining("photoperiod 90000.0 s");
        assertThatThrownBy(() -> Photoperiod.halfSine(Double.NaN, 0, 9 * HOUR)).hasMessageContaining("time of day");
    }
}
