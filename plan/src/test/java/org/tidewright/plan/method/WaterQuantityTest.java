package org.tidewright.plan.method;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class WaterQuantityTest {
    // Factors: definition of the German degree (10 mg/L CaO), IUPAC molar masses, NIST SP 811 for °F; worked by hand.
    @ParameterizedTest
    @CsvSource({
        "ALKALINITY, dKH, 9, 3.20985",
        "ALKALINITY, meq/L, 3.2, 3.2",
        "ALKALINITY, ppm, 160.6, 3.20921",
        "TEMPERATURE, °F, 77, 25",
        "CALCIUM, ppm, 420, 0.42",
        "NITRATE, ppm NO3-N, 2.259, 0.0100002",
        "NITRITE, mg/L N, 0.1, 0.00032845",
        "AMMONIA, mg/L NH4, 1.287848, 0.001",
        "PHOSPHATE, ppb, 10, 3.06619e-5",
        "PHOSPHATE, mg/L P, 0.01, 3.06619e-5"
    })
    void readsTheUnitsOfTheTrade(WaterQuantity quantity, String unit, double written, double held) {
        double found = quantity.unitSpelt(unit).orElseThrow().toHeld(written);
        assertThat(found).isCloseTo(held, within(2e-5 * held));
    }

    @Test
    void specificGravityAndConductivityOfTheSeaReadThirtyFive() {
        // 1.02637 at 25/25 °C by EOS-80 density; 53.07 mS/cm at 25 °C by PSS-78 with temperature on ITS-90.
        assertThat(WaterQuantity.SALINITY.unitSpelt("SG").orElseThrow().toHeld(1.02637))
                .isCloseTo(35, within(0.01));
        assertThat(WaterQuantity.SALINITY.unitSpelt("mS/cm").orElseThrow().toHeld(53.07))
                .isCloseTo(35, within(0.01));
    }

    @Test
    void anElectrodeOnTheNbsScaleReadsAboutAnEighthAboveTheTotalScale() {
        double nbs = WaterQuantity.PH.unitSpelt("total").orElseThrow().toHeld(8.0);
        assertThat(nbs).isBetween(8.10, 8.16);
    }

    @ParameterizedTest
    @EnumSource(WaterQuantity.class)
    void everyUnitLeadsThereAndBack(WaterQuantity quantity) {
        double held = 0.3 * quantity.least() + 0.7 * quantity.most();
        for (QuantityUnit unit : quantity.units()) {
            assertThat(unit.toHeld(unit.fromHeld(held))).as(unit.symbol()).isCloseTo(held, within(1e-9 * held));
            assertThat(unit.errorToHeld(unit.fromHeld(held), unit.errorFromHeld(held, 1e-3)))
                    .as(unit.symbol())
                    .isCloseTo(1e-3, within(1e-9));
        }
    }

    @ParameterizedTest
    @EnumSource(WaterQuantity.class)
    void noTwoUnitsOfAQuantityShareAKeyOrASpelling(WaterQuantity quantity) {
        assertThat(quantity.units()).extracting(QuantityUnit::key).doesNotHaveDuplicates();
        for (QuantityUnit unit : quantity.units()) {
            assertThat(quantity.unitSpelt(unit.symbol())).contains(unit);
            unit.otherSpellings()
                    .forEach(
                            spelling -> assertThat(quantity.unitSpelt(spelling)).contains(unit));
        }
        assertThat(WaterQuantity.ofKey(quantity.key())).contains(quantity);
    }

    @Test
    void aQuantityIsKnownByItsWordsAndByTheSymbolsOfTheTrade() {
        assertThat(WaterQuantity.named(" Alkalinity ")).contains(WaterQuantity.ALKALINITY);
        assertThat(WaterQuantity.named("PO4")).contains(WaterQuantity.PHOSPHATE);
        assertThat(WaterQuantity.named("pH")).contains(WaterQuantity.PH);
        assertThat(WaterQuantity.named("hardness")).isEmpty();
        assertThat(Arrays.stream(WaterQuantity.values()).flatMap(quantity -> quantity.names().stream()))
                .doesNotHaveDuplicates();
    }

    @Test
    void aDifferenceOfTemperatureKnowsNoZero() {
        QuantityUnit fahrenheit = WaterQuantity.TEMPERATURE.units().get(1);
        assertThat(fahrenheit.errorToHeld(77, 0.9)).isCloseTo(0.5, within(1e-9));
    }
}
