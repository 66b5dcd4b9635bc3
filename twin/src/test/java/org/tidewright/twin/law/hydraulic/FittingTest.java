package org.tidewright.twin.law.hydraulic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class FittingTest {
    @ParameterizedTest
    @EnumSource
    void usualLossLiesInItsRange(Fitting fitting) {
        assertThat(fitting.usualLoss()).isBetween(fitting.leastLoss(), fitting.mostLoss());
    }

    @ParameterizedTest
    @EnumSource
    void nameInTextsLeadsBackToTheFitting(Fitting fitting) {
        assertThat(fitting.text()).matches("[a-z][a-z0-9_]*");
        assertThat(Fitting.fromText(fitting.text())).contains(fitting);
    }

    @Test
    void anUnknownNameIsEmptyNotAnError() {
        assertThat(Fitting.fromText("flux_capacitor")).isEmpty();
        assertThat(Fitting.fromText("ELBOW_90")).isEmpty();
    }

    @Test
    void aNozzleOfHalfTheBoreLosesSixteenVelocityHeads() {
        assertThat(Fitting.nozzleLoss(0.025, 0.0125)).isCloseTo(16, within(1e-12));
        assertThat(Fitting.nozzleLoss(0.025, 0.025)).isEqualTo(1);
    }

    @Test
    void anElbowIsWorthItsEquivalentLength() {
        // By hand: 0.9 x 25 mm / 0.02115 = 1.0638 m.
        assertThat(Fitting.equivalentLength(0.9, 0.025, 0.02115)).isCloseTo(1.0638, within(1e-4));
    }

    @Test
    void nonsenseIsRefused() {
        assertThatThrownBy(() -> Fitting.nozzleLoss(0.025, 0.030)).hasMessageContaining("bore of the nozzle");
        assertThatThrownBy(() -> Fitting.nozzleLoss(0.025, 0)).hasMessageContaining("bore of the nozzle");
        assertThatThrownBy(() -> Fitting.stepLoss(0, 0.02)).hasMessageContaining("first bore");
        assertThatThrownBy(() -> Fitting.equivalentLength(1, 0.025, 0)).hasMessageContaining("friction factor");
    }
}
