package org.tidewright.plan.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class AmountTextPropertyTest {
    @Property
    void anAmountReadsBackAsItWasWritten(
            @ForAll("numbers") double number, @ForAll("numbers") double doubt, @ForAll("units") TextUnit unit)
            throws AmountText.Unreadable {
        SiUnit target = List.of("m", "m^2", "m^3", "kg", "s", "degC", "W", "J", "m^3/s", "1").stream()
                .map(SiUnit::of)
                .filter(unit::isCompatibleWith)
                .findFirst()
                .orElseThrow();
        Amount amount = new Amount(number, unit, Math.abs(doubt));
        assertThat(AmountText.read(amount.toString(), target)).isEqualTo(amount);
    }

    @Property
    void noTextMakesTheReaderFail(@ForAll String text) {
        for (String unit : List.of("m", "degC", "1")) {
            try {
                assertThat(AmountText.read(text, SiUnit.of(unit)).number()).isFinite();
            } catch (AmountText.Unreadable expected) {
                assertThat(expected.found()).isNotEmpty();
            }
        }
    }

    @Provide
    Arbitrary<Double> numbers() {
        return Arbitraries.doubles().between(-1e9, 1e9);
    }

    @Provide
    Arbitrary<TextUnit> units() {
        return Arbitraries.of(
                        "m", "cm", "in", "m²", "L", "gal", "kg", "lb", "h", "°C", "°F", "W", "kWh", "L/h", "%", "")
                .map(symbol -> TextUnit.spelt(symbol).orElseThrow());
    }
}
