package org.tidewright.numerics.sample;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.tidewright.testkit.Close;
import org.tidewright.testkit.ReferenceTable;
import org.tidewright.testkit.ReferenceTable.Row;

@SuppressWarnings("FloatingPointLiteralPrecision") // expected values stand as printed
class StandardNormalReferenceTest {
    @Test
    void givesTheCheckValuesOfThePaper() {
        // Wichura 1988: one value for each of the three approximations; doubles of this size lie up to 1.8e-15 apart.
        assertThat(StandardNormal.quantile(0.25)).isCloseTo(-0.6744897501960817, within(1e-16));
        assertThat(StandardNormal.quantile(0.001)).isCloseTo(-3.090232306167814, within(1e-15));
        assertThat(StandardNormal.quantile(1e-20)).isCloseTo(-9.262340089798408, within(4e-15));
    }

    @Test
    void coefficientsHaveTheHashSumsPrintedWithThem() {
        // Wichura 1988: sums of the mantissas, for use in checking transcription; the paper leaves out the ones.
        assertThat(mantissas(StandardNormal.A) + mantissas(StandardNormal.B) - 1)
                .isCloseTo(55.88319288061490144439, within(3e-14));
        assertThat(mantissas(StandardNormal.C) + mantissas(StandardNormal.D) - 1)
                .isCloseTo(49.33206503301610289036, within(3e-14));
        assertThat(mantissas(StandardNormal.E) + mantissas(StandardNormal.F) - 1)
                .isCloseTo(47.52583317549289671629, within(3e-14));
    }

    private static double mantissas(double[] coefficients) {
        double sum = 0;
        for (double coefficient : coefficients) {
            sum += coefficient / Math.pow(10, Math.floor(Math.log10(coefficient)));
        }
        return sum;
    }

    @Test
    void agreesWithFortyDigitArithmeticFromOneTailToTheOther() {
        for (Row row : ReferenceTable.read(getClass(), "/reference/sample/normal_quantile.csv")
                .rows()) {
            Close.relative(row, "deviate", StandardNormal.quantile(row.number("probability")), 1e-15);
        }
    }

    /** The same rows read the other way; far out in the tail the complementary error function is nothing. */
    @Test
    void theProbabilityBelowADeviateIsTheOneItWasTakenFrom() {
        for (Row row : ReferenceTable.read(getClass(), "/reference/sample/normal_quantile.csv")
                .rows()) {
            if (Math.abs(row.number("deviate")) < 8) {
                Close.relative(row, "probability", StandardNormal.cumulative(row.number("deviate")), 1e-12);
            }
        }
        // Abramowitz and Stegun 1964, table 26.1.
        assertThat(StandardNormal.cumulative(1)).isCloseTo(0.841344746068543, within(1e-15));
        assertThat(StandardNormal.cumulative(-3)).isCloseTo(1.349898032e-3, within(1e-12));
    }

    @Test
    void isOddAboutOneHalf() {
        for (int i = 1; i < 1024; i++) {
            assertThat(StandardNormal.quantile(1 - i / 1024.0)).isEqualTo(0 - StandardNormal.quantile(i / 1024.0));
        }
    }

    @Test
    void theProbabilityBelowADeviateLeadsBackToIt() {
        for (Row row : ReferenceTable.read(getClass(), "/reference/sample/normal_quantile.csv")
                .rows()) {
            double probability = row.number("probability");
            assertThat(StandardNormal.cumulative(row.number("deviate")))
                    .as("below %s", row.number("deviate"))
                    .isCloseTo(probability, within(2e-15));
        }
        // mpmath 1.3.0, ncdf(-9) at 30 digits.
        assertThat(StandardNormal.cumulative(-9)).isCloseTo(1.1285884059538e-19, within(1e-31));
        assertThat(StandardNormal.cumulative(9)).isEqualTo(1);
    }

    @Test
    void probabilitiesThatAreNoneAreRefused() {
        for (double probability : new double[] {0, 1, -0.1, 1.5, Double.NaN}) {
            assertThatThrownBy(() -> StandardNormal.quantile(probability))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("Probability is " + probability);
        }
    }
}
