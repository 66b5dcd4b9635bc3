package org.tidewright.twin.law.nutrient;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Worked by hand: 62.0049 g/mol of nitrate, 14.0067 g/mol of nitrogen, 1 dKH = 0.35665 meq/L. */
class NitrogenAlkalinityTest {
    private static final double DEGREE = 0.35665; // mol/m^3

    @Test
    void nitrateFromFoodCostsWhatIsWorkedOut() {
        double tenMilligrams = NitrogenAlkalinity.ofFoodToNitrate(10e-3 / 62.0049e-3);
        assertThat(tenMilligrams).isCloseTo(-0.1613, within(5e-5));
        assertThat(tenMilligrams / DEGREE).isCloseTo(-0.452, within(5e-4));
        assertThat(NitrogenAlkalinity.ofFoodToNitrate(50e-3 / 62.0049e-3) / DEGREE)
                .isCloseTo(-2.26, within(5e-3));
    }

    @Test
    void anAmmoniumSaltCostsTwiceAsMuch() {
        double oneMilligram = NitrogenAlkalinity.AMMONIA_OXIDISED * 1e-3 / ElementMass.NITROGEN;
        assertThat(oneMilligram).isCloseTo(-0.1428, within(5e-5));
        assertThat(oneMilligram / DEGREE).isCloseTo(-0.400, within(5e-4));
    }

    @Test
    void foodThatEndsAsGasOrAlgaeCostsNothing() {
        double toNitrate = NitrogenAlkalinity.AMMONIA_RELEASED + NitrogenAlkalinity.AMMONIA_OXIDISED;
        assertThat(toNitrate + NitrogenAlkalinity.NITRATE_TURNED_TO_GAS).isZero();
        assertThat(toNitrate + NitrogenAlkalinity.NITRATE_TAKEN_UP).isZero();
        assertThat(NitrogenAlkalinity.AMMONIA_RELEASED + NitrogenAlkalinity.AMMONIUM_TAKEN_UP)
                .isZero();
    }
}
