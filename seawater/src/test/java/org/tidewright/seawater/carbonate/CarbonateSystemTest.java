package org.tidewright.seawater.carbonate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;

class CarbonateSystemTest {
    private final CarbonateSystem water = CarbonateSystem.at(25, 35);

    @Test
    void amountsInTheWrongUnitAreRefusedWithTheLikelySlip() {
        refused(() -> water.fromAlkalinityAndCarbon(2300, 2e-3), "alkalinity 2300.0 mol/kg", "umol/kg, meq/L or dKH?");
        refused(() -> water.fromAlkalinityAndCarbon(2.3e-3, 2000), "inorganic carbon", "umol/kg or mg/L?");
        refused(() -> water.fromAlkalinityAndPartialPressure(2.3e-3, 420), "fugacity of carbon dioxide", "ppm?");
        refused(() -> water.fromAlkalinityAndCarbonate(2.3e-3, 250), "carbonate ion", "umol/kg?");
        refused(() -> water.fromAlkalinityAndPh(2.3e-3, 81), "pH 81.0");
        refused(() -> CarbonateSystem.at(298.15, 35), "kelvin");
        refused(() -> water.totals().withCalcium(420), "calcium", "mg/L?");
    }

    @Test
    void whatIsNotANumberIsRefused() {
        refused(() -> water.fromAlkalinityAndCarbon(Double.NaN, 2e-3), "alkalinity NaN");
        refused(() -> water.fromCarbonAndPh(Double.NaN, 8), "inorganic carbon NaN");
        refused(() -> water.fromAlkalinityAndPh(2.3e-3, Double.NaN), "pH NaN");
        refused(() -> water.fromAlkalinityAndPartialPressure(2.3e-3, Double.NaN), "NaN");
    }

    @Test
    void pairsThatNoWaterHasAreRefusedWithTheReason() {
        refused(() -> water.fromAlkalinityAndPh(5e-5, 9), "without any carbon");
        refused(() -> water.fromCarbonAndPartialPressure(1e-5, 0.1), "less than the inorganic carbon");
        refused(() -> water.fromCarbonAndCarbonate(1e-3, 2e-3), "less than the inorganic carbon");
        refused(() -> water.fromAlkalinityAndCarbonate(2.3e-3, 1.2e-3), "no room for it at any pH");
    }

    /** Borate is 3 to 5 % of the alkalinity of the sea at pH 8.1 and S = 35; common knowledge of the field. */
    @Test
    void borateIsASmallShareOfTheSeasAlkalinity() {
        assertThat(water.fromAlkalinityAndPh(2.3e-3, 8.1).borateShareOfAlkalinity())
                .isBetween(0.03, 0.05);
    }

    /** Worked by hand: 9.0 x 20/56.0774 = 3.20985 meq/L, x 50.04345 = 160.63 mg/L; 2.5 meq/L at 1023.34 kg/m3. */
    @Test
    void alkalinityGoesBetweenTheUnitsOfTheTrade() {
        double perVolume = Alkalinity.fromGermanDegrees(9);
        assertThat(perVolume).isCloseTo(3.20985, within(5e-6));
        assertThat(Alkalinity.toCalciumCarbonate(perVolume)).isCloseTo(160.63, within(0.01));
        assertThat(Alkalinity.toGermanDegrees(1)).isCloseTo(2.8039, within(5e-5));
        assertThat(Alkalinity.fromCalciumCarbonate(50.04345)).isCloseTo(1, within(1e-9));
        double perMass = Alkalinity.perMass(2.5, 25, 35);
        assertThat(perMass).isCloseTo(2.44298e-3, within(1e-8));
        assertThat(Alkalinity.perVolume(perMass, 25, 35)).isCloseTo(2.5, within(1e-14));
    }

    private static void refused(ThrowingCallable call, String... parts) {
        assertThatThrownBy(call).isInstanceOf(IllegalArgumentException.class).hasMessageContainingAll(parts);
    }
}
