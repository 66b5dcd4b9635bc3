package org.tidewright.plan.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class SaltTest {
    /**
     * Molar masses in g/mol as the CRC Handbook of Chemistry and Physics prints them; from memory. Its sulfur is 32.065 g/mol,
     * ours IUPAC's later 32.06.
     */
    @ParameterizedTest
    @CsvSource({
        "SODIUM_BICARBONATE, 84.007",
        "SODIUM_CARBONATE, 105.989",
        "SODIUM_HYDROXIDE, 39.997",
        "CALCIUM_CHLORIDE, 147.014",
        "CALCIUM_CHLORIDE_ANHYDROUS, 110.984",
        "MAGNESIUM_CHLORIDE, 203.302",
        "MAGNESIUM_SULFATE, 246.474",
        "POTASSIUM_CHLORIDE, 74.551",
        "CALCIUM_HYDROXIDE, 74.093",
        "AMMONIUM_CHLORIDE, 53.491",
        "SODIUM_NITRATE, 84.995",
        "SODIUM_PHOSPHATE, 119.977",
        "ACETIC_ACID, 60.052",
    })
    void aMoleWeighsWhatHandbooksSay(Salt salt, double gramsPerMole) {
        assertThat(1000 * salt.molarMass()).isCloseTo(gramsPerMole, within(0.0081));
    }

    @ParameterizedTest
    @EnumSource(Salt.class)
    void everyFormulaIsNeutral(Salt salt) {
        assertThat(salt.formula().entrySet().stream()
                        .mapToInt(part -> part.getValue() * part.getKey().charge())
                        .sum())
                .isZero();
    }

    /**
     * The proton condition of Dickson 1981, Deep-Sea Res. 28A, 609-623, worked by hand: bicarbonate and hydroxide take up
     * one hydrogen ion, carbonate two, an acid's own counts minus one; ammonium and dihydrogen phosphate none.
     */
    @ParameterizedTest
    @CsvSource({
        "SODIUM_BICARBONATE, 1",
        "SODIUM_CARBONATE, 2",
        "SODIUM_HYDROXIDE, 1",
        "CALCIUM_CHLORIDE, 0",
        "CALCIUM_CHLORIDE_ANHYDROUS, 0",
        "MAGNESIUM_CHLORIDE, 0",
        "MAGNESIUM_SULFATE, 0",
        "POTASSIUM_CHLORIDE, 0",
        "CALCIUM_HYDROXIDE, 2",
        "AMMONIUM_CHLORIDE, 0",
        "SODIUM_NITRATE, 0",
        "SODIUM_PHOSPHATE, 0",
        "ACETIC_ACID, -1",
    })
    void alkalinityFromChargeIsThatOfTheProtonCondition(Salt salt, double alkalinity) {
        assertThat(salt.alkalinity()).isEqualTo(alkalinity);
    }

    @ParameterizedTest
    @CsvSource({
        "SODIUM_BICARBONATE, 1, 0, 0, 0, 0, 0, 0",
        "SODIUM_CARBONATE, 1, 0, 0, 0, 0, 0, 0",
        "SODIUM_HYDROXIDE, 0, 0, 0, 0, 0, 0, 0",
        "CALCIUM_CHLORIDE, 0, 1, 0, 0, 0, 0, 0",
        "MAGNESIUM_CHLORIDE, 0, 0, 1, 0, 0, 0, 0",
        "MAGNESIUM_SULFATE, 0, 0, 1, 0, 0, 0, 0",
        "POTASSIUM_CHLORIDE, 0, 0, 0, 0, 0, 0, 0",
        "CALCIUM_HYDROXIDE, 0, 1, 0, 0, 0, 0, 0",
        "AMMONIUM_CHLORIDE, 0, 0, 0, 1, 0, 0, 0",
        "SODIUM_NITRATE, 0, 0, 0, 0, 1, 0, 0",
        "SODIUM_PHOSPHATE, 0, 0, 0, 0, 0, 1, 0",
        "ACETIC_ACID, 0, 0, 0, 0, 0, 0, 2",
    })
    void aMoleBringsWhatItsFormulaHolds(
            Salt salt,
            double inorganicCarbon,
            double calcium,
            double magnesium,
            double ammonia,
            double nitrate,
            double phosphate,
            double organicCarbon) {
        assertThat(salt.inorganicCarbon()).isEqualTo(inorganicCarbon);
        assertThat(salt.calcium()).isEqualTo(calcium);
        assertThat(salt.magnesium()).isEqualTo(magnesium);
        assertThat(salt.ammonia()).isEqualTo(ammonia);
        assertThat(salt.nitrate()).isEqualTo(nitrate);
        assertThat(salt.phosphate()).isEqualTo(phosphate);
        assertThat(salt.organicCarbon()).isEqualTo(organicCarbon);
    }

    /** 2 NaHCO3 + CaCl2 = CaCO3 + 2 NaCl + CO2 + H2O, with 58.44 g/mol for NaCl. */
    @Test
    void theTwoPartsLeaveTableSaltBehind() {
        double left = 2 * Salt.SODIUM_BICARBONATE.seaSalt() + Salt.CALCIUM_CHLORIDE.seaSalt();
        assertThat(1000 * left).isCloseTo(2 * 58.44, within(0.01));
        assertThat(Salt.CALCIUM_HYDROXIDE.seaSalt()).isZero();
    }

    /** Water of crystallisation tells the two apart: 147.01 - 110.98 = 2 x 18.015 g/mol. */
    @Test
    void theDihydrateIsTheDrySaltAndItsWater() {
        assertThat(1000 * (Salt.CALCIUM_CHLORIDE.molarMass() - Salt.CALCIUM_CHLORIDE_ANHYDROUS.molarMass()))
                .isCloseTo(2 * 18.015, within(0.001));
    }

    /** Formulas as written; what is not listed is none. */
    @ParameterizedTest
    @CsvSource({
        "SODIUM_BICARBONATE, 1, 0, 0, 0",
        "SODIUM_CARBONATE, 2, 0, 0, 0",
        "SODIUM_HYDROXIDE, 1, 0, 0, 0",
        "CALCIUM_CHLORIDE, 0, 0, 2, 0",
        "CALCIUM_CHLORIDE_ANHYDROUS, 0, 0, 2, 0",
        "MAGNESIUM_CHLORIDE, 0, 0, 2, 0",
        "MAGNESIUM_SULFATE, 0, 0, 0, 1",
        "POTASSIUM_CHLORIDE, 0, 1, 1, 0",
        "CALCIUM_HYDROXIDE, 0, 0, 0, 0",
        "AMMONIUM_CHLORIDE, 0, 0, 1, 0",
        "SODIUM_NITRATE, 1, 0, 0, 0",
        "SODIUM_PHOSPHATE, 1, 0, 0, 0",
        "ACETIC_ACID, 0, 0, 0, 0",
    })
    void aMoleBringsTheIonsOfSeaSaltItsFormulaHolds(
            Salt salt, double sodium, double potassium, double chloride, double sulfate) {
        assertThat(salt.sodium()).isEqualTo(sodium);
        assertThat(salt.potassium()).isEqualTo(potassium);
        assertThat(salt.chloride()).isEqualTo(chloride);
        assertThat(salt.sulfate()).isEqualTo(sulfate);
    }

    /** KCl is all salt: 74.551 g/mol of it. */
    @Test
    void potassiumChlorideOnlyAddsToTheSalt() {
        assertThat(1000 * Salt.POTASSIUM_CHLORIDE.seaSalt()).isCloseTo(74.551, within(0.004));
    }

    /** The same handbook's masses of the salts without water: 95.211 and 120.369 g/mol; none to lose in KCl. */
    @Test
    void withoutItsWaterAHydrateWeighsWhatTheDrySaltWeighs() {
        assertThat(1000 * Salt.MAGNESIUM_CHLORIDE.dryMolarMass()).isCloseTo(95.211, within(0.0081));
        assertThat(1000 * Salt.MAGNESIUM_SULFATE.dryMolarMass()).isCloseTo(120.369, within(0.0081));
        assertThat(Salt.CALCIUM_CHLORIDE.dryMolarMass())
                .isCloseTo(Salt.CALCIUM_CHLORIDE_ANHYDROUS.molarMass(), within(1e-15));
        assertThat(Salt.POTASSIUM_CHLORIDE.dryMolarMass()).isEqualTo(Salt.POTASSIUM_CHLORIDE.molarMass());
    }
}
