package org.tidewright.twin.law.biota;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tidewright.testkit.SeededCases;
import org.tidewright.twin.law.nutrient.ElementMass;

class FishGrowthTest {
    private static final double YEAR = 365.25 * 86_400;

    /** Zebrasoma flavescens, coefficients of Morais and Bellwood 2018. */
    private static final FishGrowth YELLOW_TANG = new FishGrowth(0.168, 0.28 / YEAR, 0.0214e-3, 3.04);

    /** By hand from 6.0 cm, to the digits shown. */
    @ParameterizedTest
    @CsvSource({"1, 8.64, 15.0", "2, 10.63, 28.3", "5, 14.14, 67.2"})
    void aYellowTangGrowsAsWorkedOut(double years, double centimetres, double grams) {
        double length = YELLOW_TANG.length(0.060, years * YEAR);
        assertThat(length * 100).isCloseTo(centimetres, within(0.005));
        assertThat(YELLOW_TANG.mass(length) * 1000).isCloseTo(grams, within(0.1));
    }

    /** Classical Runge-Kutta over two years in steps of a day, against the closed form. */
    @Test
    void gainAddsUpToTheClosedForm() {
        double mass = YELLOW_TANG.mass(0.060);
        double h = YEAR / 365;
        for (int day = 0; day < 2 * 365; day++) {
            double k1 = YELLOW_TANG.potentialGain(mass);
            double k2 = YELLOW_TANG.potentialGain(mass + h / 2 * k1);
            double k3 = YELLOW_TANG.potentialGain(mass + h / 2 * k2);
            double k4 = YELLOW_TANG.potentialGain(mass + h * k3);
            mass += h / 6 * (k1 + 2 * k2 + 2 * k3 + k4);
        }
        double expected = YELLOW_TANG.mass(YELLOW_TANG.length(0.060, 2 * YEAR));
        assertThat(mass).isCloseTo(expected, withinPercentage(1e-7));
    }

    @Test
    void whatIsRetainedIsGrownOrGivenUp() {
        SeededCases.check(draw -> {
            double mass = draw.between(1e-4, 0.3);
            double retained = draw.between(0, 1e-8);
            double gain = YELLOW_TANG.gain(mass, retained);
            double surplus = YELLOW_TANG.surplus(retained, gain);
            assertThat(gain).isBetween(0.0, YELLOW_TANG.potentialGain(mass));
            assertThat(surplus).isNotNegative();
            assertThat(gain * BodyComposition.NITROGEN + surplus).isCloseTo(retained, within(1e-12 * retained));
        });
    }

    @Test
    void aFishOfItsGreatestLengthGrowsNoMoreNorDoesOneWithoutFood() {
        assertThat(YELLOW_TANG.potentialGain(YELLOW_TANG.mass(0.168) * 1.001)).isZero();
        assertThat(YELLOW_TANG.potentialGain(0)).isZero();
        assertThat(YELLOW_TANG.gain(0.015, 0)).isZero();
        assertThat(YELLOW_TANG.length(0.2, YEAR)).isEqualTo(0.2);
    }

    @Test
    void lengthGivesBackTheMass() {
        SeededCases.check(draw -> {
            double mass = draw.between(1e-5, 0.5);
            assertThat(YELLOW_TANG.mass(YELLOW_TANG.lengthOf(mass))).isCloseTo(mass, withinPercentage(1e-9));
        });
    }

    /**
     * A tang of 15 g gains 13.3 g in its second year, on 2 % of pellets a day. By hand that is 0.98 mg of nitrogen a
     * day of the 5.8 that a growing fish could keep: it is the species that limits it, and the rest is excreted.
     */
    @Test
    void aWellFedTangCannotUseAllItCouldKeep() {
        double perDay = (0.0283 - 0.0150) * BodyComposition.NITROGEN * ElementMass.NITROGEN * 1e6 / 365;
        assertThat(perDay).isCloseTo(0.98, within(0.01));
        double food = 0.015 * 0.02 / 86_400 * StockingLoad.PELLETS.usual();
        double kept = food * Digestion.NITROGEN_GROWING.retained();
        double gain = YELLOW_TANG.gain(0.015, kept);
        assertThat(gain).isEqualTo(YELLOW_TANG.potentialGain(0.015));
        assertThat(YELLOW_TANG.surplus(kept, gain)).isGreaterThan(0.5 * kept);
    }
}
