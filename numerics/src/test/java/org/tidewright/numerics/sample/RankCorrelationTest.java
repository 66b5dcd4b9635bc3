package org.tidewright.numerics.sample;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class RankCorrelationTest {
    private static final double[] FIRST = {86, 97, 99, 100, 101, 103, 106, 110, 112, 113};
    private static final double[] SECOND = {2, 20, 28, 27, 50, 29, 7, 17, 6, 12};

    /** By hand without ties, 1 - 6 sum d² / (n (n² - 1)): the ranks differ by 0, 4, 5, 3, 5, 3, 4, 3, 7, 6; 194 in all. */
    @Test
    void withoutTiesItIsTheClassicFormulaOfRankDifferences() {
        assertThat(RankCorrelation.of(FIRST, SECOND)).isCloseTo(1 - 6 * 194.0 / 990, within(1e-15));
    }

    @Test
    void aRisingCurveOfAnyShapeIsOneAndAFallingOneMinusOne() {
        double[] curved = new double[FIRST.length];
        double[] falling = new double[FIRST.length];
        for (int i = 0; i < curved.length; i++) {
            curved[i] = Math.exp(FIRST[i] / 7);
            falling[i] = -curved[i];
        }
        assertThat(RankCorrelation.of(FIRST, curved)).isCloseTo(1, within(1e-15));
        assertThat(RankCorrelation.of(FIRST, falling)).isCloseTo(-1, within(1e-15));
    }

    /** By hand: ranks 1, 2.5, 2.5, 4 against 1 to 4, 4.5 over the root of 4.5 times 5. */
    @Test
    void equalValuesShareTheMeanOfTheirRanks() {
        assertThat(RankCorrelation.of(new double[] {1, 5, 5, 9}, new double[] {2, 3, 4, 5}))
                .isCloseTo(4.5 / Math.sqrt(4.5 * 5), within(1e-15));
    }

    @Test
    void whatDoesNotVaryGoesWithNothing() {
        assertThat(RankCorrelation.of(new double[] {3, 3, 3}, new double[] {1, 2, 3}))
                .isZero();
    }

    @Test
    void samplesOfDifferentLengthAreRefused() {
        assertThatThrownBy(() -> RankCorrelation.of(new double[2], new double[3]))
                .hasMessage("There are 2 values on one side and 3 on the other");
    }
}
