package org.tidewright.husbandry.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.estimate.Known;

class StabilityTest {
    @Test
    void levelsThatAreKnownAreCounted() {
        Known[] levels = Arrays.stream(new double[] {7.0, 8.0, 8.0, 9.0})
                .mapToObj(level -> new Known(level, 0))
                .toArray(Known[]::new);
        Stability stability = Stability.of(4, levels, 7.5, 8.5);
        assertThat(stability.inRange().value()).isEqualTo(0.5);
        assertThat(stability.inRange().standardError()).isZero();
        // By hand: variance (1 + 0 + 0 + 1) / 4.
        assertThat(stability.variation()).isCloseTo(Math.sqrt(0.5), within(1e-12));
    }

    @Test
    void whatIsNotKnownOfALevelCountsAsVariationAndAsDoubt() {
        Known[] levels = new Known[30];
        Arrays.fill(levels, new Known(8.5, 0.2));
        Stability stability = Stability.of(30, levels, 7.5, 8.5);
        // Half of a normal about the upper end lies within, the lower end is five errors away.
        assertThat(stability.inRange().value()).isCloseTo(0.5, within(1e-6));
        // sqrt(30 · 0.25 · 7) / 30
        assertThat(stability.inRange().standardError()).isCloseTo(0.2415, within(1e-4));
        assertThat(stability.variation()).isCloseTo(0.2, within(1e-9));
    }

    @Test
    void moreLevelsOfADayMakeItNoSurer() {
        Known[] once = new Known[30];
        Arrays.fill(once, new Known(8.5, 0.2));
        Known[] fourTimes = new Known[120];
        Arrays.fill(fourTimes, new Known(8.5, 0.2));
        Stability stability = Stability.of(30, fourTimes, 7.5, 8.5);
        assertThat(stability.inRange().standardError())
                .isCloseTo(Stability.of(30, once, 7.5, 8.5).inRange().standardError(), within(1e-12));
    }

    @Test
    void whatAProbeMayBeOffByMakesTheShareDoubtful() {
        double[] shown = new double[720];
        Arrays.fill(shown, 8.5);
        Stability sure = Stability.ofProbe(shown, new Known(0.2, 0), 30, 7.5, 8.5);
        assertThat(sure.inRange().value()).isEqualTo(1);
        assertThat(sure.inRange().standardError()).isZero();
        assertThat(sure.variation()).isCloseTo(0, within(1e-9));
        // On the upper end, and as likely too high as too low: in or out for all the time, half and half.
        Stability torn = Stability.ofProbe(shown, new Known(0, 0.2), 30, 7.5, 8.5);
        assertThat(torn.inRange().value()).isCloseTo(0.5, within(0.02));
        assertThat(torn.inRange().standardError()).isCloseTo(0.5, within(0.01));
        assertThat(torn.probed()).isTrue();
    }
}
