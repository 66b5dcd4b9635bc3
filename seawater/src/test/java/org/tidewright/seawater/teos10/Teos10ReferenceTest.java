package org.tidewright.seawater.teos10;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.tidewright.seawater.density.Density;
import org.tidewright.seawater.salinity.AbsoluteSalinity;
import org.tidewright.testkit.ReferenceTable;
import org.tidewright.testkit.SeededCases;
import org.tidewright.testkit.Validation;

class Teos10ReferenceTest {
    private static final ReferenceTable TABLE =
            ReferenceTable.read(Teos10ReferenceTest.class, "/reference/teos10/teos10.csv");

    /** TEOS-10 as GSW 3.6.16 has it, over salinities 5 to 42 and 0 to 40 degC. */
    @Test
    void equalsAnotherTypingOfTheStandard() {
        for (var row : TABLE.rows()) {
            double t = row.number("temperature_c");
            double s = row.number("practical_salinity");
            Validation.of(GibbsSeawater.class, "density")
                    .relative(row, "density_gibbs_kg_m3", GibbsSeawater.density(t, s), 1e-12);
            Validation.of(GibbsSeawater.class, "specificHeat")
                    .relative(row, "specific_heat_j_kg_k", GibbsSeawater.specificHeat(t, s), 1e-12);
            Validation.of(GibbsSeawater.class, "thermalExpansion")
                    .relative(row, "thermal_expansion_per_k", GibbsSeawater.thermalExpansion(t, s), 1e-9);
            Validation.of(GibbsSeawater.class, "halineContraction")
                    .relative(row, "haline_contraction_kg_g", GibbsSeawater.halineContraction(t, s), 1e-12);
            double theta = ConservativeTemperature.fromInSitu(t, s);
            Validation.of(ConservativeTemperature.class, "fromInSitu")
                    .absolute(row, "conservative_temperature_c", theta, 1e-12);
            Validation.of(PolynomialDensity.class, "ofSeawater")
                    .relative(row, "density_75term_kg_m3", PolynomialDensity.ofSeawater(t, s), 1e-12);
            double absolute = AbsoluteSalinity.fromPractical(s);
            Validation.of(PolynomialDensity.class, "ofConservative")
                    .relative(row, "density_75term_kg_m3", PolynomialDensity.ofConservative(absolute, theta), 1e-12);
            Validation.of(EvaporationHeat.class, "ofSeawater")
                    .relative(row, "latent_heat_evaporation_j_kg", EvaporationHeat.ofSeawater(t, s), 1e-12);
        }
    }

    /** The saline part on IAPWS-95 water, by iapws 1.5.3; and how far the polynomial and EOS-80 lie from the standard. */
    @Test
    void liesAsNearToOtherLawsAsTheLawsLie() {
        for (var row : TABLE.rows()) {
            double t = row.number("temperature_c");
            double s = row.number("practical_salinity");
            Validation.of(GibbsSeawater.class, "density")
                    .absolute(row, "density_iapws95_kg_m3", GibbsSeawater.density(t, s), 2.7e-5);
            Validation.of(GibbsSeawater.class, "specificHeat")
                    .absolute(row, "specific_heat_iapws95_j_kg_k", GibbsSeawater.specificHeat(t, s), 0.034);
            Validation.of(PolynomialDensity.class, "ofSeawater")
                    .absolute(row, "density_gibbs_kg_m3", PolynomialDensity.ofSeawater(t, s), 6.3e-4);
        }
    }

    /**
     * IAPWS R13-08, table 8a, printed for IAPWS-95 water: the ocean's Gibbs function, fitted to it, lies 2.7e-5 kg/m3 and
     * 0.034 J/(kg K) off at most. And the TEOS-10 toolbox's own check value.
     */
    @Test
    void meetsThePrintedCheckValues() {
        assertThat(GibbsSeawater.density(0, 35)).isCloseTo(1028.10720, within(2.7e-5));
        assertThat(GibbsSeawater.specificHeat(0, 35)).isCloseTo(3986.48579, within(0.034));
        double s = AbsoluteSalinity.toPractical(34.7118);
        assertThat(EvaporationHeat.ofSeawater(28.7856, s)).isCloseTo(2429882.982734836, within(1e-3));
    }

    /** By differences of the density over 2 mK and 0.002 g/kg: what expansion and contraction are by definition. */
    @Test
    void expansionAndContractionAreTheSlopesOfDensity() {
        SeededCases.check(draw -> {
            double t = draw.between(0, 39);
            double s = draw.between(1, 41);
            double here = GibbsSeawater.density(t, s);
            double warmer = GibbsSeawater.density(t + 1e-3, s);
            double colder = GibbsSeawater.density(t - 1e-3, s);
            assertThat((colder - warmer) / 2e-3 / here).isCloseTo(GibbsSeawater.thermalExpansion(t, s), within(1e-9));
            double saltier = GibbsSeawater.density(t, s + 1e-3);
            double fresher = GibbsSeawater.density(t, s - 1e-3);
            double salt = AbsoluteSalinity.fromPractical(s + 1e-3) - AbsoluteSalinity.fromPractical(s - 1e-3);
            assertThat((saltier - fresher) / salt / here)
                    .isCloseTo(GibbsSeawater.halineContraction(t, s), within(1e-9));
        });
    }

    /** Heat content by definition: its slope is the specific heat. */
    @Test
    void conservativeTemperatureIsTheIntegralOfTheSpecificHeat() {
        SeededCases.check(draw -> {
            double t = draw.between(0, 39);
            double s = draw.between(0, 42);
            double slope =
                    (ConservativeTemperature.fromInSitu(t + 1e-3, s) - ConservativeTemperature.fromInSitu(t - 1e-3, s))
                            / 2e-3;
            assertThat(slope * ConservativeTemperature.SPECIFIC_HEAT)
                    .isCloseTo(GibbsSeawater.specificHeat(t, s), within(1e-4));
        });
    }

    /** Two standards on the same measurements: EOS-80 states a standard error of 0.0036 kg/m3, here 2.5 times that. */
    @Test
    void theLawOf1980LiesNear() {
        SeededCases.check(draw -> {
            double t = draw.between(0, 40);
            double s = draw.between(5, 42);
            assertThat(GibbsSeawater.density(t, s)).isCloseTo(Density.ofSeawater(t, s), within(0.009));
        });
    }

    @Test
    void withoutSaltItIsPureWater() {
        // IAPWS-95 and CRC handbook: 0.999975 and 0.997047 g/cm3 at 4 and 25 degC, maximum of density near 3.98 degC.
        assertThat(GibbsSeawater.density(4, 0)).isCloseTo(999.975, within(1e-3));
        assertThat(GibbsSeawater.density(25, 0)).isCloseTo(997.047, within(1e-3));
        assertThat(GibbsSeawater.thermalExpansion(3.98, 0)).isCloseTo(0, within(1e-6));
        assertThat(GibbsSeawater.specificHeat(25, 0)).isCloseTo(4181.5, within(0.5));
    }

    @Test
    void whatCannotBeMeantIsRefused() {
        assertThatThrownBy(() -> GibbsSeawater.density(298.15, 35)).hasMessageContaining("kelvin");
        assertThatThrownBy(() -> GibbsSeawater.specificHeat(25, Double.NaN))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> PolynomialDensity.ofConservative(350, 25)).hasMessageContaining("absolute salinity");
        assertThatThrownBy(() -> PolynomialDensity.ofConservative(35, Double.NaN))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
