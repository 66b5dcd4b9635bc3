package org.tidewright.twin.law.hydraulic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class OrificeTest {
    @Test
    void aHoleOneMetreDownSpoutsAsTorricelliSays() {
        // By hand: 0.6 x 1e-4 m^2 x 4.428690 m/s.
        assertThat(Orifice.flow(1e-4, 1, 0.6)).isCloseTo(2.657214e-4, within(1e-10));
    }

    @Test
    void aHeadTheOtherWayTurnsTheFlow() {
        assertThat(Orifice.flow(1e-4, -0.3, 0.6)).isEqualTo(-Orifice.flow(1e-4, 0.3, 0.6));
        assertThat(Orifice.flow(1e-4, 0, 0.6)).isZero();
    }

    @Test
    void headGivesBackTheFlow() {
        assertThat(Orifice.head(Orifice.flow(3e-4, 0.07, 0.62), 3e-4, 0.62)).isCloseTo(0.07, within(1e-15));
        assertThat(Orifice.head(-1e-4, 3e-4, 0.62)).isNegative();
    }

    @Test
    void nonsenseIsRefused() {
        assertThatThrownBy(() -> Orifice.flow(-1e-4, 1, 0.6)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Orifice.flow(1e-4, Double.NaN, 0.6)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Orifice.flow(1e-4, 1, 6)).hasMessageContaining("outside 0.0 to 1.0");
        assertThatThrownBy(() -> Orifice.head(1e-4, 0, 0.6)).isInstanceOf(IllegalArgumentException.class);
    }
}
