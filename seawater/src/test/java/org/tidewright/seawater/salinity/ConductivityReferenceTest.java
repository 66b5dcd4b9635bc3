package org.tidewright.seawater.salinity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tidewright.testkit.ReferenceTable;
import org.tidewright.testkit.SeededCases;
import org.tidewright.testkit.Validation;

class ConductivityReferenceTest {
    private static final double S_PER_M = 0.1;

    private static ReferenceTable table(String name) {
        return ReferenceTable.read(ConductivityReferenceTest.class, "/reference/salinity/" + name);
    }

    /** Check values of UNESCO 1983, Tech. Pap. Mar. Sci. 44, pages 9 and 14. */
    @Test
    void meetsThePublishedCheckValues() {
        var forward = table("published.csv").row("id", "p001");
        Validation.of(Conductivity.class, "toPractical")
                .absolute(
                        forward,
                        "printed_value",
                        Conductivity.toPractical(Conductivity.OF_STANDARD, forward.number("temperature_c")),
                        forward.number("tolerance"));
        for (String id : List.of("p004", "p005", "p008", "p009")) {
            var back = table("published.csv").row("id", id);
            double conductivity =
                    Conductivity.fromPractical(back.number("practical_salinity"), back.number("temperature_c"));
            Validation.of(Conductivity.class, "fromPractical")
                    .absolute(back, "printed_value", conductivity / Conductivity.OF_STANDARD, back.number("tolerance"));
        }
    }

    /** PSS-78 as GSW 3.6.16 has it, over salinities 5 to 42 and 0 to 40 degC. */
    @Test
    void equalsAnotherTypingOfTheScaleBothWays() {
        for (var row : table("practical_salinity.csv").rows()) {
            double temperature = row.number("temperature_c");
            double conductivity = row.number("conductivity_ms_cm") * S_PER_M;
            Validation.of(Conductivity.class, "toPractical")
                    .absolute(row, "practical_salinity", Conductivity.toPractical(conductivity, temperature), 1e-9);
            double back = Conductivity.fromPractical(row.number("practical_salinity"), temperature);
            Validation.of(Conductivity.class, "fromPractical")
                    .absolute(row, "conductivity_ms_cm", back / S_PER_M, 1e-6);
        }
    }

    /** Hill et al. 1986 as GSW 3.6.16 applies it; the factor at 2 is a fitted polynomial there and solved for here. */
    @Test
    void inDiluteWaterItFollowsItsCorrection() {
        for (var row : table("dilute.csv").rows()) {
            double got =
                    Conductivity.toPractical(row.number("conductivity_ms_cm") * S_PER_M, row.number("temperature_c"));
            Validation.of(Conductivity.class, "toPractical").absolute(row, "practical_salinity", got, 1e-9);
        }
    }

    @Test
    void everySalinityComesBackFromItsConductivity() {
        SeededCases.check(draw -> {
            double salinity = draw.between(0.001, 119);
            double temperature = draw.between(-10, 60);
            double back = Conductivity.toPractical(Conductivity.fromPractical(salinity, temperature), temperature);
            assertThat(back).isCloseTo(salinity, within(1e-10));
        });
    }

    @Test
    void saltierAndWarmerWaterConductsMore() {
        SeededCases.check(draw -> {
            double salinity = draw.between(0.1, 45);
            double temperature = draw.between(0, 38);
            double here = Conductivity.fromPractical(salinity, temperature);
            assertThat(Conductivity.fromPractical(salinity + 0.1, temperature)).isGreaterThan(here);
            assertThat(Conductivity.fromPractical(salinity, temperature + 0.1)).isGreaterThan(here);
        });
    }

    @Test
    void pureWaterHasNoSalinityAndNoConductivity() {
        assertThat(Conductivity.toPractical(0, 25)).isCloseTo(0, within(1e-12));
        assertThat(Conductivity.fromPractical(0, 25)).isZero();
    }

    @Test
    void aReadingInMillisiemensPerCentimetreIsRefused() {
        assertThatThrownBy(() -> Conductivity.toPractical(53.1, 25))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("mS/cm");
        assertThatThrownBy(() -> Conductivity.toPractical(Double.NaN, 25)).isInstanceOf(IllegalArgumentException.class);
    }
}
