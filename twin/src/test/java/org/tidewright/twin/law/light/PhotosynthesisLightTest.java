package org.tidewright.twin.law.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.tidewright.twin.law.gas.ReefRespiration;

class PhotosynthesisLightTest {
    private static final double HOUR = 3600;

    /** tanh 1 = 0.76159 of the most at the light saturation; tanh 0.1 = 0.099668 at a tenth of it. */
    @Test
    void theCurveIsThatOfJassbyAndPlatt() {
        assertThat(PhotosynthesisLight.gross(1e-5, 200e-6, 200e-6)).isCloseTo(0.76159e-5, within(5e-11));
        assertThat(PhotosynthesisLight.gross(1e-5, 20e-6, 200e-6)).isCloseTo(0.099668e-5, within(5e-12));
        assertThat(PhotosynthesisLight.gross(1e-5, 0, 200e-6)).isZero();
        assertThat(PhotosynthesisLight.gross(1e-5, 0.1, 1e-9)).isEqualTo(1e-5);
    }

    @Test
    void moreLightNeverMakesLess() {
        double last = -1;
        for (double light = 0; light < 3e-3; light += 1e-5) {
            double now = PhotosynthesisLight.gross(5e-6, light, 180e-6);
            assertThat(now).isGreaterThanOrEqualTo(last).isLessThanOrEqualTo(5e-6);
            last = now;
        }
    }

    /** Chisholm 2003: 12.8 to 22.8 mmol/(m^2 h) of oxygen at most. */
    @Test
    void corallineCrustMakesWhatChisholmMeasured() {
        assertThat(Phototroph.CORALLINE_CRUST.most() * 1000 * HOUR).isBetween(12.8, 22.8);
        assertThat(Phototroph.CORALLINE_CRUST.mostHigh() * 1000 * HOUR).isCloseTo(22.8, within(1e-9));
    }

    /** Full light makes a coral three times what it breathes in the dark, 1.8 over 0.6 umol/(cm^2 h). */
    @Test
    void aCoralInFullLightMakesMoreThanItBreathes() {
        double full = PhotosynthesisLight.gross(Phototroph.STONY_CORAL.most(), 0.01, 180e-6);
        assertThat(full / ReefRespiration.CORAL).isCloseTo(3, within(1e-9));
        assertThat(PhotosynthesisLight.net(full, ReefRespiration.CORAL)).isPositive();
        assertThat(PhotosynthesisLight.net(0, ReefRespiration.CORAL)).isEqualTo(-ReefRespiration.CORAL);
    }

    @Test
    void eachRangeHoldsItsUsualValue() {
        for (Phototroph one : Phototroph.values()) {
            assertThat(one.most()).as("%s", one).isBetween(one.mostLow(), one.mostHigh());
            assertThat(one.lightSaturation())
                    .as("%s", one)
                    .isBetween(one.lightSaturationLow(), one.lightSaturationHigh());
        }
    }

    /** Without ramps the day is L P_max tanh(x): 9 h at the saturating light give 9 3600 0.76159 P_max. */
    @Test
    void aSwitchedDayIsItsLengthTimesTheRate() {
        double day = PhotosynthesisLight.grossOfDay(5e-6, 180e-6, 180e-6, 9 * HOUR, 0);
        assertThat(day).isCloseTo(9 * HOUR * 5e-6 * 0.76159, Percentage.withPercentage(0.001));
    }

    /** Against the sum over every second of the day, from dim to glaring. */
    @Test
    void theDaysIntegralIsThatOfItsSeconds() {
        for (double light : new double[] {1e-8, 1e-7, 3e-7, 1e-5, 180e-6, 2e-3, 0.1}) {
            double sum = 0;
            for (int second = 0; second < 86_400; second++) {
                double share = Photoperiod.ramped(second + 0.5, 8 * HOUR, 10 * HOUR, 2 * HOUR);
                sum += PhotosynthesisLight.gross(5e-6, light * share, 180e-6);
            }
            double day = PhotosynthesisLight.grossOfDay(5e-6, light, 180e-6, 10 * HOUR, 2 * HOUR);
            assertThat(day).as("light %s", light).isCloseTo(sum, Percentage.withPercentage(1e-3));
        }
        assertThat(PhotosynthesisLight.grossOfDay(5e-6, 0, 180e-6, 10 * HOUR, 2 * HOUR))
                .isZero();
        assertThat(PhotosynthesisLight.grossOfDay(5e-6, 1e-4, 180e-6, 0, 0)).isZero();
    }

    /** Dim light is used in proportion: the day makes P_max/Ik times the light it had, ramps or not. */
    @Test
    void dimLightIsUsedInProportion() {
        double day = PhotosynthesisLight.grossOfDay(5e-6, 1e-9, 180e-6, 10 * HOUR, 2 * HOUR);
        double light = LightThroughWater.dailyIntegral(1e-9, 10 * HOUR, 2 * HOUR);
        assertThat(day).isCloseTo(5e-6 / 180e-6 * light, Percentage.withPercentage(1e-6));
    }

    /** With both P_max and Ik warmed the slope in dim light stays. */
    @Test
    void warmthLeavesTheSlope() {
        double warm = PhotosynthesisLight.warmth(31);
        assertThat(warm).isCloseTo(Math.sqrt(2), within(1e-12));
        assertThat(PhotosynthesisLight.gross(5e-6 * warm, 1e-9, 180e-6 * warm))
                .isCloseTo(PhotosynthesisLight.gross(5e-6, 1e-9, 180e-6), Percentage.withPercentage(1e-6));
    }

    @Test
    void carbonFollowsByTheQuotient() {
        assertThat(PhotosynthesisLight.carbonTaken(1.1e-6, 1.1)).isCloseTo(1e-6, within(1e-18));
        assertThat(PhotosynthesisLight.carbonTaken(0, 1.1)).isZero();
    }

    @Test
    void refusesNonsense() {
        assertThatThrownBy(() -> PhotosynthesisLight.gross(5e-6, 200, 180e-6)).hasMessageContaining("umol");
        assertThatThrownBy(() -> PhotosynthesisLight.gross(5e-6, Double.NaN, 180e-6))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> PhotosynthesisLight.gross(5e-6, 1e-4, 0)).hasMessageContaining("light saturation");
    }
}
