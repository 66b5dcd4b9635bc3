package org.tidewright.seawater.carbonate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.tidewright.testkit.SeededCases;

class BufferFactorsTest {
    /**
     * Egleston, Sabine and Morel 2010, table 1, those of carbon dioxide and hydrogen ion, written out for carbonate, borate and water: they leave out bisulfate and
     * fluoride, which are 1e-6 of the whole at pH 8.
     */
    @Test
    void equalThePublishedExpressionsWithoutNutrients() {
        SeededCases.check(draw -> {
            CarbonateSystem water = CarbonateSystem.at(draw.between(5, 30), draw.between(20, 40));
            CarbonateState state = water.fromAlkalinityAndPh(draw.between(1.8e-3, 3e-3), draw.between(7.8, 8.4));
            double hco3 = state.bicarbonate();
            double co3 = state.carbonate();
            double carbonateAlkalinity = hco3 + 2 * co3;
            double ofBorate = state.boricAcid() * state.borate() / state.totalBorate();
            double h = state.freeHydrogen();
            double oh = state.hydroxide();
            double s = hco3 + 4 * co3 + ofBorate + h + oh;
            double dic = state.inorganicCarbon();
            BufferFactors got = state.bufferFactors();
            close(got.carbonDioxideByCarbon(), dic - carbonateAlkalinity * carbonateAlkalinity / s);
            close(got.hydrogenByCarbon(), (dic * s - carbonateAlkalinity * carbonateAlkalinity) / carbonateAlkalinity);
            close(
                    got.carbonDioxideByAlkalinity(),
                    (carbonateAlkalinity * carbonateAlkalinity - dic * s) / carbonateAlkalinity);
            close(got.hydrogenByAlkalinity(), carbonateAlkalinity * carbonateAlkalinity / dic - s);
        });
    }

    private static void close(double got, double expected) {
        assertThat(got / expected).isCloseTo(1, within(1e-4));
    }

    /** Their definition, by steps of one part in a million of the solver. */
    @Test
    void equalTheSlopesOfTheSolution() {
        SeededCases.check(200, draw -> {
            var totals = TotalConcentrations.ofSeawater(35, BoronRatio.UPPSTROM_1974)
                    .withNutrients(draw.between(0, 5e-6), draw.between(0, 5e-5), draw.between(0, 5e-6));
            CarbonateSystem water = CarbonateSystem.at(draw.between(5, 30), 35, totals);
            CarbonateState state = water.fromAlkalinityAndPh(draw.between(1.8e-3, 3e-3), draw.between(7.6, 8.6));
            double alkalinity = state.alkalinity();
            double carbon = state.inorganicCarbon();
            double step = 1e-9;
            CarbonateState moreCarbon = water.fromAlkalinityAndCarbon(alkalinity, carbon + step);
            CarbonateState lessCarbon = water.fromAlkalinityAndCarbon(alkalinity, carbon - step);
            CarbonateState moreAlkaline = water.fromAlkalinityAndCarbon(alkalinity + step, carbon);
            CarbonateState lessAlkaline = water.fromAlkalinityAndCarbon(alkalinity - step, carbon);
            BufferFactors got = state.bufferFactors();
            slope(got.carbonDioxideByCarbon(), lessCarbon.fugacity(), moreCarbon.fugacity(), step);
            slope(got.carbonDioxideByAlkalinity(), lessAlkaline.fugacity(), moreAlkaline.fugacity(), step);
            slope(got.hydrogenByCarbon(), lessCarbon.freeHydrogen(), moreCarbon.freeHydrogen(), step);
            slope(got.hydrogenByAlkalinity(), lessAlkaline.freeHydrogen(), moreAlkaline.freeHydrogen(), step);
            slope(got.saturationByCarbon(), lessCarbon.carbonate(), moreCarbon.carbonate(), step);
            slope(got.saturationByAlkalinity(), lessAlkaline.carbonate(), moreAlkaline.carbonate(), step);
            assertThat(carbon / got.carbonDioxideByCarbon() / state.revelleFactor())
                    .isCloseTo(1, within(1e-12));
        });
    }

    private static void slope(double factor, double before, double after, double step) {
        assertThat(Math.log(after / before) * factor / (2 * step)).isCloseTo(1, within(1e-5));
    }
}
