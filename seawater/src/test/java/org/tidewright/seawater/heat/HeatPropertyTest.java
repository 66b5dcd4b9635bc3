package org.tidewright.seawater.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.tidewright.seawater.density.Teos10;
import org.tidewright.testkit.SeededCases;

class HeatPropertyTest {
    @Test
    void withoutSaltVapourPressureIsThatOfPureWater() {
        SeededCases.check(draw -> {
            double temperature = draw.between(-2, 60);
            assertThat(VapourPressure.ofSeawater(temperature, 0)).isEqualTo(VapourPressure.ofPureWater(temperature));
        });
    }

    @Test
    void vapourPressureFallsWithSaltAndRisesWithTemperature() {
        SeededCases.check(draw -> {
            double temperature = draw.between(0, 40);
            double salinity = draw.between(0, 40);
            double here = VapourPressure.ofSeawater(temperature, salinity);
            assertThat(VapourPressure.ofSeawater(temperature, salinity + draw.between(1e-3, 2)))
                    .isLessThan(here);
            assertThat(VapourPressure.ofSeawater(temperature + draw.between(1e-3, 2), salinity))
                    .isGreaterThan(here);
        });
    }

    /**
     * Specific heats of pure water at one atmosphere, CRC Handbook from memory: 4.2176, 4.1818, 4.1785 J/(g K) at 0, 20, 40 degC.
     */
    @Test
    void withoutSaltSpecificHeatIsThatOfPureWater() {
        double[] temperatures = {0, 20, 40};
        double[] printed = {4217.6, 4181.8, 4178.5};
        for (int i = 0; i < printed.length; i++) {
            assertThat(SpecificHeat.ofSeawater(temperatures[i], 0)).isCloseTo(printed[i], within(1.0));
            assertThat(Teos10.specificHeat(temperatures[i], 0)).isCloseTo(printed[i], within(2.8));
        }
    }

    @Test
    void saltierWaterTakesLessHeatByBothLaws() {
        SeededCases.check(draw -> {
            double temperature = draw.between(0, 40);
            double salinity = draw.between(0, 40);
            double saltier = salinity + draw.between(1e-3, 2);
            assertThat(SpecificHeat.ofSeawater(temperature, saltier))
                    .isLessThan(SpecificHeat.ofSeawater(temperature, salinity));
            assertThat(Teos10.specificHeat(temperature, saltier))
                    .isLessThan(Teos10.specificHeat(temperature, salinity));
        });
    }

    @Test
    void warmerWaterEvaporatesWithLessHeatByBothLaws() {
        SeededCases.check(draw -> {
            double temperature = draw.between(0, 39);
            double salinity = draw.between(0, 42);
            double warmer = temperature + draw.between(1e-3, 1);
            assertThat(LatentHeat.ofEvaporation(warmer)).isLessThan(LatentHeat.ofEvaporation(temperature));
            assertThat(LatentHeat.ofEvaporationIntoAir(warmer, salinity))
                    .isLessThan(LatentHeat.ofEvaporationIntoAir(temperature, salinity));
        });
    }

    @Test
    void saltAndAirLowerTheFreezingPoint() {
        SeededCases.check(draw -> {
            double salinity = draw.between(0, 100);
            double saltier = salinity + draw.between(1e-3, 5);
            assertThat(FreezingPoint.airFree(saltier)).isLessThan(FreezingPoint.airFree(salinity));
            assertThat(FreezingPoint.airSaturated(salinity)).isLessThan(FreezingPoint.airFree(salinity));
        });
    }

    /** At the freezing point ice and water are in balance: a little below it the ice has the lower potential. */
    @Test
    void belowTheFreezingPointIceIsTheStableOne() {
        SeededCases.check(draw -> {
            double salinity = draw.between(0, 100);
            double freezing = FreezingPoint.airFree(salinity);
            double apart = draw.between(0.001, 0.5);
            assertThat(IceGibbsFunction.value(freezing - apart))
                    .isLessThan(Teos10.chemicalPotentialOfWater(freezing - apart, salinity));
            assertThat(IceGibbsFunction.value(freezing + apart))
                    .isGreaterThan(Teos10.chemicalPotentialOfWater(freezing + apart, salinity));
        });
    }

    /**
     * The heat of melting, 333.4 kJ/kg for pure ice (IAPWS R10-06, from memory), from the slopes of both potentials.
     */
    @Test
    void iceTakesItsHeatOfMelting() {
        double step = 1e-3;
        double entropyOfIce = -(IceGibbsFunction.value(step) - IceGibbsFunction.value(-step)) / (2 * step);
        double entropyOfWater =
                -(Teos10.chemicalPotentialOfWater(step, 0) - Teos10.chemicalPotentialOfWater(-step, 0)) / (2 * step);
        assertThat(273.15 * (entropyOfWater - entropyOfIce)).isCloseTo(333_430, within(50.0));
    }
}
