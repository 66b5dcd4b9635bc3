package org.tidewright.plan.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AmountTextTest {
    /** Exact factors: NIST Special Publication 811 (2008), appendix B. */
    @ParameterizedTest
    @CsvSource({
        "1 in, m, 0.0254",
        "1 ft, m, 0.3048",
        "1 gal, m^3, 3.785411784e-3",
        "1 gph, m^3/s, 1.0515032733333333e-6",
        "1 lb, kg, 0.45359237",
        "1 oz, kg, 0.028349523125",
        "212 °F, degC, 100",
        "77 °F, degC, 25",
        "0.5 °F, K, 0.2777777777777778",
        "0.3 °C, K, 0.3",
        "1 kWh, J, 3.6e6",
        "1 1/2 in, m, 0.0381",
        "3/16 in, m, 0.0047625",
        "50 %, 1, 0.5",
        "35, 1, 35",
        "0.42 L/kg, m^3/kg, 0.42e-3",
        "9 h, s, 32400",
    })
    void convertsAsTheStandardSays(String text, String unit, double expected) throws AmountText.Unreadable {
        assertThat(AmountText.read(text, SiUnit.of(unit)).in(unit))
                .isCloseTo(expected, within(1e-12 * Math.max(1e-6, Math.abs(expected))));
    }

    @Test
    void aDoubtMayStandInItsOwnUnitOrShareTheUnit() throws AmountText.Unreadable {
        SiUnit metre = SiUnit.of("m");
        assertThat(AmountText.read("48.5 cm ± 3 mm", metre).doubtIn("m")).isCloseTo(0.003, within(1e-15));
        assertThat(AmountText.read("48.5 ± 0.3 cm", metre).doubtIn("m")).isCloseTo(0.003, within(1e-15));
        assertThat(AmountText.read("48.5 +/- 0.3 cm", metre)).hasToString("48.5 cm ± 0.3 cm");
        assertThat(AmountText.read("78 °F ± 1 °F", SiUnit.of("degC")).doubtIn("degC"))
                .isCloseTo(5.0 / 9, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"cm, m", "12, m", "12 parsec, m", "1e999 m, m", "12 cm cm, m", "± 3 cm, m", "12 cm ± -1 cm, m", "'', m"
    })
    void whatIsNoAmountIsRefused(String text, String unit) {
        assertThatThrownBy(() -> AmountText.read(text, SiUnit.of(unit))).isInstanceOf(AmountText.Unreadable.class);
    }
}
