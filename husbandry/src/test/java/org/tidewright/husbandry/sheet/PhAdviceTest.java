package org.tidewright.husbandry.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class PhAdviceTest {
    private static String advice(double ppm, double ph, double fresh) {
        return new PhAdvice(8, ph, ppm, fresh, ph + 0.04).advice().replace('\u00a0', ' ');
    }

    @Test
    void tooMuchCarbonDioxideIsAiredNotDosed() {
        assertThat(advice(900, 7.97, 8.24))
                .startsWith("Do not dose to raise this pH: give the water fresh air.")
                .contains("At 8.0 dKH", "air with 900 ppm", "fresh air of 420 ppm it would read 8.24")
                .endsWith("One dKH more in the air as it is would make it 8.01.");
    }

    @Test
    void tooLittleIsLeftToTheAir() {
        assertThat(advice(240, 8.43, 8.24))
                .startsWith("Add nothing to bring this pH down: air will.")
                .contains("only the CO₂ of air with 240 ppm", "read 8.24");
    }

    @Test
    void whatAProbeCannotTellFromFreshAirIsLeftAlone() {
        assertThat(advice(460, 8.21, 8.24)).startsWith("Leave the pH alone").contains("stands at 460 ppm");
        assertThat(advice(390, 8.27, 8.24)).startsWith("Leave the pH alone");
    }

    @Test
    void hardlyAnyCarbonDioxideIsMeasuredAgain() {
        assertThat(advice(20, 9.1, 8.24))
                .startsWith("Measure again before you act.")
                .contains("20 ppm");
    }

    @Test
    void everySentenceEndsCalmly() {
        for (double ppm : new double[] {20, 240, 420, 900, 40_000}) {
            assertThat(advice(ppm, 8.24 - Math.log10(ppm / 420), 8.24))
                    .endsWith(".")
                    .doesNotContain("!");
        }
    }
}
