package org.tidewright.twin.law.carbonate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

class CalcificationTest {
    private static final double DAY = 86_400;
    private static final double SQUARE_CENTIMETRE = 1e-4;
    private static final double DKH = 2.8038; // for each mol/m^3

    private static double chargesPerDay(Calcifier calcifier, double squareCentimetres, double captivity) {
        return 2 * DAY * Calcification.rate(calcifier.rate() * captivity, squareCentimetres * SQUARE_CENTIMETRE, 1);
    }

    /**
     * 250 L, three Acropora of 50 cm^2, two Euphyllia of 80 cm^2, 3000 cm^2 of coralline algae, corals at half the
     * field rate: 600 + 410 + 534 = 1544 mg/day, 50.04 mg for each meq, 30.9 meq/day, 0.346 dKH/day. It rounds 408 to
     * 410.
     */
    @Test
    void aSmallReefTakesTheAlkalinityWorkedOut() {
        double acropora = chargesPerDay(Calcifier.ACROPORA_BRANCHING, 150, 0.5);
        double euphyllia = chargesPerDay(Calcifier.EUPHYLLIA, 160, 0.5);
        double coralline = chargesPerDay(Calcifier.CORALLINE_ALGAE, 3000, 1);
        assertThat(acropora).isCloseTo(0.600 / 50.04, within(1e-5));
        assertThat(euphyllia).isCloseTo(0.410 / 50.04, Percentage.withPercentage(0.6));
        assertThat(coralline).isCloseTo(0.534 / 50.04, within(1e-5));
        double sum = acropora + euphyllia + coralline;
        assertThat(sum).isCloseTo(30.9e-3, Percentage.withPercentage(0.5));
        assertThat(sum / 0.250 * DKH).isCloseTo(0.346, within(0.001));
    }

    /** 1 m^2 of coralline algae at 0.65 kg/m^2 in a year: 35.6 meq/day, 0.50 dKH/day in 200 L. */
    @Test
    void aSquareMetreOfCorallineTakesWhatIsWorkedOut() {
        double charges = chargesPerDay(Calcifier.CORALLINE_ALGAE, 1e4, 1);
        assertThat(charges).isCloseTo(35.6e-3, within(0.05e-3));
        assertThat(charges / 0.200 * DKH).isCloseTo(0.50, within(0.005));
    }

    /**
     * Twenty Acropora of radius 2.82 cm over 5000 cm^2 of floor, 3.55 mg/(cm^2 day), 200 L: 0.46 dKH/day; a year later,
     * 3 cm more of radius, 1.52; after two years 2.40.
     */
    @Test
    void growingColoniesCrowdAsWorkedOut() {
        assertThat(grown(2.82)).isCloseTo(0.46, within(0.005));
        assertThat(grown(5.82)).isCloseTo(1.52, within(0.005));
        assertThat(grown(8.82)).isCloseTo(2.40, within(0.005));
    }

    private static double grown(double radius) {
        double sum = 20 * Math.PI * radius * radius * SQUARE_CENTIMETRE;
        double area = Calcification.crowded(sum, 0.6 * 5000 * SQUARE_CENTIMETRE);
        double rate = 3.55e-2 / 0.100087 / DAY; // 3.55 mg/(cm^2 day) are 0.0355 kg/(m^2 day)
        return 2 * DAY * Calcification.rate(rate, area, 1) / 0.200 * DKH;
    }

    /**
     * 90 % coral and 10 % coralline: f = 0.0195, 19.65 mg of calcium and 0.237 mg of magnesium for each meq; for each
     * dKH 7.008 and 0.0845 mg.
     */
    @Test
    void magnesiumReplacesCalciumAsWorkedOut() {
        double magnesium =
                0.9 * Calcifier.ACROPORA_BRANCHING.magnesiumShare() + 0.1 * Calcifier.CORALLINE_ALGAE.magnesiumShare();
        assertThat(magnesium).isCloseTo(0.0195, within(1e-12));
        double calciumPerCharge = Calcification.calciumShare(magnesium) / 2 * 40.078;
        assertThat(calciumPerCharge).isCloseTo(19.65, within(0.005));
        assertThat(calciumPerCharge / DKH).isCloseTo(7.008, within(0.0015));
        assertThat(magnesium / 2 * 24.305).isCloseTo(0.237, within(0.0005));
    }

    /** Chan and Connolly 2013: 15 % less for one unit of saturation; Langdon and Atkinson 2005: in proportion. */
    @Test
    void saturationActsAsEitherSourceSays() {
        assertThat(Calcification.saturationResponse(3, Calcification.EXPONENT_LOW))
                .isCloseTo(0.85, within(0.005));
        assertThat(Calcification.saturationResponse(2.5, Calcification.EXPONENT_HIGH))
                .isCloseTo(0.5, within(1e-12));
        assertThat(Calcification.saturationResponse(4, Calcification.EXPONENT_USUAL))
                .isEqualTo(1);
    }

