package org.tidewright.twin.law.hydraulic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class DrownedWeirTest {
    @Test
    void halfDrownedItPassesWhatVillemonteSays() {
        // (1 - 0.5^1.5)^0.385 by hand: 0.6464466^0.385 = exp(0.385 x -0.4362647) = 0.8453860.
        assertThat(DrownedWeir.submergenceFactor(0.02, 0.01)).isCloseTo(0.8453860, within(1e-6));
    }

    @Test
    void ninetyHundredthsDrownedItPassesWhatVillemonteSays() {
        // 0.9^1.5 = 0.8538150; 0.1461850^0.385 = exp(0.385 x -1.9228821) = 0.4769662.
        assertThat(DrownedWeir.submergenceFactor(0.02, 0.018)).isCloseTo(0.4769662, within(1e-6));
    }

    @Test
    void belowTheCrestTheLowerWaterDoesNotMatter() {
        assertThat(DrownedWeir.submergenceFactor(0.02, -0.1)).isEqualTo(1);
        assertThat(DrownedWeir.submergenceFactor(-0.02, -0.1)).isEqualTo(1);
    }

    @Test
    void atEqualLevelsNothingFlows() {
        assertThat(DrownedWeir.flow(new FrancisWeir(0.3, 0), 0.05, 0.05)).isZero();
    }

    @Test
    void levelsThatAreNotNumbersAreRefused() {
        assertThatThrownBy(() -> DrownedWeir.submergenceFactor(Double.NaN, 0.01))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> DrownedWeir.submergenceFactor(0.01, Double.NaN))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
