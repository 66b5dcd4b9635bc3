package org.tidewright.seawater.density;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.tidewright.testkit.ReferenceTable;
import org.tidewright.testkit.Validation;

class Teos10ReferenceTest {
    private static final ReferenceTable TABLE =
            ReferenceTable.read(Teos10ReferenceTest.class, "/reference/density/teos10.csv");

    /**
     * IAPWS R13-08, check table, standard seawater at 273.15 K and 101325 Pa; on IAPWS-95 water, 2.7e-5 and 0.034
     * apart.
     */
    @Test
    void standardSeawaterAtTheIcePointIsAsTheReleasePrintsIt() {
        assertThat(Teos10.density(0, 35)).isCloseTo(1028.10720, within(2.7e-5));
        assertThat(Teos10.specificHeat(0, 35)).isCloseTo(3986.48579, within(0.034));
    }

    /** The Gibbs function by GSW 3.6.16. */
    @Test
    void everyPropertyEqualsAnotherTypingOverTheWholeGrid() {
        for (var row : TABLE.rows()) {
            double temperature = row.number("temperature_c");
            double salinity = row.number("practical_salinity");
            Validation.of(Teos10.class, "density")
                    .relative(row, "density_gibbs_kg_m3", Teos10.density(temperature, salinity), 1e-12);
            Validation.of(Teos10.class, "specificHeat")
                    .relative(row, "specific_heat_j_kg_k", Teos10.specificHeat(temperature, salinity), 1e-12);
            Validation.of(Teos10.class, "thermalExpansion")
                    .relative(row, "thermal_expansion_per_k", Teos10.thermalExpansion(temperature, salinity), 1e-12);
            Validation.of(Teos10.class, "halineContraction")
                    .relative(row, "haline_contraction_kg_g", Teos10.halineContraction(temperature, salinity), 1e-12);
            Validation.of(Teos10.class, "chemicalPotentialOfWater")
                    .absolute(
                            row,
                            "chemical_potential_water_j_kg",
                            Teos10.chemicalPotentialOfWater(temperature, salinity),
                            1e-9);
        }
    }

    /** The potential enthalpy by GSW 3.6.16, and its inverse. */
    @Test
    void conservativeTemperatureEqualsAnotherTypingBothWays() {
        for (var row : TABLE.rows()) {
            double temperature = row.number("temperature_c");
            double salinity = row.number("practical_salinity");
            double conservative = row.number("conservative_temperature_c");
            Validation.of(ConservativeTemperature.class, "fromInSitu")
                    .absolute(
                            row,
                            "conservative_temperature_c",
                            ConservativeTemperature.fromInSitu(temperature, salinity),
                            1e-12);
            Validation.of(ConservativeTemperature.class, "toInSitu")
                    .absolute(row, "temperature_c", ConservativeTemperature.toInSitu(conservative, salinity), 1e-12);
        }
    }

    /** Roquet et al. 2015 by GSW 3.6.16. */
    @Test
    void thePolynomialEqualsAnotherTypingOverTheWholeGrid() {
        for (var row : TABLE.rows()) {
            double conservative = row.number("conservative_temperature_c");
            double absolute = row.number("absolute_salinity_g_kg");
            double measured =
                    PolynomialDensity.ofSeawater(row.number("temperature_c"), row.number("practical_salinity"));
            double expansion = PolynomialDensity.thermalExpansion(conservative, absolute);
            double contraction = PolynomialDensity.halineContraction(conservative, absolute);
            Validation.of(PolynomialDensity.class, "ofConservative")
                    .relative(
                            row,
                            "density_75term_kg_m3",
                            PolynomialDensity.ofConservative(conservative, absolute),
                            1e-12);
            Validation.of(PolynomialDensity.class, "ofSeawater").relative(row, "density_75term_kg_m3", measured, 1e-12);
            // near its zero, in cold fresh water, expansion is a small rest of large terms
            Validation.of(PolynomialDensity.class, "thermalExpansion")
                    .absolute(row, "thermal_expansion_75term_per_k", expansion, 1e-15);
            Validation.of(PolynomialDensity.class, "halineContraction")
                    .relative(row, "haline_contraction_75term_kg_g", contraction, 1e-12);
        }
    }

    /**
     * Between the polynomial and the Gibbs function it was fitted to, both by GSW 3.6.16, lie 6.5e-4 kg/m3, fresher
     * 1.4e-3.
     */
    @Test
    void thePolynomialLiesNearTheGibbsFunction() {
        for (var row : TABLE.rows()) {
            double salinity = row.number("practical_salinity");
            double got = PolynomialDensity.ofSeawater(row.number("temperature_c"), salinity);
            Validation.of(PolynomialDensity.class, "ofConservative")
                    .absolute(row, "density_gibbs_kg_m3", got, salinity < 5 ? 1.4e-3 : 6.5e-4);
        }
    }

    @Test
    void kelvinMilligramsAndNotANumberAreRefused() {
        assertRefused(() -> Teos10.density(298.15, 35), "kelvin");
        assertRefused(() -> Teos10.specificHeat(25, 35_000), "mg/kg");
        assertRefused(() -> Teos10.thermalExpansion(Double.NaN, 35), "water temperature");
        assertRefused(() -> Teos10.halineContraction(25, -1), "practical salinity");
        assertRefused(() -> Teos10.chemicalPotentialOfWater(25, Double.NaN), "practical salinity");
        assertRefused(() -> ConservativeTemperature.fromInSitu(298.15, 35), "kelvin");
        assertRefused(() -> ConservativeTemperature.toInSitu(298.15, 35), "conservative temperature");
        assertRefused(() -> PolynomialDensity.ofConservative(25, 35_000), "absolute salinity");
        assertRefused(() -> PolynomialDensity.ofSeawater(25, Double.NaN), "practical salinity");
    }

    private static void assertRefused(Runnable call, String saying) {
        assertThatThrownBy(call::run)
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(saying);
    }
}
