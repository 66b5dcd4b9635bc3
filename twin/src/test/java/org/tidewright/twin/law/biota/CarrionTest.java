package org.tidewright.twin.law.biota;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.tidewright.twin.law.nutrient.ElementMass;

class CarrionTest {
    private static double halfTimeHours(double temperature) {
        double rate = Carrion.released(1, Carrion.HALF_TIME.usual(), Carrion.WARMTH.usual(), temperature);
        return Math.log(2) / rate / 3600;
    }

    /**
     * Chidami and Amyot 2008, Limnol. Oceanogr. 53, 1988: half-lives of 40 to 230 h in the shallows of boreal lakes.
     */
    @Test
    void aCarcassLastsAsLongAsInTheShallowsOfLakes() {
        assertThat(halfTimeHours(25)).isCloseTo(1.7 * 24, withinPercentage(1e-9));
        assertThat(halfTimeHours(20)).isBetween(40.0, 230.0);
        assertThat(halfTimeHours(15)).isBetween(40.0, 230.0);
    }

    /**
     * Minshall, Hitchcock and Barnes 1991, Can. J. Fish. Aquat. Sci. 48, 191: trout at 8.6 degC lost 4.9 % of their
     * first dry mass a day, half in 10.2 days.
     */
    @Test
    void troutInAColdStreamLoseHalfWhenPublished() {
        assertThat(halfTimeHours(8.6) / 24).isCloseTo(50 / 4.9, within(1.0));
    }

    /** By hand for a fish of 15 g: 405 mg of nitrogen, 54 mg of phosphorus, 1.82 g of carbon. */
    @Test
    void aDeadFishHoldsWhatIsWorkedOut() {
        assertThat(0.015 * BodyComposition.NITROGEN * ElementMass.NITROGEN * 1e6)
                .isCloseTo(405, within(0.5));
        assertThat(0.015 * BodyComposition.PHOSPHORUS * ElementMass.PHOSPHORUS * 1e6)
                .isCloseTo(54, within(0.5));
        assertThat(0.015 * BodyComposition.CARBON * ElementMass.CARBON * 1e3).isCloseTo(1.82, within(0.005));
    }

    @Test
    void nothingIsLeftToLoseOfNothing() {
        assertThat(Carrion.released(0, Carrion.HALF_TIME.usual(), 3, 25)).isZero();
        assertThat(Carrion.released(-1e-12, Carrion.HALF_TIME.usual(), 3, 25)).isZero();
    }
}
