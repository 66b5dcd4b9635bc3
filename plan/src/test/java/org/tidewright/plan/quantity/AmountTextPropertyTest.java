package org.tidewright.plan.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tidewright.testkit.SeededCases;

class AmountTextPropertyTest {
    private static final List<SiUnit> TARGETS = List.of(
                    "m",
                    "m^2",
                    "m^3",
                    "kg",
                    "s",
                    "degC",
                    "W",
                    "J",
                    "m^3/s",
                    "1/s",
                    "kg/m^3",
                    "mol/m^3",
                    "mol/(m^3*s)",
                    "mol/(m^2*s)",
                    "1")
            .stream()
            .map(SiUnit::of)
            .toList();

    @Test
    void anAmountReadsBackAsItWasWritten() {
        SeededCases.check(draw -> {
            String symbol = draw.oneOf(
                    "m",
                    "cm",
                    "in",
                    "m²",
                    "L",
                    "gal",
                    "kg",
                    "lb",
                    "h",
                    "°C",
                    "°F",
                    "W",
                    "kWh",
                    "L/h",
                    "/h",
                    "mL/d",
                    "mg/L",
                    "dKH",
                    "µmol/L",
                    "dKH/d",
                    "µmol/m²/s",
                    "ppm",
                    "%",
                    "");
            TextUnit unit = TextUnit.spelt(symbol).orElseThrow();
            SiUnit target =
                    TARGETS.stream().filter(unit::isCompatibleWith).findFirst().orElseThrow();
            double doubt = draw.oneOf(0.0, draw.between(0, 1e9), draw.between(0, 1e-9));
            double number = draw.oneOf(0.0, draw.between(-1e9, 1e9), draw.between(-1e-9, 1e-9));
            Amount amount = new Amount(number, unit, doubt);
            assertThat(AmountText.read(amount.toString(), target)).isEqualTo(amount);
        });
    }

    @Test
    void noTextMakesTheReaderFail() {
        SeededCases.check(draw -> {
            String text = draw.text();
            for (String unit : List.of("m", "degC", "1")) {
                try {
                    assertThat(AmountText.read(text, SiUnit.of(unit)).number()).isFinite();
                } catch (AmountText.Unreadable expected) {
                    assertThat(expected.found()).isNotEmpty();
                }
            }
        });
    }
}
