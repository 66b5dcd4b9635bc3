package org.tidewright.seawater.gas;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.tidewright.testkit.SeededCases;

class OxygenPressureTest {
    private static final double PASCAL_PER_MM_HG = 133.322;

    /** Textbooks of physiology, from memory: 159 mmHg in dry air, 149 in air moistened at 37 degC, at sea level. */
    @Test
    void dryAndMoistAirHoldWhatPhysiologySays() {
        assertThat(OxygenPressure.inAir(20, 0, 101325) / PASCAL_PER_MM_HG).isCloseTo(159, within(0.5));
        assertThat(OxygenPressure.inAir(37, 1, 101325) / PASCAL_PER_MM_HG).isCloseTo(149, within(0.5));
    }

    /**
     * Sander 2015, Atmos. Chem. Phys. 15, 4399, from memory: 1.3e-5 mol/(m3 Pa) in water of 25 degC, the measurements 1.2 to 1.3.
     */
    @Test
    void pureOxygenDissolvesAsHenrysConstantSays() {
        assertThat(OxygenPressure.equilibrium(100_000, 25, 0)).isCloseTo(1.25, within(0.05));
    }

    /** At the surface a gas's oxygen pressure and the factor for air pressure say the same thing. */
    @Test
    void underOpenAirItIsTheSolubilityUnderThatPressure() {
        SeededCases.check(draw -> {
            double temperature = draw.between(0, 40);
            double salinity = draw.between(0, 42);
            double pressure = draw.between(50_000, 110_000);
            double atWater = OxygenPressure.atWater(temperature, salinity, pressure);
            double expected = OxygenSolubility.perVolume(temperature, salinity, pressure);
            assertThat(OxygenPressure.equilibrium(atWater, temperature, salinity) / expected)
                    .isCloseTo(1, within(1e-14));
            assertThat(OxygenPressure.inWater(expected, temperature, salinity) / atWater)
                    .isCloseTo(1, within(1e-14));
        });
    }

    /** By hand: saturated room air of 25 degC has 0.20946 x 3169.8 = 664 Pa less than dry, 3.1 % of 21223.5. */
    @Test
    void moistureTakesTheOxygensPlace() {
        double dry = OxygenPressure.inAir(25, 0, 101325);
        assertThat(dry).isCloseTo(21223.5, within(0.1));
        assertThat(dry - OxygenPressure.inAir(25, 1, 101325)).isCloseTo(664, within(0.1));
    }

    @Test
    void perCentAndHectopascalAreRefused() {
        assertThatThrownBy(() -> OxygenPressure.inAir(25, 50, 101325)).hasMessageContaining("relative humidity");
        assertThatThrownBy(() -> OxygenPressure.atWater(25, 35, 1013)).hasMessageContaining("air pressure");
        assertThatThrownBy(() -> OxygenPressure.equilibrium(-1, 25, 35)).hasMessageContaining("partial pressure");
        assertThatThrownBy(() -> OxygenPressure.inWater(210, 25, 35)).hasMessageContaining("umol/kg");
    }
}
