package org.tidewright.seawater.gas;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.tidewright.testkit.SeededCases;

class OxygenPropertyTest {
    /**
     * Fresh water under one atmosphere, tables of Benson and Krause (USGS 2011), from memory: 14.62, 9.09, 8.26 mg/L.
     */
    @Test
    void withoutSaltItIsTheFreshWaterTable() {
        double[] temperatures = {0, 20, 25};
        double[] printed = {14.62, 9.09, 8.26};
        for (int i = 0; i < printed.length; i++) {
            assertThat(OxygenSolubility.massPerVolume(temperatures[i], 0)).isCloseTo(printed[i], within(0.01));
        }
    }

    @Test
    void warmerSaltierAndHigherWaterHoldsLess() {
        SeededCases.check(draw -> {
            double temperature = draw.between(0, 39);
            double salinity = draw.between(0, 40);
            double pressure = draw.between(50_000, 105_000);
            double here = OxygenSolubility.perVolume(temperature, salinity, pressure);
            assertThat(OxygenSolubility.perVolume(temperature + draw.between(1e-3, 1), salinity, pressure))
                    .isLessThan(here);
            assertThat(OxygenSolubility.perVolume(temperature, salinity + draw.between(1e-3, 2), pressure))
                    .isLessThan(here);
            assertThat(OxygenSolubility.perVolume(temperature, salinity, pressure - draw.between(1, 1000)))
                    .isLessThan(here);
        });
    }

    @Test
    void bothGasesDiffuseFasterInWarmerWater() {
        SeededCases.check(draw -> {
            double temperature = draw.between(-2, 39);
            double warmer = temperature + draw.between(1e-3, 1);
            assertThat(SchmidtNumber.ofOxygen(warmer)).isLessThan(SchmidtNumber.ofOxygen(temperature));
            assertThat(SchmidtNumber.ofCarbonDioxide(warmer)).isLessThan(SchmidtNumber.ofCarbonDioxide(temperature));
        });
    }
}
