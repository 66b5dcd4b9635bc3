package org.tidewright.husbandry.advice;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HoldingTest {
    /** 95 of 100 normal draws lie above their mean less 1.645 standard errors (tables of the normal distribution). */
    @ParameterizedTest
    @CsvSource({
        "1.646, 1, HOLDS",
        "1.645, 1, CLOSE",
        "0, 1, CLOSE",
        "-0.001, 1, FAILS",
        "0.001, 0, HOLDS",
        "0, 0, CLOSE"
    })
    void aMarginHoldsOnlyBeyondItsDoubt(double margin, double standardError, Holding expected) {
        assertThat(Holding.of(margin, standardError)).isEqualTo(expected);
    }
}
