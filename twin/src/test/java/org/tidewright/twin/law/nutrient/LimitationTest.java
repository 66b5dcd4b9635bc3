package org.tidewright.twin.law.nutrient;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;
import org.tidewright.testkit.SeededCases;

class LimitationTest {
    @Test
    void sharesStayBetweenNothingAndAllAtAnyConcentration() {
        SeededCases.check(draw -> {
            double amount = draw.oneOf(0.0, Double.MIN_VALUE, 1e-300, 1e-9, 1.0, 1e9, 1e300, Double.MAX_VALUE, -1e-6);
            double half = draw.between(1e-9, 10);
            assertThat(Limitation.monod(amount, half)).isBetween(0.0, 1.0);
            assertThat(Limitation.inhibition(amount, half)).isBetween(0.0, 1.0);
            assertThat(Limitation.light(amount, half)).isBetween(0.0, 1.0);
        });
    }

    @Test
    void halfIsLeftAtTheHalfSaturation() {
        assertThat(Limitation.monod(0.3, 0.3)).isEqualTo(0.5);
        assertThat(Limitation.inhibition(0.3, 0.3)).isEqualTo(0.5);
        assertThat(Limitation.light(1e-4, 1e-4)).isEqualTo(Math.tanh(1));
        assertThat(Limitation.monod(0, 0.3)).isZero();
        assertThat(Limitation.inhibition(0, 0.3)).isEqualTo(1);
        assertThat(Limitation.light(0, 1e-4)).isZero();
    }

    @Test
    void whatIsNoNumberIsRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> Limitation.monod(Double.NaN, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> Limitation.light(Double.POSITIVE_INFINITY, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> Limitation.inhibition(1, 0));
    }
}
