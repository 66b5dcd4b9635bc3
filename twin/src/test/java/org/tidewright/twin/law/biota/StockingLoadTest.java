package org.tidewright.twin.law.biota;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.tidewright.twin.law.nutrient.ElementMass;

/** Worked by hand: fishes of 15 g on 2 % a day of pellets, in 200 L. */
class StockingLoadTest {
    private static final double DAY = 86_400;

    private static double milligramsPerDay(double mass, double share) {
        double load = StockingLoad.ammonia(mass, StockingLoad.RATION.usual(), StockingLoad.PELLETS.usual(), share);
        return load * ElementMass.NITROGEN * 1e6 * DAY;
    }

    @Test
    void oneFishBringsTheAmmoniaWorkedOut() {
        double perDay = milligramsPerDay(0.015, StockingLoad.GROWING);
        assertThat(perDay).isCloseTo(16.17, within(0.005));
        assertThat(perDay / 200).isCloseTo(0.08085, within(5e-8));
        assertThat(milligramsPerDay(0, StockingLoad.GROWING)).isZero();
    }

    /** Free ammonia 0.02 mg/L of nitrogen is 0.331 mg/L in all where 6.04 % are free (26 degC, pH 8.1): 1.02 days. */
    @Test
    void fourFishWithoutAFilterReachTheAmberLineInADay() {
        double perLitre = 4 * milligramsPerDay(0.015, StockingLoad.GROWING) / 200;
        assertThat(perLitre).isCloseTo(0.323, within(5e-4));
        assertThat(0.02 / 0.0604 / perLitre).isCloseTo(1.02, within(0.005));
    }

    /** No more than leaves the fish undissolved or by the gills: what is not retained. */
    @Test
    void theShareTurnedToAmmoniaIsNoMoreThanIsNotRetained() {
        assertThat(StockingLoad.GROWING).isLessThanOrEqualTo(1 - Digestion.NITROGEN_GROWING.retained());
        assertThat(StockingLoad.ADULT).isLessThanOrEqualTo(1 - Digestion.NITROGEN_ADULT.retained());
    }
}
