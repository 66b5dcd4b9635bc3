package org.tidewright.twin.law.hydraulic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.tidewright.twin.law.hydraulic.ExampleSystem.DISPLAY_SURFACE;
import static org.tidewright.twin.law.hydraulic.ExampleSystem.FOUR_DIGITS;
import static org.tidewright.twin.law.hydraulic.ExampleSystem.LITRES;
import static org.tidewright.twin.law.hydraulic.ExampleSystem.MILLIMETRES;
import static org.tidewright.twin.law.hydraulic.ExampleSystem.SECTION_3;
import static org.tidewright.twin.law.hydraulic.ExampleSystem.TEETH;

import org.junit.jupiter.api.Test;

class WaveAndSurgeTest {
    @Test
    void theDisplayOfTheExampleSwaysWithItsPeriod() {
        assertThat(StandingWave.period(1.20, 0.55, 1)).isCloseTo(1.312, FOUR_DIGITS);
    }

    @Test
    void inShallowWaterThePeriodIsMerians() {
        // T = 2 L / sqrt(g D); linear theory differs by (k D)^2 / 6 = 1.6e-5 of it at D/L = 1/314.
        double merian = 2 * 3.14 / Math.sqrt(9.80665 * 0.01);
        assertThat(StandingWave.period(3.14, 0.01, 1)).isCloseTo(merian, within(2e-5 * merian));
    }

    @Test
    void inDeepWaterThePeriodForgetsTheDepth() {
        // T = sqrt(4 pi L / g), by hand for L = 1 m: 1.131995 s.
        assertThat(StandingWave.period(1, 10, 1)).isCloseTo(1.131995, within(1e-6));
    }

    @Test
    void aSurgeOfTwentyLitresMovesTheLevelsOfTheExample() {
        Surge surge = Surge.of(20 * LITRES, DISPLAY_SURFACE, SECTION_3);
        assertThat(surge.displayRise()).isCloseTo(29.63 * MILLIMETRES, FOUR_DIGITS);
        assertThat(surge.lastSectionFall()).isCloseTo(179.2 * MILLIMETRES, FOUR_DIGITS);
        assertThat(surge.peakOverflow(TEETH, 0.010)).isEqualTo(TEETH.flow(0.010 + surge.displayRise()));
    }

    @Test
    void nonsenseIsRefused() {
        assertThatThrownBy(() -> StandingWave.period(0, 1, 1)).hasMessageContaining("length of the tank");
        assertThatThrownBy(() -> StandingWave.period(1, 1, 0)).hasMessageContaining("mode");
        assertThatThrownBy(() -> Surge.of(-1, 1, 1)).hasMessageContaining("volume of the surge");
    }
}
