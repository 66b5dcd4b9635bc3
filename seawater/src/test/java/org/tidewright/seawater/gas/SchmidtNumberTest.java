package org.tidewright.seawater.gas;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class SchmidtNumberTest {
    /** Wanninkhof 2014, table 1, prints 568 for oxygen in seawater at 20 degC. */
    @Test
    void ofOxygenAtTwentyDegreesIsThePrintedOne() {
        assertThat(SchmidtNumber.ofOxygen(20)).isCloseTo(568, within(0.5));
    }

    /**
     * The definition, from laws of other authors: viscosity 0.000959 Pa s over density 1023.34 kg/m3 (IAPWS-based, 25
     * degC, S 35) and a diffusivity of 2.1e-9 to 2.3e-9 m2/s, within which the published measurements lie.
     */
    @Test
    void isViscosityOverDiffusivity() {
        double kinematicViscosity = 0.000959 / 1023.34;
        assertThat(SchmidtNumber.ofOxygen(25)).isBetween(kinematicViscosity / 2.3e-9, kinematicViscosity / 2.05e-9);
    }

    /** Each coefficient as printed, summed term by term at 40 and at 10 degC with pencil and paper. */
    @Test
    void equalsTheSumOfItsTerms() {
        // 1920.4 - 5424 + 8339.52 - 7000.96 + 2400.6912
        assertThat(SchmidtNumber.ofOxygen(40)).isCloseTo(235.6512, within(1e-9));
        // 1920.4 - 1356 + 521.22 - 109.39 + 9.3777
        assertThat(SchmidtNumber.ofOxygen(10)).isCloseTo(985.6077, within(1e-9));
    }

    /** Wanninkhof 2014, table 1, prints 668 for carbon dioxide in seawater at 20 degC. */
    @Test
    void ofCarbonDioxideAtTwentyDegreesIsThePrintedOne() {
        assertThat(SchmidtNumber.ofCarbonDioxide(20)).isCloseTo(668, within(0.5));
    }

    /** As above, by hand at 40 and at 10 degC. */
    @Test
    void ofCarbonDioxideEqualsTheSumOfItsTerms() {
        // 2116.8 - 5450 + 7576.48 - 5907.648 + 1934.08
        assertThat(SchmidtNumber.ofCarbonDioxide(40)).isCloseTo(269.712, within(1e-9));
        // 2116.8 - 1362.5 + 473.53 - 92.307 + 7.555
        assertThat(SchmidtNumber.ofCarbonDioxide(10)).isCloseTo(1143.078, within(1e-9));
    }

    /**
     * Carbon dioxide, the larger molecule, diffuses more slowly: 1.92e-9 against 2.2e-9 m2/s at 25 degC, from memory.
     */
    @Test
    void carbonDioxideDiffusesMoreSlowlyThanOxygen() {
        for (double temperature : new double[] {-2, 0, 10, 25, 40}) {
            assertThat(SchmidtNumber.ofCarbonDioxide(temperature) / SchmidtNumber.ofOxygen(temperature))
                    .isBetween(1.05, 1.25);
        }
    }

    @Test
    void refusesKelvin() {
        assertThatThrownBy(() -> SchmidtNumber.ofCarbonDioxide(293)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> SchmidtNumber.ofOxygen(293)).isInstanceOf(IllegalArgumentException.class);
    }
}
