package org.tidewright.seawater.gas;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.tidewright.seawater.heat.VapourPressure;

class OxygenSolubilityTest {
    @Test
    void oneAtmosphereChangesNothing() {
        assertThat(OxygenSolubility.pressureFactor(25, 35, 101325)).isEqualTo(1);
    }

    @Test
    void waterThatBoilsHoldsNoOxygen() {
        double vapour = VapourPressure.ofSeawater(60, 35); // 19.6 kPa: below what counts as air, so take 20 kPa
        assertThat(OxygenSolubility.pressureFactor(60, 35, 20_000))
                .isCloseTo((20_000 - vapour) / (101325 - vapour), within(1e-15))
                .isLessThan(0.01);
    }

    /**
     * Benson and Krause 1984, eq. 24, as USGS Water Quality Memorandum 2011.03 prints it, with the vapour pressure of
     * Green and Carritt 1967 and their second-order term theta: fresh water at 25 degC and 85 kPa.
     */
    @Test
    void pressureFactorLiesNearBensonAndKrause() {
        double atmospheres = 85_000 / 101325.0;
        double kelvin = 298.15;
        double vapour = Math.exp(18.1973 * (1 - 373.16 / kelvin)
                + 3.1813e-7 * (1 - Math.exp(26.1205 * (1 - kelvin / 373.16)))
                - 0.018726 * (1 - Math.exp(8.03945 * (1 - 373.16 / kelvin)))
                + 5.02802 * Math.log(373.16 / kelvin));
        double theta = 0.000975 - 1.426e-5 * 25 + 6.436e-8 * 25 * 25;
        double expected =
                atmospheres * (1 - vapour / atmospheres) * (1 - theta * atmospheres) / ((1 - vapour) * (1 - theta));
        // theta (1 - P) = 1.1e-4 is the term left out
        assertThat(OxygenSolubility.pressureFactor(25, 0, 85_000)).isCloseTo(expected, within(1.2e-4));
    }

    @Test
    void solubilityUnderALowPressureIsTheProductOfTheTwo() {
        // by hand: 0.2116 mol/m3 at 25 degC, S 35 (6.771 mg/L); (90000 - 3110.6) / (101325 - 3110.6) = 0.88469
        assertThat(OxygenSolubility.perVolume(25, 35, 90_000)).isCloseTo(0.2116 * 0.88469, within(1e-4));
    }

    @Test
    void refusesNonsense() {
        assertThatThrownBy(() -> OxygenSolubility.perMass(298.15, 35))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("298.15")
                .hasMessageContaining("degC")
                .hasMessageContaining("kelvin");
        assertThatThrownBy(() -> OxygenSolubility.perMass(25, -1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> OxygenSolubility.perMass(Double.NaN, 35)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> OxygenSolubility.pressureFactor(25, 35, 1013.25))
                .hasMessageContaining("air pressure 1013.25 Pa");
    }
}
