package org.tidewright.husbandry.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class KnownTest {
    @Test
    void quantilesAndChancesAreThoseOfTheNormalDistribution() {
        Known known = new Known(8, 0.2);
        assertThat(known.quantile(0.95)).isCloseTo(8.32897, within(1e-5)); // 8 + 1.644854 × 0.2
        assertThat(known.chanceBelow(8.2)).isCloseTo(0.8413447, within(1e-7));
        assertThat(known.holds(8.3, 0.9)).isTrue();
        assertThat(known.holds(8.34, 0.9)).isFalse();
    }

    @Test
    void whatIsKnownExactlyHasNoChances() {
        Known exact = new Known(8, 0);
        assertThat(exact.chanceBelow(8.001)).isEqualTo(1);
        assertThat(exact.chanceBelow(8)).isZero();
    }

    @Test
    void whatIsNoNumberIsNoKnowledge() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Known(Double.NaN, 0.1));
        assertThatIllegalArgumentException().isThrownBy(() -> new Known(8, -0.1));
    }
}
