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

    /** Two tank volumes a day, half held back, three tenths particles: 0.3 a day by flow; with 0.15 a day in a row 0.1. */
    @Test
    void flowAndMatterStandInTheWayOneAfterTheOther() {
        assertThat(Straining.rate(2.0 / DAY, 0.5, 0.3, 0.15 / DAY, 1)).isCloseTo(0.1 / DAY, withinPercentage(1e-9));
        assertThat(Straining.rate(0, 0.5, 0.3, 0.15 / DAY, 1)).isZero();
        assertThat(Straining.rate(2.0 / DAY, 0.5, 0.3, 0, 1)).isZero();
    }
}
