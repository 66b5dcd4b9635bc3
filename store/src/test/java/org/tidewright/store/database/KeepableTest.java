package org.tidewright.store.database;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;

class KeepableTest {
    @Test
    void whatIsKeptAsItIsIsGivenBack() {
        for (Object value :
                new Object[] {1L, 8.1, Double.NEGATIVE_INFINITY, Double.MIN_VALUE, "", "polyps 🐠\n", "\uFFFF"}) {
            assertThat(Keepable.of(value)).isEqualTo(value);
        }
        assertThat(Keepable.of(null)).isNull();
    }

    @Test
    void zeroBelowZeroBecomesPlainZero() {
        assertThat(Keepable.of(-0.0)).isEqualTo(0.0);
    }

    @Test
    void notANumberIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Keepable.of(Double.NaN))
                .withMessage("not-a-number cannot be kept: leave the value out");
    }

    @Test
    void halfACharacterIsRefusedAndSaidWhere() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Keepable.of("fish \uD83D\uDC20 and half of one \uD83D"))
                .withMessageContaining("half of one …” goes on with U+D83D");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Keepable.of("\uDC20"))
                .withMessageContaining("“…” goes on with U+DC20");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Keepable.of("a\0b"))
                .withMessageContaining("U+0000");
    }
}
