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

    @Test
    void refusesKelvin() {
        assertThatThrownBy(() -> SchmidtNumber.ofOxygen(293)).isInstanceOf(IllegalArgumentException.class);
    }
}
