package org.tidewright.husbandry.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.tidewright.husbandry.sheet.SheetColumn.*;

import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.tidewright.seawater.carbonate.BoronRatio;

class WaterSheetTest {
    private static WaterSheet sheet(Map<SheetColumn, Double> given) {
        return WaterSheet.of(given, BoronRatio.UPPSTROM_1974, null);
    }

    /** PyCO2SYS 1.8.3.4 (constants of Lueker et al. 2000, boron of Uppstrom 1974): alkalinity 2400, DIC 2088, S 35, 25 °C. */
    @Test
    void twoOfTheFourSettleAllTheRest() {
        WaterSheet sheet = sheet(Map.of(
                TEMPERATURE, 25.0, PRACTICAL_SALINITY, 35.0, TOTAL_ALKALINITY, 2400.0, INORGANIC_CARBON, 2088.0));
        Map<SheetColumn, Double> computed = sheet.computed();
        assertThat(computed.get(PH_TOTAL)).isCloseTo(8.050501963727777, within(1e-9));
        assertThat(computed.get(PARTIAL_PRESSURE)).isCloseTo(409.60036779497955, within(1e-5));
        assertThat(computed.get(CARBONATE)).isCloseTo(224.93997066625806, within(1e-5));
        assertThat(computed.get(ARAGONITE)).isCloseTo(3.569109531147343, within(1e-7));
        assertThat(sheet.used())
                .containsExactlyInAnyOrder(TEMPERATURE, PRACTICAL_SALINITY, TOTAL_ALKALINITY, INORGANIC_CARBON);
        assertThat(computed).doesNotContainKeys(TOTAL_ALKALINITY, INORGANIC_CARBON, TEMPERATURE);
    }

    @Test
    void whereMoreThanTwoAreGivenTheFirstTwoOfTheListDecide() {
        WaterSheet two =
                sheet(Map.of(TEMPERATURE, 25.0, PRACTICAL_SALINITY, 35.0, TOTAL_ALKALINITY, 2400.0, PH_TOTAL, 8.1));
        WaterSheet three = sheet(Map.of(
                TEMPERATURE,
                25.0,
                PRACTICAL_SALINITY,
                35.0,
                TOTAL_ALKALINITY,
                2400.0,
                PH_TOTAL,
                8.1,
                PARTIAL_PRESSURE,
                999.0));
        assertThat(three.computed()).isEqualTo(two.computed());
        assertThat(three.used()).doesNotContain(PARTIAL_PRESSURE);
    }

    @Test
    void conductivityStandsForSalinityUnlessSalinityIsGiven() {
        // UNESCO 1983: 42.914 mS/cm at 15 °C on IPTS-68 is S = 35.
        WaterSheet from = sheet(Map.of(TEMPERATURE, 15 / 1.00024, CONDUCTIVITY, 42.914));
        assertThat(from.computed().get(PRACTICAL_SALINITY)).isCloseTo(35, within(1e-6));
        WaterSheet both = sheet(Map.of(TEMPERATURE, 15.0, CONDUCTIVITY, 1.0, PRACTICAL_SALINITY, 35.0));
        assertThat(both.used()).doesNotContain(CONDUCTIVITY);
        assertThat(both.computed().get(CONDUCTIVITY)).isCloseTo(42.914, within(0.01));
    }

    @Test
    void littleKnownGivesLittleAndNothingKnownGivesNothing() {
        assertThat(sheet(Map.of()).computed()).isEmpty();
        assertThat(sheet(Map.of(PRACTICAL_SALINITY, 35.0)).computed())
                .containsKey(ABSOLUTE_SALINITY)
                .doesNotContainKey(DENSITY_EOS80);
        WaterSheet ph = sheet(Map.of(TEMPERATURE, 25.0, PRACTICAL_SALINITY, 35.0, PH_TOTAL, 8.0));
        assertThat(ph.computed()).containsKeys(NH3_SHARE, PH_NBS).doesNotContainKeys(BICARBONATE, PH_TOTAL);
    }

    @Test
    void aMeasuredCalciumMovesTheSaturationAndNothingElse() {
        Map<SheetColumn, Double> given =
                Map.of(TEMPERATURE, 25.0, PRACTICAL_SALINITY, 35.0, TOTAL_ALKALINITY, 2400.0, PH_TOTAL, 8.1);
        Map<SheetColumn, Double> natural = sheet(given).computed();
        Map<SheetColumn, Double> half = WaterSheet.of(
                        given, BoronRatio.UPPSTROM_1974, 0.5e-6 * number(natural, TOTAL_CALCIUM))
                .computed();
        assertThat(half.get(ARAGONITE)).isCloseTo(number(natural, ARAGONITE) / 2, within(1e-12));
        assertThat(half.get(PARTIAL_PRESSURE)).isEqualTo(natural.get(PARTIAL_PRESSURE));
    }

    private static double number(Map<SheetColumn, Double> sheet, SheetColumn column) {
        return sheet.getOrDefault(column, Double.NaN);
    }

    @Test
    void aNumberThatCannotBeMeantIsRefused() {
        assertThatThrownBy(() -> sheet(Map.of(TEMPERATURE, 77.0, PRACTICAL_SALINITY, 35.0)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("fahrenheit");
    }

    @Test
    void everyColumnHasItsOwnNameEndingInItsUnit() {
        Set<String> names = new TreeSet<>();
        for (SheetColumn column : SheetColumn.values()) {
            assertThat(names.add(column.key())).as(column.key()).isTrue();
            assertThat(column.key()).matches("[a-z0-9_]+");
            assertThat(column.source()).isNotBlank();
            if (column.unit().equals("µmol/kg")) {
                assertThat(column.key()).endsWith("_umol_kg");
            }
        }
    }
}
