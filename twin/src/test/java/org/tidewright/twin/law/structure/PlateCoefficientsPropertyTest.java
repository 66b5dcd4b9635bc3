package org.tidewright.twin.law.structure;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

class PlateCoefficientsPropertyTest {
    @Property(tries = 60)
    void aBraceNeverMakesAPaneWorse(
            @ForAll @Scale(4) @DoubleRange(min = 0.3, max = 6) double aspect,
            @ForAll @Scale(4) @DoubleRange(min = 0.15, max = 0.35) double poisson) {
        PlateCoefficients free = PlateCoefficients.underWater(aspect, poisson, TopEdge.FREE);
        PlateCoefficients held = PlateCoefficients.underWater(aspect, poisson, TopEdge.HELD);
        assertThat(held.stress()).isLessThanOrEqualTo(free.stress());
        assertThat(held.deflection()).isLessThanOrEqualTo(free.deflection());
    }

    @Property(tries = 60)
    void aLongerPaneOfTheSameHeightIsStressedMore(
            @ForAll @Scale(4) @DoubleRange(min = 0.3, max = 5) double aspect,
            @ForAll @Scale(4) @DoubleRange(min = 1.05, max = 1.5) double ratio,
            @ForAll TopEdge top) {
        assertThat(PlateCoefficients.underWater(aspect * ratio, 0.22, top).stress())
                .isGreaterThan(PlateCoefficients.underWater(aspect, 0.22, top).stress());
    }

    @Property(tries = 60)
    void waterLoadsAPaneLessThanItsFootPressureEverywhere(
            @ForAll @Scale(4) @DoubleRange(min = 1, max = 6) double aspect) {
        assertThat(PlateCoefficients.underWater(aspect, 0.22, TopEdge.HELD).stress())
                .isLessThan(PlateCoefficients.underUniformLoad(aspect, 0.22).stress());
    }
}
