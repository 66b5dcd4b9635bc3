package org.tidewright.husbandry.advice;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tidewright.plan.model.UnitSystem;

class FigureTextTest {
    private static final double NEVER = Double.POSITIVE_INFINITY;
    private static final double HOUR = 3600;

    /** The last digit is one the doubt can reach: ± 3.2 L leaves whole litres, ± 0.32 L leaves tenths. */
    @ParameterizedTest
    @CsvSource({
        "0.03123, 0.0032, 31 ± 3 L",
        "0.03123, 0.00032, 31.2 ± 0.3 L",
        "0.03123, 0.000032, 31.2 ± 0.1 L",
        "0.5149, 0.013, 515 ± 13 L",
        "-0.00486, 0.0032, −5 ± 3 L"
    })
    void aStandardErrorSetsTheLastDigit(double value, double error, String told) {
        assertThat(metric(Figure.about(Measure.VOLUME, value, error))).isEqualTo(told);
    }

    /** 1 US gallon is 3.785411784 L, NIST SP 811; 20 °C are 68 °F. */
    @Test
    void theReadersUnitsEnterAtTheEnd() {
        assertThat(us(Figure.exact(Measure.VOLUME, 3.785411784e-3))).isEqualTo("1 gal");
        assertThat(us(Figure.exact(Measure.TEMPERATURE, 20))).isEqualTo("68 °F");
        assertThat(us(Figure.about(Measure.TEMPERATURE, 25.5, 0.5))).isEqualTo("77.9 ± 0.9 °F");
        assertThat(us(Figure.about(Measure.TEMPERATURE_DIFFERENCE, 1, 0.5))).isEqualTo("1.8 ± 0.9 °F");
    }

    @Test
    void aNumberWithoutDoubtHasThreeDigitsThatCountAndNoEmptyDecimals() {
        assertThat(metric(Figure.exact(Measure.VOLUME, 0.0199999))).isEqualTo("20 L");
        assertThat(metric(Figure.exact(Measure.VOLUME, 0.014406))).isEqualTo("14.4 L");
        assertThat(metric(Figure.exact(Measure.VOLUME, 0.005548)))
                .as("rounded once")
                .isEqualTo("5.5 L");
        assertThat(metric(Figure.exact(Measure.VOLUME, 0.48983))).isEqualTo("490 L");
        assertThat(metric(Figure.exact(Measure.FLOW, 2778 / 3.6e6))).isEqualTo("2 780 L/h");
        assertThat(metric(Figure.exact(Measure.LEVEL, 0.01594))).isEqualTo("16 mm");
    }

    @Test
    void aMinusSignIsARealOneAndStandsBeforeNoZero() {
        assertThat(metric(Figure.exact(Measure.VOLUME, -0.0151))).isEqualTo("−15.1 L");
        assertThat(metric(Figure.exact(Measure.LEVEL, -0.00018))).isEqualTo("0 mm");
    }

    @ParameterizedTest
    @CsvSource({
        "12, 12 s",
        "99.4, 99 s",
        "714, 11.9 min",
        "5699, 95 min",
        "5701, 1.6 h",
        "43200, 12 h",
        "259199, 72 h",
        "345600, 4 days"
    })
    void aSpanOfTimeIsToldInTheUnitOfItsSize(double seconds, String told) {
        assertThat(metric(Figure.exact(Measure.DURATION, seconds))).isEqualTo(told);
    }

    @Test
    void aRangeStandsInBracketsAfterTheUnit() {
        assertThat(metric(Figure.between(Measure.DURATION, 6.2 * HOUR, 4.1 * HOUR, 9.3 * HOUR)))
                .isEqualTo("6 h (4–9)");
        assertThat(metric(Figure.between(Measure.DURATION, 6.2 * HOUR, 5.9 * HOUR, 6.6 * HOUR)))
                .isEqualTo("6.2 h (5.9–6.6)");
        assertThat(metric(Figure.between(Measure.CONDUCTANCE, 65, 40, 90))).isEqualTo("65 W/K (40–90)");
    }

    @Test
    void whatIsNotReachedIsSaidInWords() {
        assertThat(metric(Figure.between(Measure.DURATION, NEVER, NEVER, NEVER)))
                .isEqualTo("not reached");
        assertThat(metric(Figure.between(Measure.DURATION, NEVER, 20 * HOUR, NEVER)))
                .isEqualTo("not reached (20 h at the earliest)");
        assertThat(metric(Figure.between(Measure.DURATION, 20 * HOUR, 12 * HOUR, NEVER)))
                .isEqualTo("20 h (12–never)");
    }

    @Test
    void aNumberIsNeverPartedFromItsDoubtAndUnit() {
        assertThat(FigureText.of(Figure.about(Measure.VOLUME, 0.031, 0.003), UnitSystem.METRIC)
                        .line())
                .isEqualTo("31\u00a0±\u00a03\u00a0L");
        assertThat(FigureText.of(Figure.exact(Measure.FLOW, 2500 / 3.6e6), UnitSystem.METRIC)
                        .line())
                .isEqualTo("2\u202f500\u00a0L/h");
    }

    private static String metric(Figure figure) {
        return plain(FigureText.of(figure, UnitSystem.METRIC));
    }

    private static String us(Figure figure) {
        return plain(FigureText.of(figure, UnitSystem.US));
    }

    private static String plain(FigureText text) {
        return text.line().replaceAll("[\\u00a0\\u202f]", " ");
    }
}
