package org.tidewright.twin.law.hydraulic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class PipeFrictionTest {
    @Test
    void creepingFlowDoesNotOverflow() {
        assertThat(PipeFriction.churchill(1e-200, 0)).isCloseTo(64e200, within(1e190));
        assertThat(PipeFriction.churchill(9.999, 0.01)).isCloseTo(64 / 9.999, within(1e-9));
        assertThat(PipeFriction.churchill(10.001, 0.01)).isCloseTo(64 / 10.001, within(1e-9));
    }

    @Test
    void reynoldsNumberIgnoresTheDirection() {
        assertThat(PipeFriction.reynolds(-1.5, 0.025, 1e-6)).isCloseTo(37500, within(1e-9));
    }

    @Test
    void nonsenseIsRefused() {
        assertThatThrownBy(() -> PipeFriction.churchill(0, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> PipeFriction.churchill(Double.NaN, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> PipeFriction.colebrook(1e5, -1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> PipeFriction.haaland(100, 0)).hasMessageContaining("Reynolds number");
        assertThatThrownBy(() -> PipeFriction.reynolds(1, 0.025, 0)).hasMessageContaining("kinematic viscosity");
    }
}
