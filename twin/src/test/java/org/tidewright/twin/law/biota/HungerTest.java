package org.tidewright.twin.law.biota;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class HungerTest {
    private static final double DAY = 86_400;

    @Test
    void anOrdinaryFishHasTheFatAndTheFleshOfOne() {
        assertThat(Hunger.fat(BodyComposition.CARBON, BodyComposition.NITROGEN)).isCloseTo(1, within(1e-12));
        assertThat(Hunger.condition(BodyComposition.NITROGEN, BodyComposition.PHOSPHORUS))
                .isCloseTo(1, within(1e-12));
    }

    /** 45 % carbon and 10 % nitrogen of dry mass; protein of 3.8 to 1 leaves carbon for fat (77 % carbon) of 16 % of dry mass. */
    @Test
    void anOrdinaryFishIsASixthFatOfItsDryMass() {
        double inFat = 0.45 - 3.8 * 0.10 / 14.007 * 12.011;
        assertThat(inFat / 0.77).isBetween(0.10, 0.20);
        assertThat(Hunger.fat(0.45 / 12.011 - inFat / 12.011, 0.10 / 14.007)).isCloseTo(0, within(1e-3));
    }

    /** Half the flesh on the same bones, half of whose phosphorus went with it: (1 + 0.5)/2 of the phosphorus. */
    @Test
    void halfTheFleshOnTheSameBonesIsAConditionOfAHalf() {
        assertThat(Hunger.condition(0.5 * BodyComposition.NITROGEN, 0.75 * BodyComposition.PHOSPHORUS))
                .isCloseTo(0.5, within(1e-12));
    }

    @Test
    void withoutFatAllThatIsBurntIsFlesh() {
        assertThat(Hunger.proteinShare(0, 0.13)).isEqualTo(1);
        assertThat(Hunger.proteinShare(1, 0.13)).isCloseTo(0.13, within(1e-12));
    }

    /**
     * Trout of 7 to 12 cm starved for three weeks at 12 °C had used up their visceral fat and lost 14.5 % of their mass
     * (Weatherley and Gill 1981, abstract). By the law 0.87 of the flesh leaves a tenth of the fat; the share of protein of a
     * fasting fish is 0.13 where 100 mg of nitrogen a kilogram and day meet 210 mmol of oxygen.
     */
    @Test
    void aSeventhOfTheMassLostIsMostOfTheFat() {
        double flesh = 1;
        double fat = 1;
        double fatOverProtein = (BodyComposition.CARBON / BodyComposition.NITROGEN - 3.8) / 3.8;
        while (flesh > 0.87) {
            double share = Hunger.proteinShare(fat / flesh, 0.13);
            flesh -= 1e-5 * share;
            fat -= 1e-5 * (1 - share) / fatOverProtein;
        }
        assertThat(fat).isBetween(0.02, 0.2);
    }

    @Test
    void deathRisesSmoothlyFromNothingToAFifthADay() {
        assertThat(Hunger.deathRate(1, 0.5, 25)).isZero();
        assertThat(Hunger.deathRate(0.8, 0.5, 25) * DAY).isLessThan(1e-3);
        assertThat(Hunger.deathRate(0.5, 0.5, 25) * DAY).isCloseTo(0.1, within(1e-12));
        assertThat(Hunger.deathRate(0, 0.5, 25) * DAY).isBetween(0.19, 0.2);
        for (double condition = 0.01; condition < 1; condition += 0.01) {
            assertThat(Hunger.deathRate(condition - 0.01, 0.5, 25)).isGreaterThan(Hunger.deathRate(condition, 0.5, 25));
        }
    }
}
