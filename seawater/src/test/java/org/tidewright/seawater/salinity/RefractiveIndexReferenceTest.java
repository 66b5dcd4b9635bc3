package org.tidewright.seawater.salinity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.tidewright.testkit.ReferenceTable;
import org.tidewright.testkit.SeededCases;
import org.tidewright.testkit.Validation;

class RefractiveIndexReferenceTest {
    private static final ReferenceTable TABLE =
            ReferenceTable.read(RefractiveIndexReferenceTest.class, "/reference/salinity/refractive_index.csv");

    /** Quan & Fry 1995 typed a second time, in Python. */
    @Test
    void equalsAnotherTypingOverTheWholeGrid() {
        for (var row : TABLE.rows()) {
            double got = RefractiveIndex.fromPractical(row.number("practical_salinity"), row.number("temperature_c"));
            Validation.of(RefractiveIndex.class, "fromPractical")
                    .absolute(row, "refractive_index_quan_fry", got, 1e-12);
        }
    }

    /** Millard & Seaver 1990, another fit to other measurements: inside the range 2.5e-5 apart, 0.13 in salinity. */
    @Test
    void liesAsNearToAnotherLawAsTheTwoLawsLie() {
        for (var row : TABLE.rows()) {
            if (row.number("within_quan_fry_range") == 1) {
                double got =
                        RefractiveIndex.fromPractical(row.number("practical_salinity"), row.number("temperature_c"));
                Validation.of(RefractiveIndex.class, "fromPractical")
                        .absolute(row, "refractive_index_millard_seaver", got, 2.5e-5);
            }
        }
    }

    /** IAPWS R9-97 by iapws 1.5.3 over Ciddor's air. */
    @Test
    void withoutSaltItIsThatOfPureWater() {
        for (var row : TABLE.rows()) {
            double temperature = row.number("temperature_c");
            if (temperature <= 30) {
                double got = RefractiveIndex.fromPractical(0, temperature);
                Validation.of(RefractiveIndex.class, "fromPractical")
                        .absolute(row, "refractive_index_pure_water_iapws_over_air", got, 3e-5);
            }
        }
    }

    @Test
    void everySalinityComesBackFromItsIndex() {
        SeededCases.check(draw -> {
            double salinity = draw.between(0, 120);
            double temperature = draw.between(0, 40);
            double index = RefractiveIndex.fromPractical(salinity, temperature);
            assertThat(RefractiveIndex.toPractical(index, temperature)).isCloseTo(salinity, within(1e-9));
        });
    }

    @Test
    void saltierWaterBendsLightMoreAndWarmerWaterLess() {
        SeededCases.check(draw -> {
            double salinity = draw.between(0, 45);
            double temperature = draw.between(0, 38);
            double here = RefractiveIndex.fromPractical(salinity, temperature);
            assertThat(RefractiveIndex.fromPractical(salinity + 0.1, temperature))
                    .isGreaterThan(here);
            assertThat(RefractiveIndex.fromPractical(salinity, temperature + 0.1))
                    .isLessThan(here);
        });
    }

    @Test
    void anIndexBelowPureWatersIsRefused() {
        assertThatThrownBy(() -> RefractiveIndex.toPractical(1.3320, 20))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("corrected to 20 degC");
        assertThatThrownBy(() -> RefractiveIndex.toPractical(Double.NaN, 20))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
