package org.tidewright.seawater.salinity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.tidewright.seawater.salinity.Refractometer.Scale;
import org.tidewright.testkit.Close;
import org.tidewright.testkit.ReferenceTable;
import org.tidewright.testkit.SeededCases;

class RefractometerTest {
    private static final ReferenceTable SODIUM_CHLORIDE =
            ReferenceTable.read(RefractometerTest.class, "/reference/salinity/refractive_index_nacl.csv");

    private static final ReferenceTable SEAWATER =
            ReferenceTable.read(RefractometerTest.class, "/reference/salinity/refractive_index.csv");

    /** CRC Handbook, 102nd ed.: each printed index within half its last digit. */
    @Test
    void theTableSaltScaleMeetsTheHandbook() {
        for (var row : SODIUM_CHLORIDE.rows()) {
            double mark = 10 * row.number("nacl_mass_percent");
            Close.absolute(row, "refractive_index", Scale.SODIUM_CHLORIDE.refractiveIndex(mark), 5e-5);
        }
    }

    /** Quan & Fry 1995 typed a second time, in Python: the mark 35 has the index of seawater of S 35 at 20 degC. */
    @Test
    void theSeawaterScaleStandsForSeawater() {
        for (var row : SEAWATER.rows()) {
            if (row.number("temperature_c") == 20) {
                double got = Scale.SEAWATER.refractiveIndex(row.number("practical_salinity"));
                Close.absolute(row, "refractive_index_quan_fry", got, 1e-12);
            }
        }
    }

    /**
     * The index of S 35 at 20 degC, 1.33939 (Quan and Fry, Millard and Seaver within 2.2e-5), lies between those the
     * handbook prints for 3 and 4 %, at 3.64 %; its rounding is 0.3 g/kg.
     */
    @Test
    void theTableSaltScaleShowsTooMuchInSeawater() {
        assertThat(Refractometer.zeroed(Scale.SODIUM_CHLORIDE, true).reading(35, 20))
                .isCloseTo(36.4, within(0.3));
    }

    /** Set on seawater of S 35 it is right there, and off by the 4 % of its slope elsewhere: 0.2 at S 30. */
    @Test
    void setOnSeawaterTheTableSaltScaleIsRightWhereItMatters() {
        Refractometer set = new Refractometer(Scale.SODIUM_CHLORIDE, true, 35, 20);
        assertThat(set.reading(35, 20)).isEqualTo(35);
        assertThat(set.reading(30, 20)).isCloseTo(30 - 5 * 0.04, within(0.05));
    }

    /**
     * Millard & Seaver 1990, another law, typed in Python: the index of S 35 at other temperatures, over its rise from
     * pure water (IAPWS R9-97) to S 35 at 20 degC. 2.5e-5, or 0.14 in salinity, lies between the laws at each end.
     */
    @Test
    void aDropAtAnotherTemperatureIsMisreadByHalfASalinityADegree() {
        Refractometer plain = Refractometer.zeroed(Scale.SEAWATER, false);
        double fresh = 1.3329797036521445;
        double index = 1.3393847244371555;
        double perSalinity = (index - fresh) / 35;
        for (var row : SEAWATER.rows()) {
            if (row.number("practical_salinity") == 35 && row.number("within_quan_fry_range") == 1) {
                double temperature = row.number("temperature_c");
                double expected = 35 + (row.number("refractive_index_millard_seaver") - index) / perSalinity;
                assertThat(plain.reading(35, temperature)).as(row.toString()).isCloseTo(expected, within(0.28));
            }
        }
        assertThat(plain.reading(35, 19) - plain.reading(35, 20)).isBetween(0.5, 0.6);
    }

    /** By hand from Quan and Fry: the rise per salinity is 1.829e-4 at 20 degC and 1.8125e-4 at 25 degC. */
    @Test
    void compensationLeavesWhatTemperatureDoesToTheSalt() {
        Refractometer compensated = Refractometer.zeroed(Scale.SEAWATER, true);
        assertThat(compensated.reading(0, 25)).isCloseTo(0, within(1e-12));
        assertThat(compensated.reading(35, 25)).isCloseTo(35 * 1.8125 / 1.829, within(0.005));
    }

    @Test
    void whateverItWasSetOnReadsAsItWasSet() {
        SeededCases.check(draw -> {
            double salinity = draw.between(0, 60);
            double temperature = draw.between(0, 40);
            Refractometer set =
                    new Refractometer(draw.oneOf(Scale.values()), draw.oneOf(true, false), salinity, temperature);
            assertThat(set.reading(salinity, temperature)).isEqualTo(salinity);
        });
    }

    @Test
    void everySalinityComesBackFromItsReading() {
        SeededCases.check(draw -> {
            Refractometer any = new Refractometer(
                    draw.oneOf(Scale.values()), draw.oneOf(true, false), draw.between(0, 60), draw.between(0, 40));
            double salinity = draw.between(0, 120);
            double drop = draw.between(0, 40);
            assertThat(any.practicalSalinity(any.reading(salinity, drop), drop)).isCloseTo(salinity, within(1e-9));
        });
    }

    @Test
    void aSpecificGravityIsNoReading() {
        Refractometer setInTheWarm = new Refractometer(Scale.SEAWATER, false, 0, 30);
        assertThatThrownBy(() -> setInTheWarm.practicalSalinity(1.0264, 20))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("specific gravity");
        assertThatThrownBy(() -> setInTheWarm.practicalSalinity(Double.NaN, 20))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Refractometer(Scale.SEAWATER, true, 0, 293))
                .hasMessageContaining("kelvin");
    }
}
