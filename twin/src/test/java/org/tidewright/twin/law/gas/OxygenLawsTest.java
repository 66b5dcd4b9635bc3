package org.tidewright.twin.law.gas;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class OxygenLawsTest {
    /** Clarke and Johnston 1999, abstract: six times as much at 30 as at 0 degC, Q10 between species 1.83. */
    @Test
    void tropicalFishUseSixTimesAsMuchAsPolarOnes() {
        double ratio = FishRespiration.resting(0.05, 30) / FishRespiration.resting(0.05, 0);
        assertThat(ratio).isCloseTo(6, within(0.5));
        assertThat(Math.cbrt(ratio)).isCloseTo(1.83, within(0.005));
    }

    @Test
    void aWarmedFishUsesMoreThanOneThatLivesWarm() {
        double warmed = FishRespiration.active(0.02, 25, 30, 1);
        assertThat(warmed / FishRespiration.resting(0.02, 25)).isCloseTo(Math.sqrt(2.4), within(1e-12));
        assertThat(warmed).isGreaterThan(FishRespiration.resting(0.02, 30));
        assertThat(FishRespiration.active(0.02, 25, 25, 2) / FishRespiration.resting(0.02, 25))
                .isEqualTo(2);
    }

    @Test
    void tenKelvinMultiplyByQ10() {
        assertThat(Q10.factor(2, 26, 16)).isCloseTo(2, within(1e-15));
        assertThat(Q10.factor(2.4, 20, 30)).isCloseTo(1 / 2.4, within(1e-15));
        assertThat(ReefRespiration.ofRock(10, 31) / ReefRespiration.ofRock(10, 26))
                .isCloseTo(Math.sqrt(2), within(1e-12));
    }

    @Test
    void halfTheRespirationIsLeftAtHalfSaturation() {
        assertThat(OxygenLimitation.share(0.047, 0.047)).isEqualTo(0.5);
        assertThat(OxygenLimitation.share(0, 0.047)).isZero();
        assertThat(OxygenLimitation.share(-1e-12, 0.047)).isZero();
        assertThat(OxygenLimitation.share(0.47, 0.047)).isCloseTo(10.0 / 11, within(1e-12));
    }

    /**
     * At Sc = 600 the normalised velocity is the velocity, whatever the exponent; four times 600 halves it at n = 1/2.
     */
    @Test
    void theNormalisedVelocityIsThatAtSixHundred() {
        assertThat(GasTransfer.velocity(1e-5, 600, GasTransfer.SMOOTH)).isEqualTo(1e-5);
        assertThat(GasTransfer.velocity(1e-5, 2400, GasTransfer.RIPPLED)).isCloseTo(5e-6, within(1e-18));
    }

    @Test
    void gasLeavesSupersaturatedWater() {
        assertThat(GasTransfer.flux(1e-5, 0.21, 0.25)).isCloseTo(-4e-7, within(1e-18));
        assertThat(Bubbles.rate(1e-5, 1, 0.21, 0.25, 20)).isNegative();
        assertThat(GasTransfer.flux(1e-5, 0.21, 0.21)).isZero();
    }

    /** The closed form must satisfy its own equation: slope by central difference against (k/h)(C* - C) - R. */
    @Test
    void theClosedFormSolvesTheMassBalance() {
        var decline = new OxygenDecline(0.21, 4e-6, 1e-5, 0.5);
        double before = decline.after(0.19, 9_999);
        double at = decline.after(0.19, 10_000);
        double later = decline.after(0.19, 10_001);
        assertThat((later - before) / 2).isCloseTo(1e-5 / 0.5 * (0.21 - at) - 4e-6, within(1e-14));
        assertThat(decline.after(0.19, 0)).isCloseTo(0.19, within(1e-15));
        assertThat(decline.timeTo(0.19, at).orElseThrow()).isCloseTo(10_000, within(1e-6));
    }

    @Test
    void aMarkBehindTheStartIsNeverReached() {
        var falling = new OxygenDecline(0.21, 4e-6, 1e-5, 0.5); // settles at 0.01
        assertThat(falling.timeTo(0.15, 0.19)).isEmpty();
        assertThat(falling.timeTo(0.15, 0.15)).hasValue(0);
        var rising = new OxygenDecline(0.21, 0, 1e-5, 0.5);
        assertThat(rising.timeTo(0.10, 0.20)).isPresent();
        assertThat(rising.timeTo(0.10, 0.21)).isEmpty();
    }

    @Test
    void waterThatRunsOutStaysAtZero() {
        assertThat(new OxygenDecline(0.21, 4e-6, 1e-6, 0.5).after(0.19, 1e6)).isZero();
    }

    @Test
    void bubblesCannotGiveMoreThanTheyHold() {
        double all = Bubbles.standardRate(1e-4, 20, 0.3);
        assertThat(all).isCloseTo(1e-4 * 0.279 / 0.0319988, within(1e-9));
    }

    @Test
    void refusesNonsense() {
        assertThatThrownBy(() -> GasTransfer.velocity(1, 434, 0.5)).hasMessageContaining("k600 1.0 m/s is outside");
        assertThatThrownBy(() -> FishRespiration.resting(0.015, 299)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> FishRespiration.resting(Double.NaN, 26)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new OxygenDecline(0.21, 4e-6, 0, 0.5)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> ReefRespiration.ofCoral(-1, 26)).hasMessageContaining("area of living tissue");
    }
}
