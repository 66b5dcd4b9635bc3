package org.tidewright.seawater.density;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.tidewright.testkit.SeededCases;

class DensityPropertyTest {
    private static final double STEP = 1e-3;

    @Test
    void withoutSaltSeawaterIsPureWater() {
        SeededCases.check(draw -> {
            double temperature = draw.between(-10, 60);
            assertThat(Density.ofSeawater(temperature, 0)).isEqualTo(Density.ofPureWater(temperature));
        });
    }

    /** The root of S in all three laws must not let the last trace of salt jump. */
    @Test
    void theLastTraceOfSaltVanishesSmoothly() {
        SeededCases.check(draw -> {
            double temperature = draw.between(0, 40);
            double trace = draw.between(0, 1e-6);
            assertThat(Density.ofSeawater(temperature, trace))
                    .isCloseTo(Density.ofSeawater(temperature, 0), within(1e-6));
            assertThat(Teos10.density(temperature, trace)).isCloseTo(Teos10.density(temperature, 0), within(1e-6));
            assertThat(Teos10.specificHeat(temperature, trace))
                    .isCloseTo(Teos10.specificHeat(temperature, 0), within(1e-5));
            assertThat(PolynomialDensity.ofSeawater(temperature, trace))
                    .isCloseTo(PolynomialDensity.ofSeawater(temperature, 0), within(1e-6));
        });
    }

    @Test
    void saltierWaterIsHeavierByEveryLaw() {
        SeededCases.check(draw -> {
            double temperature = draw.between(-2, 40);
            double salinity = draw.between(0, 42);
            double saltier = salinity + draw.between(1e-4, 5);
            assertThat(Density.ofSeawater(temperature, saltier))
                    .isGreaterThan(Density.ofSeawater(temperature, salinity));
            assertThat(Teos10.density(temperature, saltier)).isGreaterThan(Teos10.density(temperature, salinity));
            assertThat(PolynomialDensity.ofSeawater(temperature, saltier))
                    .isGreaterThan(PolynomialDensity.ofSeawater(temperature, salinity));
        });
    }

    /** Above S 24.7 water is heaviest at its freezing point (any textbook of oceanography). */
    @Test
    void warmerSeawaterIsLighterByEveryLaw() {
        SeededCases.check(draw -> {
            double temperature = draw.between(-1, 39);
            double salinity = draw.between(26, 42);
            double warmer = temperature + draw.between(1e-3, 1);
            assertThat(Density.ofSeawater(warmer, salinity)).isLessThan(Density.ofSeawater(temperature, salinity));
            assertThat(Teos10.density(warmer, salinity)).isLessThan(Teos10.density(temperature, salinity));
            assertThat(PolynomialDensity.ofSeawater(warmer, salinity))
                    .isLessThan(PolynomialDensity.ofSeawater(temperature, salinity));
        });
    }

    /** Pure water is heaviest at 3.98 degC, 999.975 kg/m3 (CRC Handbook, from memory). */
    @Test
    void freshWaterIsHeaviestAtFourDegrees() {
        assertThat(Teos10.thermalExpansion(3.95, 0)).isNegative();
        assertThat(Teos10.thermalExpansion(4.01, 0)).isPositive();
        assertThat(Teos10.density(3.98, 0)).isCloseTo(999.975, within(5e-4));
        assertThat(Density.ofPureWater(3.98)).isCloseTo(999.975, within(5e-4));
    }

    /** Expansion and contraction are the slopes of the density beside them: central differences. */
    @Test
    void expansionAndContractionAreTheSlopesOfDensity() {
        SeededCases.check(draw -> {
            double temperature = draw.between(0, 40);
            double salinity = draw.between(1, 42);
            double density = Teos10.density(temperature, salinity);
            double byTemperature =
                    (Teos10.density(temperature + STEP, salinity) - Teos10.density(temperature - STEP, salinity))
                            / (2 * STEP);
            double bySalinity =
                    (Teos10.density(temperature, salinity + STEP) - Teos10.density(temperature, salinity - STEP))
                            / (2 * STEP * 35.16504 / 35);
            assertThat(Teos10.thermalExpansion(temperature, salinity))
                    .isCloseTo(-byTemperature / density, within(1e-9));
            assertThat(Teos10.halineContraction(temperature, salinity)).isCloseTo(bySalinity / density, within(1e-9));
        });
    }

    /** dh/dT at constant pressure is c_p: two functions typed apart. */
    @Test
    void conservativeTemperatureRisesAsTheSpecificHeatSays() {
        SeededCases.check(draw -> {
            double temperature = draw.between(0, 40);
            double salinity = draw.between(0, 42);
            double slope = (ConservativeTemperature.fromInSitu(temperature + STEP, salinity)
                            - ConservativeTemperature.fromInSitu(temperature - STEP, salinity))
                    / (2 * STEP);
            assertThat(slope * ConservativeTemperature.SPECIFIC_HEAT)
                    .isCloseTo(Teos10.specificHeat(temperature, salinity), within(1e-4));
        });
    }

    @Test
    void everyTemperatureComesBackFromConservativeTemperature() {
        SeededCases.check(draw -> {
            double temperature = draw.between(-10, 60);
            double salinity = draw.between(0, 120);
            double conservative = ConservativeTemperature.fromInSitu(temperature, salinity);
            assertThat(ConservativeTemperature.toInSitu(conservative, salinity)).isCloseTo(temperature, within(1e-10));
        });
    }
}
