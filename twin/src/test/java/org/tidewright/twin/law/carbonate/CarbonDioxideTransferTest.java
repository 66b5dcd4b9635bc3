package org.tidewright.twin.law.carbonate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.tidewright.seawater.carbonate.CarbonicAcid;
import org.tidewright.seawater.gas.CarbonDioxide;
import org.tidewright.twin.law.gas.GasTransfer;

class CarbonDioxideTransferTest {
    private static final double CM_PER_HOUR = 0.01 / 3600;
    private static final double METRE_PER_DAY = 1.0 / 86_400;

    private static double enhancement(double velocity, double ph, double temperature) {
        return CarbonDioxideTransfer.enhancement(
                velocity,
                ph,
                temperature,
                35,
                CarbonicAcid.LUEKER_2000.first(temperature, 35),
                CarbonicAcid.LUEKER_2000.second(temperature, 35));
    }

    /** Wanninkhof 2014, table 1, prints Sc at 20 degC: 568 for O2, 668 for CO2, both to the unit. */
    @Test
    void carbonDioxideIsSlowerThanOxygenByTheirSchmidtNumbers() {
        double rippled = CarbonDioxideTransfer.velocity(1e-5, 20, GasTransfer.RIPPLED);
        assertThat(rippled).isCloseTo(1e-5 * Math.sqrt(568.0 / 668), Percentage.withPercentage(0.1));
        double still = CarbonDioxideTransfer.velocity(1e-5, 20, GasTransfer.SMOOTH);
        assertThat(still).isCloseTo(1e-5 * Math.pow(568.0 / 668, 2.0 / 3), Percentage.withPercentage(0.1));
        assertThat(CarbonDioxideTransfer.velocity(0, 20, GasTransfer.SMOOTH)).isZero();
    }

    /** Johnson 1982: 0.037 1/s at 25 degC; at low pH hydroxide has no part in it. */
    @Test
    void carbonDioxideHydratesInHalfAMinute() {
        assertThat(CarbonDioxideTransfer.hydrationRate(4, 25, 35)).isCloseTo(0.037, within(0.0005));
    }

    /**
     * Johnson 1982 gives another form for the product of hydroxylation and KW, ln = -930.13 + 0.110 S^0.5 + 3.10e4/T +
     * 140.9 ln T; Schulz et al. 2006 fitted theirs to the same data. Its coefficients are printed to 0.005e4 and 0.05,
     * which alone is a factor of 1.5 in all and of 1.1 over the span of a reef's temperatures.
     */
    @Test
    void hydroxylationAgreesWithJohnsonsOwnForm() {
        for (double t = 15; t <= 35; t += 5) {
            double kelvin = t + 273.15;
            double johnson = Math.exp(-930.13 + 0.110 * Math.sqrt(35) + 3.10e4 / kelvin + 140.9 * Math.log(kelvin));
            double ours =
                    (CarbonDioxideTransfer.hydrationRate(9, t, 35) - CarbonDioxideTransfer.hydrationRate(8, t, 35))
                            / (1e9 - 1e8);
            assertThat(ours).as("%s degC", t).isCloseTo(johnson, Percentage.withPercentage(10));
        }
    }

    /** Jaehne, Heinz and Dietrich 1987: 1.91e-9 m^2/s at 25 degC within their 5 %. */
    @Test
    void carbonDioxideDiffusesAsMeasured() {
        assertThat(CarbonDioxideTransfer.diffusivity(25)).isCloseTo(1.91e-9, Percentage.withPercentage(5));
    }

    /**
     * Standing water: the chemical part of the transfer of Wanninkhof 1992 (J. Geophys. Res. 97, 7373-7382, eq. 8, from
     * memory) is 2.5 (0.5246 + 0.016256 t + 0.00049946 t^2) cm/h; at 15 and 20 degC 2.20 and 2.62 cm/h. He takes the
     * film of the calmest sea, here 0.5 cm/h.
     */
    @Test
    void standingSeawaterTakesUpWhatWanninkhofSays() {
        double slow = 0.5 * CM_PER_HOUR;
        assertThat(0.5 * enhancement(slow, 8.1, 15)).isCloseTo(2.20, Percentage.withPercentage(25));
        assertThat(0.5 * enhancement(slow, 8.1, 20)).isCloseTo(2.62, Percentage.withPercentage(25));
    }

