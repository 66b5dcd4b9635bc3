package org.tidewright.husbandry.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.tidewright.plan.model.UnitSystem;

class SheetTextTest {
    private static String told(SheetColumn column, double value) {
        SheetText.Told told = SheetText.of(column, value, UnitSystem.METRIC);
        return (told.value() + " " + told.unit()).strip().replace('\u00a0', ' ').replace('\u202f', ' ');
    }

    @Test
    void fourDigitsCountInMostNumbers() {
        assertThat(told(SheetColumn.INORGANIC_CARBON, 2087.96)).isEqualTo("2 088 µmol/kg");
        assertThat(told(SheetColumn.TOTAL_SULFATE, 28235.4)).isEqualTo("28 240 µmol/kg");
        assertThat(told(SheetColumn.OXYGEN_PER_VOLUME, 6.7707)).isEqualTo("6.771 mg/L");
        assertThat(told(SheetColumn.FREE_HYDROGEN, 0.0067494)).isEqualTo("0.006749 µmol/kg");
        assertThat(told(SheetColumn.REVELLE, 9.99999)).isEqualTo("10.00");
        assertThat(told(SheetColumn.PO4, 0)).isEqualTo("0 µmol/kg");
    }

    @Test
    void aConstantIsTimesAPowerOfTen() {
        assertThat(told(SheetColumn.K1, 1.42183e-6)).isEqualTo("1.422 × 10⁻⁶ mol/kg");
        assertThat(told(SheetColumn.K2, 9.99996e-10)).isEqualTo("1.000 × 10⁻⁹ mol/kg");
    }

    @Test
    void sharesArePerCentAndPhHasThreeDecimals() {
        assertThat(told(SheetColumn.NH3_SHARE, 0.0616)).isEqualTo("6.16 %");
        assertThat(told(SheetColumn.BORATE_SHARE, 0.0337)).isEqualTo("3.37 %");
        assertThat(told(SheetColumn.PH_NBS, 8.2)).isEqualTo("8.200");
    }

    @Test
    void instrumentsAreToldAsFinelyAsTheyAreRead() {
        assertThat(told(SheetColumn.SPECIFIC_GRAVITY_25, 1.02637)).isEqualTo("1.0264");
        assertThat(told(SheetColumn.REFRACTIVE_INDEX, 1.338858)).isEqualTo("1.33886");
        assertThat(told(SheetColumn.DENSITY_EOS80, 1023.341)).isEqualTo("1 023.3 kg/m³");
    }

    /** 25 °C are 77 °F. */
    @Test
    void onlyTheTemperatureFollowsTheReadersUnits() {
        assertThat(SheetText.of(SheetColumn.TEMPERATURE, 25, UnitSystem.US)).isEqualTo(new SheetText.Told("77", "°F"));
        assertThat(SheetText.of(SheetColumn.ALKALINITY_DKH, 8, UnitSystem.US).unit())
                .isEqualTo("dKH");
    }

    @Test
    void carbonDioxideIsToldToTwoDigits() {
        assertThat(SheetText.ppm(826.7)).isEqualTo("830");
        assertThat(SheetText.ppm(1049)).isEqualTo("1\u202f000");
        assertThat(SheetText.ppm(42.4)).isEqualTo("42");
    }
}
