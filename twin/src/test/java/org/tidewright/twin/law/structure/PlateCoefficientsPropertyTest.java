package org.tidewright.twin.law.structure;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.tidewright.testkit.SeededCases;

class PlateCoefficientsPropertyTest {
    private static final int CASES = 60; // each sums series of some hundred terms

    @Test
    void aBraceNeverMakesAPaneWorse() {
        SeededCases.check(CASES, draw -> {
            double aspect = draw.between(0.3, 6);
            double poisson = draw.between(0.15, 0.35);
            PlateCoefficients free = PlateCoefficients.underWater(aspect, poisson, TopEdge.FREE);
            PlateCoefficients held = PlateCoefficients.underWater(aspect, poisson, TopEdge.HELD);
            assertThat(held.stress()).isLessThanOrEqualTo(free.stress());
            assertThat(held.deflection()).isLessThanOrEqualTo(free.deflection());
        });
    }

    @Test
    void aLongerPaneOfTheSameHeightIsStressedMore() {
        SeededCases.check(CASES, draw -> {
            double aspect = draw.between(0.3, 5);
            double ratio = draw.between(1.05, 1.5);
            TopEdge top = draw.oneOf(TopEdge.values());
            assertThat(PlateCoefficients.underWater(aspect * ratio, 0.22, top).stress())
                    .isGreaterThan(
                            PlateCoefficients.underWater(aspect, 0.22, top).stress());
        });
    }

    @Test
    void waterLoadsAPaneLessThanItsFootPressureEverywhere() {
        SeededCases.check(CASES, draw -> {
            double aspect = draw.between(1, 6);
            assertThat(PlateCoefficients.underWater(aspect, 0.22, TopEdge.HELD).stress())
                    .isLessThan(PlateCoefficients.underUniformLoad(aspect, 0.22).stress());
        });
    }
}
