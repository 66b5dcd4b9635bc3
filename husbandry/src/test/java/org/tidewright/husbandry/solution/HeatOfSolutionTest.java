package org.tidewright.husbandry.solution;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tidewright.plan.model.Salt;
import org.tidewright.seawater.heat.SpecificHeat;
import org.tidewright.testkit.Close;
import org.tidewright.testkit.ReferenceTable;
import org.tidewright.testkit.SeededCases;

class HeatOfSolutionTest {
    private static final double WATER = -285.8;

    @Test
    void heatsAreTheDifferencesOfEnthalpiesOfFormation() {
        for (ReferenceTable.Row row : ReferenceTable.read(
                        HeatOfSolutionTest.class, "/reference/solution/enthalpy_of_formation.csv")
                .rows()) {
            double dissolved = row.number("cations") * row.number("cation_kj_per_mol")
                    + row.number("anions") * row.number("anion_kj_per_mol")
                    + row.number("waters") * WATER;
            double heat = HeatOfSolution.of(Salt.valueOf(row.text("salt"))) / 1000;
            assertThat(heat).as(row.toString()).isCloseTo(dissolved - row.number("crystal_kj_per_mol"), within(1.0));
        }
    }

    /** Parker 1965 in the CRC Handbook, last printed digit: NaOH -44.51, NH4Cl 14.78, NaNO3 20.50, CH3COOH -1.51 kJ/mol. */
    @ParameterizedTest
    @CsvSource({"SODIUM_HYDROXIDE, -44510", "AMMONIUM_CHLORIDE, 14780", "SODIUM_NITRATE, 20500", "ACETIC_ACID, -1510"})
    void heatsOfUnivalentSaltsAreParkers(Salt salt, double heat) {
        assertThat(HeatOfSolution.of(salt)).isEqualTo(heat);
    }

    /**
     * Heats of dissolving at 18 degC in moderate dilution, kcal/mol evolved: Bichowsky and Rossini 1936 as Perry's Chemical
     * Engineers' Handbook has them, from memory. Another temperature, another dilution: 4.5 kJ/mol, and the same sign.
     */
    @ParameterizedTest
    @CsvSource({
        "MAGNESIUM_CHLORIDE, 3.4",
        "MAGNESIUM_SULFATE, -3.18",
        "SODIUM_BICARBONATE, -4.1",
        "SODIUM_CARBONATE, 5.57",
        "SODIUM_HYDROXIDE, 10.18",
        "POTASSIUM_CHLORIDE, -4.404",
        "AMMONIUM_CHLORIDE, -3.82",
    })
    void anOlderTableAgreesInSignAndRoughlyInSize(Salt salt, double kilocaloriesEvolved) {
        double older = -4.184 * kilocaloriesEvolved;
        assertThat(Math.signum(HeatOfSolution.of(salt))).isEqualTo(Math.signum(older));
        assertThat(HeatOfSolution.of(salt) / 1000).isCloseTo(older, within(4.5));
    }

    /**
     * One litre, heat over the water's own capacity, by hand: 150 g of CaCl2, 1.352 mol 81.8 = 110.6 kJ over 0.964 kg 4.18 =
     * 4.03 kJ/K, 27.4 K; 147 g of the dihydrate, 44.8 kJ over 4.07, 11.0 K; 150 g of Na2CO3, 37.6 kJ over 4.13, 9.1 K; 40 g of
     * NaOH, 44.5 kJ over 4.18, 10.6 K. Another working took a kilogram of water for each: 26, 11, 9 and 11 K.
     */
    @ParameterizedTest
    @CsvSource({
        "CALCIUM_CHLORIDE_ANHYDROUS, 150, 27.4, 26",
        "CALCIUM_CHLORIDE, 147, 11.0, 11",
        "SODIUM_CARBONATE, 150, 9.1, 9",
        "SODIUM_HYDROXIDE, 40, 10.6, 11",
    })
    void aLitreWarmsAsWorkedByHand(Salt salt, double grams, double byHand, double inAKilogramOfWater) {
        double warming = HeatOfSolution.warming(Solution.ofMass(salt, grams), 20);
        assertThat(warming).isCloseTo(byHand, within(0.15));
        assertThat(warming).isCloseTo(inAKilogramOfWater, within(1.5));
    }

    /** The doubt we state covers that a solution is not its water alone. */
    @Test
    void heatCapacityOfTheWaterAloneIsNearThatOfTheSolution() {
        for (ReferenceTable.Row row : ReferenceTable.read(
                        HeatOfSolutionTest.class, "/reference/solution/heat_capacity_thermo.csv")
                .rows()) {
            double water = (1 - row.number("mass_share")) * SpecificHeat.ofSeawater(25, 0);
            Close.relative(row, "heat_capacity_j_per_kg_k", water, 0.084);
        }
    }

    @Test
    void twiceAsStrongWarmsMoreThanTwice() {
        SeededCases.check(300, draw -> {
            Salt salt = draw.oneOf(Salt.SODIUM_HYDROXIDE, Salt.CALCIUM_CHLORIDE, Salt.SODIUM_CARBONATE);
            Solution weak = Solution.of(salt, draw.between(10, 800));
            double one = HeatOfSolution.warming(weak, 20);
            assertThat(HeatOfSolution.warming(weak.times(2), 20))
                    .isGreaterThan(2 * one * 0.999)
                    .isPositive();
            assertThat(HeatOfSolution.warming(Solution.of(Salt.SODIUM_BICARBONATE, 500), 20))
                    .isNegative();
        });
    }
}
