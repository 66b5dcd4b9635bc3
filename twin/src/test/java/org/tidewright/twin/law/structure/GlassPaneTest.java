package org.tidewright.twin.law.structure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.tidewright.twin.law.structure.GlassPane.Estimate;

/** The long pane, 1.20 x 0.60 m, of a reef system worked through by a script in another language, to four digits. */
class GlassPaneTest {
    private static final Percentage FOUR_DIGITS = withinPercentage(0.1);

    /** Millero and Poisson 1981 at 25.5 degC, S 35. */
    private static final double DENSITY = 1023.1901;

    private static final GlassPane RIMLESS = new GlassPane(1.20, 0.60, TopEdge.FREE);
    private static final GlassPane BRACED = new GlassPane(1.20, 0.60, TopEdge.HELD);

    private static Estimate estimate(GlassPane pane) {
        return (Estimate) pane.assess(DENSITY);
    }

    @Test
    void theWaterPressesOnTheFootAsInTheExample() {
        assertThat(RIMLESS.footPressure(DENSITY)).isCloseTo(6020, FOUR_DIGITS);
    }

    @Test
    void theAllowableStressIsThatOfTheExampleAndNearTheBuildingRules() {
        assertThat(Glass.ALLOWABLE_STRESS).isCloseTo(5.053e6, FOUR_DIGITS);
        // EN 16612 factors, from memory: 45 x 0.29 / 1.8 / 1.35 = 5.370 MPa.
        assertThat(45e6 * 0.29 / 1.8 / 1.35).isCloseTo(5.370e6, FOUR_DIGITS);
        assertThat(Glass.ALLOWABLE_STRESS).isBetween(0.9 * 5.370e6, 5.370e6);
    }

    @Test
    void withoutABraceThePaneNeedsFourteenMillimetresAndIsBoughtInFifteen() {
        assertThat(estimate(RIMLESS).leastThickness(Glass.ALLOWABLE_STRESS)).isCloseTo(0.01402, FOUR_DIGITS);
        assertThat(estimate(RIMLESS).thicknessToBuy()).hasValue(0.015);
    }

    @Test
    void withABraceItNeedsUnderTwelve() {
        assertThat(estimate(BRACED).leastThickness(Glass.ALLOWABLE_STRESS)).isCloseTo(0.01159, FOUR_DIGITS);
        assertThat(estimate(BRACED).thicknessToBuy()).hasValue(0.012);
    }

    @Test
    void inTwelveMillimetresItBowsAndIsStressedAsInTheExample() {
        assertThat(estimate(RIMLESS).stress(0.012)).isCloseTo(6.892e6, FOUR_DIGITS);
        assertThat(estimate(RIMLESS).safetyFactor(0.012)).isCloseTo(2.786, FOUR_DIGITS);
        assertThat(estimate(RIMLESS).deflection(0.012)).isCloseTo(2.507e-3, FOUR_DIGITS);
        assertThat(estimate(BRACED).deflection(0.012)).isCloseTo(0.3740e-3, FOUR_DIGITS);
    }

    @Test
    void theBraceHoldsThePullOfTheExample() {
        assertThat(BRACED.braceReaction(DENSITY)).isCloseTo(602, FOUR_DIGITS);
    }

    @Test
    void aLongRimlessPaneIsNotComputed() {
        assertThat(new GlassPane(1.51, 0.60, TopEdge.FREE).assess(DENSITY))
                .isInstanceOfSatisfying(
                        GlassPane.Refused.class,
                        refused -> assertThat(refused.reason()).contains("brace it or take the maker's table"));
        assertThat(new GlassPane(1.50, 0.60, TopEdge.FREE).assess(DENSITY)).isInstanceOf(Estimate.class);
        assertThat(new GlassPane(2.40, 0.60, TopEdge.HELD).assess(DENSITY)).isInstanceOf(Estimate.class);
    }

    @Test
    void aLargeBowIsSaidToLeaveTheTheory() {
        assertThat(estimate(RIMLESS).withinLinearTheory(0.012)).isTrue();
        assertThat(estimate(RIMLESS).withinLinearTheory(0.006)).isFalse();
    }

    @Test
    void aPaneThickerThanAnySoldIsNotOnSale() {
        assertThat(Glass.soldThickness(0.0191)).isEmpty();
        assertThat(Glass.soldThickness(0.004)).hasValue(0.004);
        assertThat(Glass.soldThickness(0.0101)).hasValue(0.012);
    }

    @Test
    void aSquareBottomPaneOnARimIsStressedAsRoarkSays() {
        // Roark's square, nu 0.3: 0.2874. The moment at the middle grows with 1 + nu: at 0.22 it is 1.22/1.30 of that.
        BottomPane bottom = new BottomPane(0.5, 0.5);
        double expected = 0.2874 * 1.22 / 1.30 * 5000 * 0.25 / 1e-4;
        assertThat(bottom.stress(5000, 0.010)).isCloseTo(expected, withinPercentage(0.1));
        assertThat(bottom.leastThickness(5000, expected)).isCloseTo(0.010, within(1e-5));
    }

    @Test
    void nonsenseIsRefused() {
        assertThatThrownBy(() -> new GlassPane(0, 0.6, TopEdge.FREE)).hasMessageContaining("length of the pane");
        assertThatThrownBy(() -> new GlassPane(1.2, 0.01, TopEdge.FREE)).hasMessageContaining("outside 0.05 to 20.0");
        assertThatThrownBy(() -> RIMLESS.assess(Double.NaN)).hasMessageContaining("density");
        assertThatThrownBy(() -> estimate(RIMLESS).stress(0)).hasMessageContaining("thickness");
        assertThatThrownBy(() -> estimate(RIMLESS).leastThickness(-1)).hasMessageContaining("allowable stress");
        assertThatThrownBy(() -> new BottomPane(0.5, 0.6)).hasMessageContaining("longer over shorter side");
        assertThatThrownBy(() -> PlateCoefficients.underWater(1, 0.7, TopEdge.HELD))
                .hasMessageContaining("Poisson");
    }
}
