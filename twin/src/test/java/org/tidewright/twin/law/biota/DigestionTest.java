package org.tidewright.twin.law.biota;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tidewright.testkit.SeededCases;
import org.tidewright.twin.law.nutrient.ElementMass;

class DigestionTest {
    private static final double HOUR = 3600;
    private static final double DAY = 86_400;

    /** A meal of one mole run through both stages by the midpoint rule; what leaves the second, hour by hour. */
    private static double hourOfPeak(double rate, double temperature) {
        double step = 60;
        double first = 1;
        double second = 0;
        double highest = 0;
        double when = 0;
        for (double time = 0; time < 48 * HOUR; time += step) {
            double out = Digestion.passage(second, rate, temperature);
            if (out > highest) {
                highest = out;
                when = time;
            }
            double halfFirst = first - step / 2 * Digestion.passage(first, rate, temperature);
            double halfSecond = second + step / 2 * (Digestion.passage(first, rate, temperature) - out);
            double passed = Digestion.passage(halfFirst, rate, temperature);
            first -= step * passed;
            second += step * (passed - Digestion.passage(halfSecond, rate, temperature));
        }
        return when / HOUR;
    }

    /**
     * Lee et al. 2015, Fish. Aquat. Sci. 18, 373: olive flounder excreted most ammonia 6 h after a meal at 25 degC and
     * 12 h after it at 12 degC, sampled every 3 h or so.
     */
    @Test
    void flounderPeakLaterInTheColdAsPublished() {
        double rate = Digestion.STAGE.low();
        assertThat(hourOfPeak(rate, 25)).isCloseTo(6, within(0.05));
        assertThat(hourOfPeak(rate, 12)).isCloseTo(12, within(0.5));
    }

    /**
     * Porter et al. 1987, Aquaculture 66, 287: gilthead sea bream at 24 degC peaked within 4.5 h. Brett and Zala 1975,
     * J. Fish. Res. Board Can. 32, 2479: sockeye 4 to 4.5 h after the start of feeding, at 15 degC.
     */
    @Test
    void excretionPeaksSomeHoursAfterAMeal() {
        assertThat(hourOfPeak(Digestion.STAGE.usual(), 24)).isBetween(4.0, 5.0);
        assertThat(hourOfPeak(Digestion.STAGE.high(), 25)).isCloseTo(3, within(0.05));
    }

    /**
     * Porter et al. 1987: peaks of 70, 36.4 and 25.2 mg N/(kg h) in fish that gave 1032, 365 and 353 mg N/(kg d), which
     * is 1.6, 2.4 and 1.7 times their mean.
     */
    @Test
    void thePeakStandsAsFarAboveTheMeanAsInSeaBream() {
        double rate = Digestion.STAGE.usual();
        double overMean = Digestion.afterMeal(1 / rate, rate) * DAY;
        assertThat(overMean).isBetween(25.2 / (353 / 24.0), 36.4 / (365 / 24.0));
    }

    @Test
    void aMealLeavesWholeAndInTheClosedForm() {
        double rate = Digestion.STAGE.usual();
        double step = 30;
        double sum = 0;
        for (double time = step / 2; time < 6 * DAY; time += step) {
            sum += step * Digestion.afterMeal(time, rate);
        }
        assertThat(sum).isCloseTo(1, within(1e-6));
        assertThat(Digestion.afterMeal(0, rate)).isZero();
        assertThat(Digestion.afterMeal(1e12, rate)).isZero();
        assertThat(Digestion.passage(0, rate, 25)).isZero();
    }

    @Test
    void everyPartitionAddsUpToOne() {
        for (Partition shares : List.of(
                Digestion.NITROGEN_GROWING,
                Digestion.NITROGEN_ADULT,
                Digestion.PHOSPHORUS_GROWING,
                Digestion.PHOSPHORUS_ADULT,
                Digestion.CARBON_GROWING,
                Digestion.CARBON_ADULT)) {
            assertThat(shares.retained() + shares.excreted() + shares.faeces() + shares.uneaten())
                    .isCloseTo(1, within(1e-12));
            assertThat(shares.eaten() + shares.uneaten()).isCloseTo(1, within(1e-12));
        }
        SeededCases.check(draw -> {
            Partition between = Digestion.NITROGEN_ADULT.towards(Digestion.NITROGEN_GROWING, draw.between(0, 1));
            assertThat(between.retained() + between.excreted() + between.faeces() + between.uneaten())
                    .isCloseTo(1, within(1e-12));
            assertThat(between.retained()).isBetween(0.10, 0.25);
        });
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Partition(0.5, 0.5, 0.1, 0))
                .withMessageContaining("not 1");
    }

    /**
     * Schiettekatte et al. 2020: carbon 0.8 and nitrogen 0.8 assimilated, phosphorus 0.7. Porter et al. 1987: of the
     * nitrogen a tenth in faeces, 30 % to growth. Meyer and Schultz 1985: N:P of excretion 48, of faeces 8.
     */
    @Test
    void sharesAgreeWithWhatWasPublishedOrSayHowFarNot() {
        assertThat(Digestion.CARBON_GROWING.assimilation()).isCloseTo(0.8, within(1e-9));
        assertThat(Digestion.NITROGEN_GROWING.assimilation()).isCloseTo(0.8, within(0.05));
        assertThat(Digestion.PHOSPHORUS_GROWING.assimilation()).isCloseTo(0.7, within(0.2));
        assertThat(Digestion.NITROGEN_GROWING.retained()).isBetween(0.20, 0.30);
        double foodRatio = 77 / 14.0067 / (12 / 30.9738);
        double excretion = foodRatio * Digestion.NITROGEN_GROWING.excreted() / Digestion.PHOSPHORUS_GROWING.excreted();
        double faeces = foodRatio * Digestion.NITROGEN_GROWING.faeces() / Digestion.PHOSPHORUS_GROWING.faeces();
        assertThat(excretion).isBetween(30.0, 60.0);
        assertThat(faeces).isBetween(4.0, 12.0);
    }

    /**
     * Fed 2 % a day of pellets with 77 mg/g: by hand 847 mg/(kg d) or 2.5 umol/(g h), inside the 0.08 to 3.45 of
     * Shrestha et al. 2023, J. Exp. Mar. Biol. Ecol.
     */
    @Test
    void aFedFishExcretesWithinThePublishedRange() {
        double excreted = StockingLoad.ammonia(
                1, StockingLoad.RATION.usual(), StockingLoad.PELLETS.usual(), Digestion.NITROGEN_GROWING.excreted());
        assertThat(excreted * ElementMass.NITROGEN * 1e6 * DAY).isCloseTo(847, within(0.5));
        assertThat(excreted * 1e6 / 1000 * HOUR).isCloseTo(2.5, within(0.05)).isBetween(0.08, 3.45);
    }

    @Test
    void aFastingFishLosesWhatIsKnownAndASmallOneMoreForItsMass() {
        double rate = Digestion.FASTING.usual();
        assertThat(Digestion.fasting(0.050, rate, 25) / 0.050 * ElementMass.NITROGEN * 1e6 * DAY)
                .isCloseTo(100, withinPercentage(1e-9));
        double small = Digestion.fasting(0.005, rate, 25) / 0.005 * 1e6 / 1000 * HOUR;
        assertThat(small).isBetween(0.08, 3.45);
        assertThat(Digestion.fasting(0, rate, 25)).isZero();
        assertThat(Digestion.fasting(0.02, rate, 25) / Digestion.fasting(0.01, rate, 25))
                .isCloseTo(Math.pow(2, 0.75), withinPercentage(1e-9));
    }
}
