package org.tidewright.twin.law.carbonate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class PrecipitationTest {
    private static final double HOUR = 3600;
    private static final double DAY = 86_400;

    private static double micromolesPerHour(double saturation, double temperature) {
        return Precipitation.perSurface(saturation, temperature) * 1e6 * HOUR;
    }

    /** Alkalinity lost in a day, mol/m^3 or meq/L. */
    private static double lost(double saturation) {
        return 2 * DAY * Precipitation.perVolume(saturation, 25, Precipitation.BARE_USUAL, Precipitation.FINE_USUAL);
    }

    /** Burton and Walter 1987: k 21.8, 40.6, 45.1 umol/(m^2 h) and n 0.4, 1.7, 2.4 at 5, 25, 37 degC. */
    @Test
    void growthIsThatOfBurtonAndWalter() {
        double[][] rows = {{5, 21.8, 0.4}, {25, 40.6, 1.7}, {37, 45.1, 2.4}};
        for (double[] row : rows) {
            double constant = micromolesPerHour(2, row[0]);
            double order = Math.log10(micromolesPerHour(11, row[0]) / constant);
            assertThat(constant).as("k at %s degC", row[0]).isCloseTo(row[1], within(0.1));
            assertThat(order).as("n at %s degC", row[0]).isCloseTo(row[2], within(0.05));
        }
    }

    /**
     * Zhong and Mucci 1989, Chem. Geol. 78, 283-299: 12.9 (omega - 1)^2.26 umol/(m^2 h) at 25 degC and S 35, log k 1.11
     * (from memory). The two laboratories agree within a factor of two from 3.5 to 15.
     */
    @Test
    void anotherLaboratoryFoundTheSameWithinAFactorOfTwo() {
        for (double omega = 3.5; omega <= 15; omega += 0.5) {
            double ratio = micromolesPerHour(omega, 25) / (12.9 * Math.pow(omega - 1, 2.26));
            assertThat(ratio).as("omega %s", omega).isBetween(0.5, 2.0);
        }
    }

    /**
     * Moras et al. 2022: nothing lost at 5, runaway above 7; common practice: 1 to 5 meq/L in a day then. A reef at 6 to 6.5
     * (9 to 10 dKH in fresh air) is kept for years: what it loses by itself is far below the 0.5 dKH a day its corals use.
     */
    @Test
    void aRunawayStartsWhereMorasSawItAndNotWhereReefsAreKept() {
        assertThat(lost(5)).isLessThan(0.01);
        assertThat(lost(6.5)).isLessThan(0.02);
        assertThat(lost(7)).isLessThan(0.02);
        assertThat(lost(8)).isBetween(1.0, 5.0);
        assertThat(lost(9)).isBetween(1.0, 5.0);
    }

    /** A settled reef at saturation 4.5 loses less than 0.01 dKH in a day, 0.0036 meq/L. */
    @Test
    void aSettledTankLosesNothingThatIsNoticed() {
        assertThat(lost(4.5)).isLessThan(0.0036);
    }

    /** Morse and He 1993: clear seawater nucleates by itself at 18 to 20: 1 meq/L is gone in an hour. */
    @Test
    void clearWaterTurnsMilkyAtTwenty() {
        double clear = 2 * HOUR * Precipitation.perVolume(20, 25, 0, 0);
        assertThat(clear).isGreaterThan(1);
        assertThat(Precipitation.perVolume(16, 25, 0, 0)).isZero();
    }

    @Test
    void nothingGrowsAtOrBelowSaturation() {
        assertThat(Precipitation.perSurface(0, 25)).isZero();
        assertThat(Precipitation.perSurface(1, 25)).isZero();
        assertThat(Precipitation.perVolume(4, 25, 0, 40)).isZero();
    }

    /** No jump: a thousandth more of saturation never adds more than a hundredth of the rate or of a meq/L a day. */
    @Test
    void theRateRisesWithoutAJump() {
        double last = lost(1);
        for (double omega = 1.001; omega < 30; omega += 0.001) {
            double now = lost(omega);
            assertThat(now).as("omega %s", omega).isGreaterThanOrEqualTo(last);
            assertThat(now - last).as("omega %s", omega).isLessThan(0.01 + 0.01 * last);
            last = now;
        }
    }

    @Test
    void theRateIsFiniteHoweverAbsurdTheWater() {
        for (double t : new double[] {-10, 0, 5, 25, 37, 60}) {
            assertThat(Precipitation.perVolume(1e9, t, 1e6, 1e6)).isFinite();
            assertThat(Precipitation.perSurface(Math.nextUp(1), t)).isFinite().isNotNegative();
        }
    }

    @Test
    void refusesNonsense() {
        assertThatThrownBy(() -> Precipitation.perSurface(Double.NaN, 25)).hasMessageContaining("saturation");
        assertThatThrownBy(() -> Precipitation.surface(4, -1, 0)).isInstanceOf(IllegalArgumentException.class);
    }
}
