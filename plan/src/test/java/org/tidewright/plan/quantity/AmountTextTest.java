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
        "0.5 1/h, 1/s, 1.388888888888889e-4",
        "0.5 /h, 1/s, 1.388888888888889e-4",
        "5 1/h, 1/s, 1.388888888888889e-3",
        "2.5 meq/L, mol/m^3, 2.5",
        "2.5 mmol/L, mol/m^3, 2.5",
        "2500 µmol/L, mol/m^3, 2.5",
        "2500 μmol/L, mol/m^3, 2.5",
        "0.0025 mol/L, mol/m^3, 2.5",
        "200 µmol/m²/s, mol/(m^2*s), 2e-4",
        "0.864 meq/L/d, mol/(m^3*s), 1e-5",
        "420 mg/L, kg/m^3, 0.42",
        "80 g/L, kg/m^3, 80",
        "3 kg/m², kg/m^2, 3",
        "86.4 mL/d, m^3/s, 1e-9",
        "8.64 L/d, m^3/s, 1e-7",
        "60 mL/min, m^3/s, 1e-6",
        "1 gal/d, m^3/s, 4.381263638888889e-8",
        "900 cm², m^2, 0.09",
    })
    void convertsAsTheStandardSays(String text, String unit, double expected) throws AmountText.Unreadable {
        assertThat(AmountText.read(text, SiUnit.of(unit)).in(unit))
                .isCloseTo(expected, within(1e-12 * Math.max(1e-6, Math.abs(expected))));
    }

    /** 10 mg/L of CaO, 56.077 g/mol, two equivalents a mole: 8 degrees are 2.8532 meq/L. */
    @Test
    void aDegreeOfHardnessIsTenMilligramsOfLime() throws AmountText.Unreadable {
        assertThat(AmountText.read("8 dKH", SiUnit.of("mol/m^3")).in("mol/m^3")).isCloseTo(2.8532, within(1e-4));
        assertThat(AmountText.read("8 dKH/d", SiUnit.of("mol/(m^3*s)")).in("mol/(m^3*s)") * 86400)
                .isCloseTo(2.8532, within(1e-4));
    }

    /** By definition a part per million is 1e-6; the trade writes it for mg/L too. */
    @Test
    void partsPerMillionAreWhatThePlaceAsksFor() throws AmountText.Unreadable {
        Amount air = AmountText.read("425 ppm", SiUnit.of("1"));
        assertThat(air.in("1")).isCloseTo(425e-6, within(1e-15));
        assertThat(air).hasToString("425 ppm");
        Amount calcium = AmountText.read("425 ppm ± 10 ppm", SiUnit.of("kg/m^3"));
        assertThat(calcium.in("kg/m^3")).isCloseTo(0.425, within(1e-12));
        assertThat(calcium).hasToString("425 mg/L ± 10 mg/L");
    }

    @Test
    void partsPerMillionAreNoLength() {
        assertThatThrownBy(() -> AmountText.read("5 ppm", SiUnit.of("m")))
                .isInstanceOfSatisfying(
                        AmountText.Unreadable.class,
                        refused -> assertThat(refused.found()).isEqualTo("“5 ppm”, which is not a length"));
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
