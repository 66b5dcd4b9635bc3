package org.tidewright.twin.law.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class LightThroughWaterTest {
    private static final double HOUR = 3600;

    /** 150 umol/(m^2 s) for 9 h: 150e-6 9 3600 = 4.86 mol/m^2; with ramps of 1 h 4.32. */
    @Test
    void aDayOfLightAddsUpAsWorkedOut() {
        assertThat(LightThroughWater.dailyIntegral(150e-6, 9 * HOUR, 0)).isCloseTo(4.86, within(1e-12));
        assertThat(LightThroughWater.dailyIntegral(150e-6, 9 * HOUR, HOUR)).isCloseTo(4.32, within(1e-12));
        assertThat(LightThroughWater.dailyIntegral(0, 9 * HOUR, HOUR)).isZero();
        assertThat(LightThroughWater.dailyIntegral(150e-6, 0, HOUR)).isZero();
    }

    /** K 0.3 1/m over 0.5 m: exp(-0.15) = 0.8607. */
    @Test
    void halfAMetreLeavesWhatIsWorkedOut() {
        assertThat(LightThroughWater.left(0.3, 0.5)).isCloseTo(0.8607, within(0.00005));
        assertThat(LightThroughWater.left(0.3, 0)).isEqualTo(1);
        assertThat(LightThroughWater.left(0, 5)).isEqualTo(1);
    }

    /** One per cent of the light at 30 m in a lagoon, 105 m offshore (Hochberg et al. 2020): 0.1535 and 0.04386 1/m. */
    @Test
    void theOnePercentDepthGivesTheAttenuation() {
        assertThat(LightThroughWater.attenuationFromOnePercent(30)).isCloseTo(0.1535, within(0.00005));
        assertThat(LightThroughWater.attenuationFromOnePercent(105)).isCloseTo(0.04386, within(0.000005));
        assertThat(LightThroughWater.left(0.1535, 30)).isCloseTo(0.01, within(1e-5));
    }

    /** 400 umol/s, 0.90 through the surface, 0.80 kept, 0.72 m^2, 0.3 m at 0.3 1/m: 365.6 umol/(m^2 s). */
    @Test
    void theAreaMeanIsThatWorkedOut() {
        double mean = LightThroughWater.areaMean(400e-6, 0.90, 0.80, 0.72, LightThroughWater.left(0.3, 0.3));
        assertThat(mean).isCloseTo(365.6e-6, within(0.05e-6));
    }

    /** The mean must be that of many thin slices: midpoints, error (K h)^2/24 over n^2. */
    @Test
    void theMeanOverALayerIsThatOfItsSlices() {
        int slices = 1000;
        double sum = 0;
        for (int i = 0; i < slices; i++) {
            sum += LightThroughWater.left(2, 1.5 * (i + 0.5) / slices);
        }
        assertThat(LightThroughWater.meanLeft(2, 1.5)).isCloseTo(sum / slices, within(1e-6));
        assertThat(LightThroughWater.meanLeft(2, 1.5)).isCloseTo((1 - Math.exp(-3)) / 3, within(1e-15));
    }

    /** To second order the mean is 1 - x/2 + x^2/6, down to no water at all. */
    @Test
    void theMeanOfAThinLayerLosesHalfOfWhatItsBottomLoses() {
        for (double x = 1e-15; x < 1e-3; x *= 10) {
            assertThat(LightThroughWater.meanLeft(x, 1)).isCloseTo(1 - x / 2 + x * x / 6, within(1e-10));
        }
        assertThat(LightThroughWater.meanLeft(0, 0)).isEqualTo(1);
        assertThat(LightThroughWater.meanLeft(1000, 1000)).isCloseTo(1e-6, within(1e-18));
    }

    @Test
    void refusesNonsense() {
        assertThatThrownBy(() -> LightThroughWater.dailyIntegral(150, 9 * HOUR, 0))
                .hasMessageContaining("umol");
        assertThatThrownBy(() -> LightThroughWater.left(Double.NaN, 1)).hasMessageContaining("attenuation");
    }
}