    /**
     * Worked by hand from the form, 25.5 degC, pH 8.2, k 4 cm/h: r = 0.0387 + 1.438e-10 / 6.31e-9 = 0.0615 1/s, D =
     * 1.942e-9 m^2/s, z = 0.1748 mm, Q z = 0.985, tanh(Q z) / (Q z) = 0.765, alpha = 1.004 / (0.004 + 0.765) = 1.31.
     */
    @Test
    void quietWaterGainsTensOfPerCent() {
        assertThat(enhancement(4 * CM_PER_HOUR, 8.2, 25.5)).isCloseTo(1.31, within(0.01));
        assertThat(enhancement(4 * CM_PER_HOUR, 8.0, 25.5)).isBetween(1.1, 1.5);
        assertThat(enhancement(4 * CM_PER_HOUR, 8.4, 25.5)).isBetween(1.1, 1.5);
    }

    @Test
    void stirredWaterGainsNothingWorthAName() {
        assertThat(enhancement(20 * CM_PER_HOUR, 8.2, 25.5)).isBetween(1.0, 1.02);
        assertThat(enhancement(0.1, 8.2, 25.5)).isCloseTo(1, within(1e-6));
    }

    @Test
    void theSlowerAndTheMoreAlkalineTheMoreChemistryHelps() {
        double last = 1;
        for (double k = 40; k > 0.1; k /= 2) {
            double now = enhancement(k * CM_PER_HOUR, 8.2, 25.5);
            assertThat(now).isGreaterThan(last);
            assertThat(enhancement(k * CM_PER_HOUR, 8.6, 25.5)).isGreaterThan(now);
            last = now;
        }
    }

    /** However acid or caustic the water, and even where nothing moves at all. */
    @Test
    void theFactorIsFiniteEverywhere() {
        for (double ph = 0; ph <= 14; ph += 0.5) {
            for (double k : new double[] {0, 1e-300, 1e-12, 1e-6, 1e-3, 0.1}) {
                double factor = enhancement(k, ph, 25);
                assertThat(factor).isBetween(1.0, 1e14);
                assertThat(CarbonDioxideTransfer.flux(k, factor, 0.02, 0)).isFinite();
            }
        }
        assertThat(0 * enhancement(0, 8.2, 25)).isZero();
    }

    /**
     * 30 mmol/day of net respiration through 0.5 m^2 at 2 m/day need 0.030 / (2 0.5 0.02804 1023.2) atm = 1046 uatm
     * over the air's; at 5 m/day 418.
     */
    @Test
    void respirationLeavesThroughTheExcessWorkedOut() {
        double solubility = 0.02804 * 1023.2; // mol/(m^3 atm)
        double perArea = 0.030 / 86_400 / 0.5;
        double excess = 1046e-6 * solubility;
        assertThat(CarbonDioxideTransfer.flux(2 * METRE_PER_DAY, 1, 0.012, 0.012 + excess))
                .isCloseTo(-perArea, Percentage.withPercentage(0.1));
        assertThat(CarbonDioxideTransfer.flux(5 * METRE_PER_DAY, 1, 0.012, 0.012 + 418e-6 * solubility))
                .isCloseTo(-perArea, Percentage.withPercentage(0.2));
        assertThat(CarbonDioxide.solubility(25.5, 35)).isCloseTo(0.02804, within(5e-6));
    }

    /** 420 ppm, 25.5 degC, S 35, 1 atm: 420e-6 (1 - 0.0316) atm times 0.9968 times 0.02804 times 1023.2: 0.01163. */
    @Test
    void airSetsTheConcentrationWorkedOut() {
        double equilibrium = CarbonDioxideTransfer.atEquilibrium(420e-6, 25.5, 35, 101_325, 1023.2);
        assertThat(equilibrium).isCloseTo(0.01163, within(2e-5));
        assertThat(CarbonDioxideTransfer.flux(1e-5, 1.2, equilibrium, equilibrium))
                .isZero();
        assertThat(CarbonDioxideTransfer.atEquilibrium(0, 25.5, 35, 101_325, 1023.2))
                .isZero();
    }

    @Test
    void refusesNonsense() {
        assertThatThrownBy(() -> CarbonDioxideTransfer.velocity(Double.NaN, 25, 0.5))
                .hasMessageContaining("transfer velocity of oxygen");
        assertThatThrownBy(() -> enhancement(1e-5, 15, 25)).hasMessageContaining("pH 15.0 is outside");
        assertThatThrownBy(() -> CarbonDioxideTransfer.flux(1e-5, 1, Double.NaN, 0))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
