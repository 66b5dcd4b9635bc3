package org.tidewright.twin.law.nutrient;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;

class StrainingTest {
    private static final double DAY = 86_400;

    /** Rot of 0.2 a day beside catching of 0.1 a day: a third is caught, by hand. */
    @Test
    void aThirdIsCaughtWhereCatchingIsHalfAsFastAsRot() {
        assertThat(Straining.most(0.2 / DAY, 1.0 / 3)).isCloseTo(0.1 / DAY, withinPercentage(1e-9));
    }

    /**
     * Two tank volumes a day, half held back, three tenths of it particles: 0.3 a day by flow. Rot of 0.35 a day beside them:
     * 0.15 a day at most. In a row 0.1.
     */
    @Test
    void flowAndMatterStandInTheWayOneAfterTheOther() {
        assertThat(Straining.most(0.35 / DAY, 0.3)).isCloseTo(0.15 / DAY, withinPercentage(1e-9));
        assertThat(Straining.rate(2.0 / DAY, 0.5, 0.3, 0.35 / DAY, 1)).isCloseTo(0.1 / DAY, withinPercentage(1e-9));
        assertThat(Straining.rate(0, 0.5, 0.3, 0.35 / DAY, 1)).isZero();
        assertThat(Straining.rate(2.0 / DAY, 0.5, 0.3, 0, 1)).isZero();
    }

    @Test
    void whatCanBeCaughtWholeIsCaughtAsOftenAsTheWaterPasses() {
        assertThat(Straining.rate(2.0 / DAY, 0.5, 1, 0.2 / DAY, 1)).isCloseTo(1.0 / DAY, withinPercentage(1e-9));
    }
}
