package org.tidewright.twin.contract;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.tidewright.plan.source.Basis;

class ParameterTest {
    /** Standard normal quantile of 0.95, any table. */
    private static final double NORMAL_95 = 1.6448536269514722;

    private static Parameter parameter(double usual, double low, double high) {
        return new Parameter(0, "factor", "1", usual, low, high, Basis.FROM_MEMORY, "for the test");
    }

    @Test
    void fiveOfAHundredDrawsLieOutsideEachEnd() {
        Parameter factor = parameter(1, 0.4, 2.4);
        assertThat(factor.at(0)).isEqualTo(1);
        assertThat(factor.at(-NORMAL_95)).isCloseTo(0.4, within(1e-15));
        assertThat(factor.at(NORMAL_95)).isCloseTo(2.4, within(1e-14));
    }

    @Test
    void aPositiveNumberStaysPositiveHoweverFarTheDraw() {
        // log-normal: four times as far as the low end is the fourth power of its ratio, 0.4⁴ = 0.0256
        assertThat(parameter(1, 0.4, 2.4).at(-4 * NORMAL_95)).isCloseTo(0.0256, within(1e-15));
    }

    @Test
    void aNumberOfEitherSignIsNormalOnEachSide() {
        Parameter shift = parameter(1, -1, 2);
        assertThat(shift.at(-2 * NORMAL_95)).isCloseTo(-3, within(1e-14));
        assertThat(shift.at(2 * NORMAL_95)).isCloseTo(3, within(1e-14));
    }

    @Test
    void anUsualValueOutsideItsRangeIsRefused() {
        assertThatThrownBy(() -> parameter(3, 0.4, 2.4)).hasMessageContaining("0.4 ≤ 3.0 ≤ 2.4 does not hold");
        assertThatThrownBy(() -> parameter(Double.NaN, 0, 1)).isInstanceOf(IllegalArgumentException.class);
    }
}
