package org.tidewright.twin.law.biota;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.tidewright.testkit.SeededCases;
import org.tidewright.twin.law.nutrient.ElementMass;
import org.tidewright.twin.law.nutrient.Spread;

class MacroalgaeGrowthTest {
    private static final double DAY = 86_400;

    /** By hand: 150 g of wet harvest a week is 15 g dry, 53.6 mg of nitrogen and 5.36 mg of phosphorus a day. */
    @Test
    void aWeeklyHarvestExportsWhatIsWorkedOut() {
        double dryPerDay = 0.150 * MacroalgaeGrowth.DRY.usual() / 7;
        assertThat(dryPerDay * MacroalgaeGrowth.NITROGEN.usual() * ElementMass.NITROGEN * 1e6)
                .isCloseTo(53.6, within(0.05));
        assertThat(dryPerDay * MacroalgaeGrowth.PHOSPHORUS.usual() * ElementMass.PHOSPHORUS * 1e6)
                .isCloseTo(5.36, within(0.005));
    }

    /**
     * Atkinson and Smith 1983, Limnol. Oceanogr. 28, 568: C:N:P 550:30:1 in the median benthic plant. With 30 % of
     * carbon that is 1.9 % of nitrogen and 0.14 % of phosphorus, inside the ranges here and poorer than the usual of
     * fed tanks.
     */
    @Test
    void theMedianPlantLiesInsideTheRanges() {
        double carbon = MacroalgaeGrowth.CARBON.usual();
        double nitrogen = carbon * 30 / 550;
        double phosphorus = carbon / 550;
        assertThat(nitrogen * ElementMass.NITROGEN).isCloseTo(0.019, within(0.0005));
        assertThat(phosphorus * ElementMass.PHOSPHORUS).isCloseTo(0.0014, within(0.00005));
        assertInside(nitrogen, MacroalgaeGrowth.NITROGEN);
        assertInside(phosphorus, MacroalgaeGrowth.PHOSPHORUS);
    }

    private static void assertInside(double value, Spread spread) {
        assertThat(value).isBetween(spread.low(), spread.usual());
    }

    /** Menendez 2005, Aquat. Bot. 82, 181: 0.11 to 0.13 per day on pulses of 100 umol/L of nitrogen. */
    @Test
    void richWaterAndLightBringThePublishedGrowth() {
        double share = MacroalgaeGrowth.limitation(400e-6, 100e-6, 0.100, 0.01)
                * MacroalgaeGrowth.warmth(25, MacroalgaeGrowth.BEST_TEMPERATURE);
        double perDay = MacroalgaeGrowth.made(1e-6, 1, MacroalgaeGrowth.GROWTH.usual(), share) / 1e-6 * DAY;
        assertThat(perDay).isBetween(0.11, 0.13);
        double litHalf = MacroalgaeGrowth.whileLit(MacroalgaeGrowth.GROWTH.usual(), 0.5);
        assertThat(0.5 * litHalf).isEqualTo(MacroalgaeGrowth.GROWTH.usual());
    }

    @Test
    void aFullMatMakesNothingAndTheDarkTakesFromIt() {
        assertThat(MacroalgaeGrowth.made(0.3, 0.3, 1e-6, 1)).isZero();
        assertThat(MacroalgaeGrowth.made(0.4, 0.3, 1e-6, 1)).isZero();
        assertThat(MacroalgaeGrowth.made(0, 0.3, 1e-6, 1)).isZero();
        double share = MacroalgaeGrowth.limitation(0, 100e-6, 0.1, 0.01);
        assertThat(share).isZero();
        assertThat(MacroalgaeGrowth.lost(0.1, MacroalgaeGrowth.LOSS.usual(), 25) * DAY)
                .isCloseTo(0.002, withinPercentage(1e-9));
    }

    /** From logistic growth with G - r: dW/dt is 0 at W_max (1 - r/(mu f)). */
    @Test
    void aMatSettlesWhereGrowthMeetsLoss() {
        SeededCases.check(draw -> {
            double growth = draw.between(0.06, 0.13) / DAY;
            double loss = draw.between(0.01, 0.04) / DAY;
            double settled = 0.3 * (1 - loss / growth);
            double made = MacroalgaeGrowth.made(settled, 0.3, growth, 1);
            assertThat(made).isCloseTo(MacroalgaeGrowth.lost(settled, loss, 25), withinPercentage(1e-9));
        });
    }

    @Test
    void growthFallsOffOnBothSidesOfTheBestTemperature() {
        assertThat(MacroalgaeGrowth.warmth(25, 25)).isEqualTo(1);
        assertThat(MacroalgaeGrowth.warmth(25 - 1e-6, 25)).isCloseTo(1, within(1e-12));
        SeededCases.check(draw -> {
            double off = draw.between(0.1, 15);
            assertThat(MacroalgaeGrowth.warmth(25 + off, 25)).isLessThan(MacroalgaeGrowth.warmth(25 - off, 25));
            assertThat(MacroalgaeGrowth.warmth(25 - off, 25)).isBetween(0.0, 1.0);
        });
    }

    @Test
    void moreOfAnythingNeverSlowsGrowth() {
        SeededCases.check(draw -> {
            double light = draw.between(0, 1e-3);
            double nitrogen = draw.between(0, 0.5);
            double phosphorus = draw.between(0, 0.02);
            double share = MacroalgaeGrowth.limitation(light, 1e-4, nitrogen, phosphorus);
            assertThat(share).isBetween(0.0, 1.0);
            assertThat(MacroalgaeGrowth.limitation(light * 1.1, 1e-4, nitrogen, phosphorus))
                    .isGreaterThanOrEqualTo(share);
            assertThat(MacroalgaeGrowth.limitation(light, 1e-4, nitrogen * 1.1, phosphorus))
                    .isGreaterThanOrEqualTo(share);
            assertThat(MacroalgaeGrowth.limitation(light, 1e-4, nitrogen, phosphorus * 1.1))
                    .isGreaterThanOrEqualTo(share);
        });
    }

    /** Steps of a thousandth of the interval from 18 to 30 g at the growth told, under a greatest mass of 40 g. */
    @Test
    void aMatComesFromOneHarvestToTheNextAtTheGrowthTheyTell() {
        double interval = 10 * 86_400;
        double loss = 0.02 / 86_400;
        double growth = MacroalgaeGrowth.ofHarvest(0.018, 0.012, interval, 0.010, loss);
        double mass = 0.018;
        for (int i = 0; i < 1000; i++) {
            double made = MacroalgaeGrowth.made(mass, 0.040, growth, 1);
            mass += interval / 1000 * (made - MacroalgaeGrowth.lost(mass, loss, 25));
        }
        assertThat(mass).isCloseTo(0.030, withinPercentage(3));
    }
}
