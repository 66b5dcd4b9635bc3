package org.tidewright.husbandry.ph;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.tidewright.seawater.carbonate.Alkalinity;
import org.tidewright.testkit.SeededCases;

class WaterCarbonDioxideTest {
    private static PhReading reading(double ph, double phError, double alkalinityError) {
        return new PhReading(
                Alkalinity.fromGermanDegrees(8),
                Alkalinity.fromGermanDegrees(alkalinityError),
                35,
                0.5,
                25.5,
                0.3,
                ph,
                phError);
    }

    /** The same errors drawn and not propagated: 20 000 waters, each solved. The constants' 2 % are drawn with them. */
    @Test
    void theBandIsThatOfDrawnReadings() {
        PhReading reading = reading(8.05, 0.06, 0.3);
        Random random = new Random(7);
        double[] drawn = new double[20_000];
        for (int i = 0; i < drawn.length; i++) {
            AiredWater water = AiredWater.of(
                    reading.temperature() + 0.3 * random.nextGaussian(), 35 + 0.5 * random.nextGaussian());
            double alkalinity = reading.alkalinity() + reading.alkalinityError() * random.nextGaussian();
            drawn[i] = water.reading(alkalinity, 8.05 + 0.06 * random.nextGaussian())
                            .partialPressure()
                    * Math.exp(0.02 * random.nextGaussian());
        }
        Arrays.sort(drawn);
        WaterCarbonDioxide found = reading.carbonDioxide();
        // The 5th and 95th of 20 000 draws scatter by 0.4 % themselves.
        assertThat(found.low()).isCloseTo(drawn[1000], within(0.015 * drawn[1000]));
        assertThat(found.pressure()).isCloseTo(drawn[10_000], within(0.01 * drawn[10_000]));
        assertThat(found.high()).isCloseTo(drawn[19_000], within(0.015 * drawn[19_000]));
    }

    /**
     * By hand: p is as [H][HCO3-]/(K0 K1). A unit of pH is ln 10 = 2.303 of [H]. Of bicarbonate it takes 2.303 x/(1 + x) with
     * x = 2 K2/[H] = 0.175 at pH 7.90 on the total scale, 0.343, and some 0.05 that borate takes of the alkalinity: 2.70.
     */
    @Test
    void aTwentiethOfPhIsThirteenPerCentOfTheCarbonDioxide() {
        WaterCarbonDioxide found = reading(8.05, 0.05, 0).carbonDioxide();
        assertThat(found.ofPh()).isCloseTo(0.05 * 2.70, within(0.05 * 0.03));
    }

    @Test
    void aHigherPhMeansLessCarbonDioxide() {
        SeededCases.check(200, draw -> {
            double ph = draw.between(7.4, 8.7);
            assertThat(reading(ph + 0.02, 0.05, 0.3).carbonDioxide().pressure())
                    .isLessThan(reading(ph, 0.05, 0.3).carbonDioxide().pressure());
        });
    }

    @Test
    void aWorseReadingHasAWiderBandAroundTheSameNumber() {
        WaterCarbonDioxide good = reading(8.05, 0.03, 0.2).carbonDioxide();
        WaterCarbonDioxide bad = reading(8.05, 0.10, 0.5).carbonDioxide();
        assertThat(bad.pressure()).isEqualTo(good.pressure());
        assertThat(bad.low()).isLessThan(good.low());
        assertThat(bad.high()).isGreaterThan(good.high());
    }

    @Test
    void aBandThatReachesBothSidesCannotTell() {
        WaterCarbonDioxide found = reading(8.05, 0.06, 0.3).carbonDioxide();
        assertThat(found.against(found.pressure() * 0.99, 0)).isEqualTo(Side.CANNOT_TELL);
        assertThat(found.against(found.low() * 0.99, 0)).isEqualTo(Side.MORE);
        assertThat(found.against(found.high() * 1.01, 0)).isEqualTo(Side.LESS);
        assertThat(found.against(found.low() * 0.99, 0.2))
                .as("with air that is not known well either")
                .isEqualTo(Side.CANNOT_TELL);
    }
}
