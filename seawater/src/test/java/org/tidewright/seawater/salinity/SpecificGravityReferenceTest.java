package org.tidewright.seawater.salinity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tidewright.seawater.density.Density;
import org.tidewright.testkit.ReferenceTable;
import org.tidewright.testkit.SeededCases;
import org.tidewright.testkit.Validation;

class SpecificGravityReferenceTest {
    private static final double SIXTY_FAHRENHEIT = (60 - 32) / 1.8;

    private static final ReferenceTable TABLE =
            ReferenceTable.read(SpecificGravityReferenceTest.class, "/reference/salinity/specific_gravity.csv");

    /** EOS-80 typed a second time, in Python, which agrees with python-seawater 3.3.5. */
    @Test
    void equalsAnotherTypingAtEveryPairOfTemperatures() {
        Map<String, Double> water = Map.of("4c", 4.0, "15c", 15.0, "60f", SIXTY_FAHRENHEIT, "20c", 20.0, "25c", 25.0);
        for (var row : TABLE.rows()) {
            double salinity = row.number("practical_salinity");
            double temperature = row.number("temperature_c");
            water.forEach((name, reference) -> {
                Validation.of(SpecificGravity.class, "fromPractical")
                        .relative(
                                row,
                                "sg_t_over_" + name,
                                SpecificGravity.fromPractical(salinity, temperature, reference),
                                1e-12);
                if (!name.equals("4c")) {
                    Validation.of(SpecificGravity.class, "fromPractical")
                            .relative(
                                    row,
                                    "sg_" + name + "_" + name,
                                    SpecificGravity.fromPractical(salinity, reference, reference),
                                    1e-12);
                }
            });
        }
    }

    /** TEOS-10 by GSW 3.6.16: 4.33e-6, at S 42, is the distance between the two equations of state; 0.006 in salinity. */
    @Test
    void liesAsNearToTeos10AsEos80Does() {
        for (var row : TABLE.rows()) {
            double salinity = row.number("practical_salinity");
            Validation.of(SpecificGravity.class, "fromPractical")
                    .absolute(row, "sg_20c_20c_teos10", SpecificGravity.fromPractical(salinity, 20, 20), 4.33e-6);
            Validation.of(SpecificGravity.class, "fromPractical")
                    .absolute(row, "sg_25c_25c_teos10", SpecificGravity.fromPractical(salinity, 25, 25), 4.33e-6);
        }
    }

    @Test
    void theSalinityOfATableRowComesBackFromItsRatio() {
        for (var row : TABLE.rows()) {
            Validation.of(SpecificGravity.class, "toPractical")
                    .absolute(
                            row,
                            "practical_salinity",
                            SpecificGravity.toPractical(row.number("sg_60f_60f"), SIXTY_FAHRENHEIT, SIXTY_FAHRENHEIT),
                            1e-9);
        }
    }

    @Test
    void everySalinityComesBackFromItsDensity() {
        SeededCases.check(draw -> {
            double salinity = draw.between(0, 120);
            double temperature = draw.between(-2, 40);
            assertThat(SpecificGravity.ofDensity(Density.ofSeawater(temperature, salinity), temperature))
                    .isCloseTo(salinity, within(1e-9));
        });
        assertThat(SpecificGravity.ofDensity(Density.ofPureWater(25), 25)).isZero();
    }

    /** 1.0264 is 35.03 at 25/25 degC and 34.40 at 60/60 degF by TEOS-10 (GSW 3.6.16): the same reading, two waters. */
    @Test
    void theSameReadingOnTwoScalesIsTwoWaters() {
        double warm = SpecificGravity.toPractical(1.0264, 25, 25);
        double cool = SpecificGravity.toPractical(1.0264, SIXTY_FAHRENHEIT, SIXTY_FAHRENHEIT);
        assertThat(warm).isCloseTo(35.03, within(0.01));
        assertThat(cool).isCloseTo(34.40, within(0.01));
    }

    @Test
    void aDensityNoWaterHasIsRefused() {
        assertThatThrownBy(() -> SpecificGravity.ofDensity(1.0264, 25))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("g/mL");
        assertThatThrownBy(() -> SpecificGravity.toPractical(0.99, 25, 25))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> SpecificGravity.toPractical(Double.NaN, 25, 25))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
