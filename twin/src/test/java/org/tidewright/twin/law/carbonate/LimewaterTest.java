package org.tidewright.twin.law.carbonate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

class LimewaterTest {
    /** Bates, Bower and Smith 1956: 0.0203 mol/L at 25 degC, pH 12.45; 0.0203 74.093 g/L = 1.504 g/L. */
    @Test
    void saturatedLimewaterIsTheStandardBuffer() {
        assertThat(Limewater.saturated(25)).isEqualTo(20.3);
        assertThat(Limewater.saturated(25) * Limewater.MOLAR_MASS).isCloseTo(1.504, within(0.0005));
        assertThat(Limewater.saturatedPh(25)).isEqualTo(12.45);
        assertThat(Limewater.alkalinity(Limewater.saturated(25))).isCloseTo(40.6, within(0.01));
        assertThat(Limewater.calcium(20.3) * 40.078).isCloseTo(814, within(0.5)); // mg/L
    }

    /** An older handbook's rows in g/L over its own 1.665 at 25 degC; from memory. */
    @Test
    void solubilityFallsWithWarmthAsTheHandbookSays() {
        double[][] rows = {{0, 1.89}, {10, 1.82}, {20, 1.73}, {30, 1.60}, {40, 1.41}};
        for (double[] row : rows) {
            assertThat(Limewater.saturated(row[0]) / Limewater.saturated(25))
                    .as("%s degC", row[0])
                    .isCloseTo(row[1] / 1.665, Percentage.withPercentage(0.6));
        }
        for (double t = 1; t <= 40; t++) {
            assertThat(Limewater.saturated(t)).isLessThan(Limewater.saturated(t - 1));
        }
        assertThat(Limewater.saturated(-5)).isEqualTo(Limewater.saturated(0));
        assertThat(Limewater.saturated(60)).isEqualTo(Limewater.saturated(40));
    }

    /**
     * 3.0 L/day of top-off at 41 meq/L into 200 L: 123 meq/day, 0.615 meq/L, 1.72 dKH (2.8038 dKH for each meq/L). The
     * example rounds 40.6 up to 41, 1 %.
     */
    @Test
    void evaporationCarriesTheAlkalinityWorkedOut() {
        double perDay = 3.0e-3 * Limewater.alkalinity(Limewater.saturated(25)); // mol
        assertThat(perDay).isCloseTo(0.123, Percentage.withPercentage(1));
        assertThat(perDay / 0.200 * 2.8038).isCloseTo(1.72, Percentage.withPercentage(1.2));
    }

    /** 1 g/L of pure powder is 13.50 mol/m^3 and all dissolves; 2 g/L would be 27.0 and does not; none gives none. */
    @Test
    void thinSolutionsHoldWhatWasPutIn() {
        assertThat(Limewater.dissolved(1, 1, 25)).isCloseTo(13.50, within(0.005));
        assertThat(Limewater.dissolved(1, 0.9, 25)).isCloseTo(12.15, within(0.005));
        assertThat(Limewater.dissolved(2, 1, 25)).isEqualTo(20.3);
        assertThat(Limewater.dissolved(0, 1, 25)).isZero();
    }

    @Test
    void refusesNonsense() {
        assertThatThrownBy(() -> Limewater.dissolved(1, 95, 25)).hasMessageContaining("is it in percent?");
        assertThatThrownBy(() -> Limewater.saturated(298)).hasMessageContaining("water temperature");
        assertThatThrownBy(() -> Limewater.alkalinity(-1)).isInstanceOf(IllegalArgumentException.class);
    }
}
