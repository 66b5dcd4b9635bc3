package org.tidewright.twin.law.nutrient;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.tidewright.testkit.SeededCases;

class DenitrificationTest {
    private static final double DAY = 86_400;
    private static final double TEN_MILLIGRAMS = 10e-3 / 62.0049e-3; // mol/m^3 of nitrate at 10 mg/L

    private static double fullRate() {
        return Denitrification.fullRate(25, Denitrification.ROCK.usual(), 0.5, Denitrification.SAND.usual());
    }

    /** The intention the rates were chosen for, and the range of practice, none to 4 % a day. */
    @Test
    void aTankWithRockAndSandLosesOnePerCentADay() {
        double rate =
                Denitrification.rate(fullRate(), TEN_MILLIGRAMS, Denitrification.HALF_SATURATION.usual(), 0.2, 25);
        assertThat(rate * DAY / (0.200 * TEN_MILLIGRAMS)).isCloseTo(0.010, within(0.0005));
        double most = Denitrification.fullRate(25, Denitrification.ROCK.high(), 0.5, Denitrification.SAND.high());
        double fast = Denitrification.rate(most, TEN_MILLIGRAMS, Denitrification.HALF_SATURATION.usual(), 0.2, 25);
        assertThat(fast * DAY / (0.200 * TEN_MILLIGRAMS)).isBetween(0.02, 0.04);
    }

    /** Li et al. 2017: rock took up ammonium and no significant nitrate; 0.141 mg/(kg h) of NH4+. */
    @Test
    void rockTurnsFarLessNitrateIntoGasThanItTakesUpAmmonium() {
        assertThat(Denitrification.ROCK.usual()).isLessThan(0.1 * Nitrification.ROCK_MEASURED);
        assertThat(Denitrification.ROCK.low()).isZero();
    }

    /** Acetic acid gives eight electrons and nitrate takes five: 5/8 of 60.052 g/mol to 14.007 g/mol, 2.68 mg/mg. */
    @Test
    void carbonEatenBalancesTheElectrons() {
        double acid = Denitrification.CARBON_PER_NITRATE / 2 * 60.052 / 14.007;
        assertThat(acid).isCloseTo(2.68, within(0.005));
        assertThat(2 * Denitrification.GAS_PER_NITRATE).isEqualTo(1);
    }

    @Test
    void rateRisesWithNitrateAndFallsWithOxygen() {
        SeededCases.check(draw -> {
            double nitrate = draw.between(1e-6, 5);
            double oxygen = draw.between(0, 0.5);
            double temperature = draw.between(15, 31);
            double rate = Denitrification.rate(1e-9, nitrate, 0.05, oxygen, temperature);
            assertThat(Denitrification.rate(1e-9, nitrate * 1.1, 0.05, oxygen, temperature))
                    .isGreaterThan(rate);
            assertThat(Denitrification.rate(1e-9, nitrate, 0.05, oxygen + 0.01, temperature))
                    .isLessThan(rate);
            assertThat(Denitrification.rate(1e-9, nitrate, 0.05, oxygen, temperature + 1))
                    .isGreaterThan(rate);
        });
        assertThat(Denitrification.rate(1e-9, 0, 0.05, 0.2, 25)).isZero();
        assertThat(Denitrification.rate(1e-9, 1e9, 0.05, 0, 25)).isCloseTo(3e-9, withinPercentage(1e-6));
    }
}