    @Test
    void nothingIsLaidDownAtOrBelowSaturation() {
        for (double n : new double[] {0.4, 0.7, 1}) {
            assertThat(Calcification.saturationResponse(0, n)).isZero();
            assertThat(Calcification.saturationResponse(1, n)).isZero();
            assertThat(Calcification.saturationResponse(1 + 1e-9, n)).isBetween(0.0, 1e-8);
            double last = 0;
            for (double omega = 1.01; omega < 30; omega += 0.1) {
                double now = Calcification.saturationResponse(omega, n);
                assertThat(now).isGreaterThan(last);
                last = now;
            }
        }
    }

    /**
     * A tank dosed evenly swings, peak to peak, by w (1 - w)(r - 1) / [1 + (r - 1) w] of its daily demand, w the lit
     * share of the day: 0.17 for 10 h and r = 2, 0.265 for 10 h and r = 3, worked by hand.
     */
    @Test
    void theDaySwingsAsTheRatioOfLightAndDarkSays() {
        assertThat(swing(10.0 / 24, 2)).isCloseTo(0.1716, within(0.0005));
        assertThat(swing(10.0 / 24, 3)).isCloseTo(0.2652, within(0.0005));
    }

    private static double swing(double lit, double ratio) {
        double bright = Calcification.lightResponse(0.1, 1e-4, ratio);
        double dark = Calcification.lightResponse(0, 1e-4, ratio);
        double mean = lit * bright + (1 - lit) * dark;
        return lit * (bright - mean) / mean;
    }

    /** With the reference day's share of saturating light the mean response is 1, whatever the ratio. */
    @Test
    void theReferenceDayLeavesTheReferenceRate() {
        for (double ratio : new double[] {1, 1.5, 2.5, 4}) {
            double bright = Calcification.lightResponse(0.1, 1e-4, ratio);
            double dark = Calcification.lightResponse(0, 1e-4, ratio);
            assertThat(0.4 * bright + 0.6 * dark).isCloseTo(1, within(1e-12));
            assertThat(bright / dark).isCloseTo(ratio, within(1e-12));
        }
    }

    /**
     * 5 to 10 % for each kelvin up to the optimum (common experience); a sixth and not a half lost in the kelvin beyond
     * 30 degC, as Carricart-Ganivet et al. 2012 saw: 0.12 to 0.40 g/cm^2 of some 1.5 in a year.
     */
    @Test
    void warmthHelpsUpToTheOptimumAndHarmsBeyond() {
        assertThat(warm(27)).isEqualTo(1);
        assertThat(Math.log(warm(27) / warm(24)) / 3).isBetween(0.05, 0.10);
        assertThat(1 - warm(31) / warm(30)).isBetween(0.12 / 1.5, 0.40 / 1.5);
        assertThat(warm(21)).isCloseTo(Math.exp(-1), within(1e-12));
        assertThat(warm(21)).isCloseTo(warm(33), within(1e-12));
    }

    private static double warm(double temperature) {
        return Calcification.temperatureResponse(temperature, Calcification.OPTIMUM_USUAL, Calcification.WIDTH_USUAL);
    }

    @Test
    void exhaustedAlkalinityStopsIt() {
        assertThat(Calcification.alkalinityLeft(0)).isZero();
        assertThat(Calcification.alkalinityLeft(-1e-12)).isZero();
        assertThat(Calcification.alkalinityLeft(1e-300)).isZero();
        assertThat(Calcification.alkalinityLeft(0.1)).isCloseTo(0.5, within(1e-15));
        assertThat(Calcification.alkalinityLeft(2.3)).isBetween(0.998, 1.0);
    }

    @Test
    void withoutColoniesNothingGrows() {
        assertThat(Calcification.rate(1e-6, 0, 1)).isZero();
        assertThat(Calcification.crowded(0, 0.3)).isZero();
        assertThat(Calcification.crowded(0.5, 0)).isZero();
        assertThat(Calcification.crowded(100, 0.3)).isCloseTo(0.3, within(1e-15));
    }

    @Test
    void theLowRatesAreLow() {
        for (Calcifier calcifier : Calcifier.values()) {
            assertThat(calcifier.lowRate()).as("%s", calcifier).isPositive().isLessThan(calcifier.rate());
        }
    }

    @Test
    void refusesNonsense() {
        assertThatThrownBy(() -> Calcification.lightResponse(200, 1e-4, 2)).hasMessageContaining("umol");
        assertThatThrownBy(() -> Calcification.saturationResponse(Double.NaN, 1))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Calcification.calciumShare(15)).hasMessageContaining("magnesium's share");
    }
}
