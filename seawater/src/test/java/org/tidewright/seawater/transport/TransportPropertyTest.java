package org.tidewright.seawater.transport;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.tidewright.testkit.SeededCases;

class TransportPropertyTest {
    @Test
    void withoutSaltViscosityIsThatOfPureWater() {
        SeededCases.check(draw -> {
            double temperature = draw.between(-2, 60);
            assertThat(Viscosity.ofSeawater(temperature, 0)).isEqualTo(Viscosity.ofPureWater(temperature));
        });
    }

    @Test
    void saltThickensWaterAndWarmthThinsIt() {
        SeededCases.check(draw -> {
            double temperature = draw.between(0, 40);
            double salinity = draw.between(0, 42);
            double here = Viscosity.ofSeawater(temperature, salinity);
            assertThat(Viscosity.ofSeawater(temperature, salinity + draw.between(1e-3, 2)))
                    .isGreaterThan(here);
            assertThat(Viscosity.ofSeawater(temperature + draw.between(1e-3, 2), salinity))
                    .isLessThan(here);
        });
    }

    @Test
    void warmthHelpsConductionAndSaltHindersIt() {
        SeededCases.check(draw -> {
            double temperature = draw.between(0, 40);
            double salinity = draw.between(0, 42);
            double here = ThermalConductivity.ofSeawater(temperature, salinity);
            assertThat(ThermalConductivity.ofSeawater(temperature + draw.between(1e-3, 2), salinity))
                    .isGreaterThan(here);
            assertThat(ThermalConductivity.ofSeawater(temperature, salinity + draw.between(1e-3, 2)))
                    .isLessThan(here);
        });
    }
}
