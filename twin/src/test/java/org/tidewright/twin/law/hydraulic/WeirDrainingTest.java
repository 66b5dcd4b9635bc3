package org.tidewright.twin.law.hydraulic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.tidewright.twin.law.hydraulic.ExampleSystem.DISPLAY_SURFACE;
import static org.tidewright.twin.law.hydraulic.ExampleSystem.FOUR_DIGITS;
import static org.tidewright.twin.law.hydraulic.ExampleSystem.RUNNING_HEAD;
import static org.tidewright.twin.law.hydraulic.ExampleSystem.TEETH;

import org.junit.jupiter.api.Test;

class WeirDrainingTest {
    private final WeirDraining display = WeirDraining.over(TEETH, DISPLAY_SURFACE);

    @Test
    void theDisplayOfTheExampleDrainsToAFilmInItsTime() {
        assertThat(display.timeBetween(RUNNING_HEAD, Weir.FILM_HEAD)).isCloseTo(92.78, FOUR_DIGITS);
    }

    @Test
    void theDisplayOfTheExampleAnswersItsWeirWithItsTimeConstant() {
        assertThat(display.timeConstant(RUNNING_HEAD)).isCloseTo(10.33, FOUR_DIGITS);
    }

    @Test
    void headAfterTheTimeBetweenTwoHeadsIsTheSecond() {
        double time = display.timeBetween(0.02, 0.003);
        assertThat(display.headAfter(time, 0.02)).isCloseTo(0.003, within(1e-15));
    }

    @Test
    void whatTheClosedFormLosesRanOverTheWeir() {
        // Simpson's rule over Q(h(t)); the two sides share no formula but Q = C h^1.5.
        double end = 60;
        int steps = 6000;
        double sum = 0;
        for (int i = 0; i <= steps; i++) {
            int weight = i == 0 || i == steps ? 1 : i % 2 == 1 ? 4 : 2;
            sum += weight * TEETH.flow(display.headAfter(end * i / steps, 0.02));
        }
        double ranOver = sum * end / steps / 3;
        assertThat(ranOver).isCloseTo(DISPLAY_SURFACE * (0.02 - display.headAfter(end, 0.02)), within(1e-12));
    }

    @Test
    void risingHeadsAreRefused() {
        assertThatThrownBy(() -> display.timeBetween(0.001, 0.02)).hasMessageContaining("no less than the last head");
        assertThatThrownBy(() -> display.timeBetween(0.02, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> display.headAfter(Double.NaN, 0.02)).isInstanceOf(IllegalArgumentException.class);
    }
}
