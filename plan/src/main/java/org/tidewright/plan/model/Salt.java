package org.tidewright.plan.model;

import static org.tidewright.plan.model.Constituent.*;

import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import org.tidewright.seawater.unit.Unit;

/**
 * What a dosed solution is made of, by what a mole of its formula brings into the water.
 *
 * <p>Alkalinity follows from charge. In water that stays neutral it is the charge of the ions that take no part in
 * acid-base reactions, with total ammonia counted as one positive and total phosphate as one negative charge, because
 * ammonium and dihydrogen phosphate are what they are where alkalinity is zero:
 *
 * <pre>TA = Na + K + 2 Ca + 2 Mg + TNH3 - Cl - NO3 - 2 SO4 - TPO4 - acetate</pre>
 *
 * <p>Acetate is counted as such an ion: adding acetic acid takes one mole of alkalinity away, and the bacteria that respire
 * it give the mole back with two of carbon dioxide. Whoever computes that must add the two; a titration to pH 4.5 would
 * count part of the acetate in between as alkalinity.
 *
 * <p>To add one, give its formula by its constituents; a test holds it neutral.
 *
 * @source Wolf-Gladrow, Zeebe, Klaas, Kortzinger, Dickson 2007, Mar. Chem. 106, 287-300, the explicit conservative
 *     expression; masses from the IUPAC standard atomic weights of 2021
 */
public enum Salt {
    /** NaHCO3. */
    SODIUM_BICARBONATE(Map.of(SODIUM, 1, BICARBONATE, 1)),
    /** Na2CO3, without water of crystallisation. */
    SODIUM_CARBONATE(Map.of(SODIUM, 2, CARBONATE, 1)),
    /** NaOH. */
    SODIUM_HYDROXIDE(Map.of(SODIUM, 1, HYDROXIDE, 1)),
    /** CaCl2 2H2O, the dihydrate. */
    CALCIUM_CHLORIDE(Map.of(CALCIUM, 1, CHLORIDE, 2, WATER, 2)),
    /** CaCl2. */
    CALCIUM_CHLORIDE_ANHYDROUS(Map.of(CALCIUM, 1, CHLORIDE, 2)),
    /** MgCl2 6H2O, the hexahydrate. */
    MAGNESIUM_CHLORIDE(Map.of(MAGNESIUM, 1, CHLORIDE, 2, WATER, 6)),
    /** MgSO4 7H2O, the heptahydrate. */
    MAGNESIUM_SULFATE(Map.of(MAGNESIUM, 1, SULFATE, 1, WATER, 7)),
    /** KCl. */
    POTASSIUM_CHLORIDE(Map.of(POTASSIUM, 1, CHLORIDE, 1)),
    /** Ca(OH)2: limewater. */
    CALCIUM_HYDROXIDE(Map.of(CALCIUM, 1, HYDROXIDE, 2)),
    /** NH4Cl. */
    AMMONIUM_CHLORIDE(Map.of(AMMONIUM, 1, CHLORIDE, 1)),
    /** NaNO3. */
    SODIUM_NITRATE(Map.of(SODIUM, 1, NITRATE, 1)),
    /** NaH2PO4, monosodium phosphate without water of crystallisation. */
    SODIUM_PHOSPHATE(Map.of(SODIUM, 1, DIHYDROGEN_PHOSPHATE, 1)),
    /** CH3COOH, as in vinegar. */
    ACETIC_ACID(Map.of(HYDROGEN, 1, ACETATE, 1));

    private final Map<Constituent, Integer> formula;

    /** Kept in one order, so that sums over it are the same to the last bit in every run of the program. */
    Salt(Map<Constituent, Integer> formula) {
        this.formula = new EnumMap<>(formula);
    }

    /** As a keeper calls it, with its water of crystallisation where labels differ in that. */
    public String words() {
        return switch (this) {
            case SODIUM_CARBONATE -> "sodium carbonate (anhydrous)";
            case CALCIUM_CHLORIDE -> "calcium chloride dihydrate";
            case CALCIUM_CHLORIDE_ANHYDROUS -> "calcium chloride (anhydrous)";
            case MAGNESIUM_CHLORIDE -> "magnesium chloride hexahydrate";
            case MAGNESIUM_SULFATE -> "magnesium sulfate heptahydrate";
            case SODIUM_PHOSPHATE -> "monosodium phosphate (anhydrous)";
            default -> name().toLowerCase(Locale.ROOT).replace('_', ' ');
        };
    }

    Map<Constituent, Integer> formula() {
        return formula;
    }

    /** Mass of a mole, water of crystallisation included. */
    @Unit("kg/mol")
    public double molarMass() {
        return formula.entrySet().stream()
                .mapToDouble(part -> part.getValue() * part.getKey().molarMass())
                .sum();
    }

    /** Mass of a mole without its water of crystallisation, as tables of solubility count it. */
    @Unit("kg/mol")
    public double dryMolarMass() {
        return molarMass() - count(WATER) * WATER.molarMass();
    }

    /** Total alkalinity from a mole; acetic acid's before it is respired. */
    @Unit("mol/mol")
    public double alkalinity() {
        return formula.entrySet().stream()
                .filter(part -> part.getKey().isConservative())
                .mapToDouble(part -> part.getValue() * part.getKey().charge())
                .sum();
    }

    /** Dissolved inorganic carbon from a mole. */
    @Unit("mol/mol")
    public double inorganicCarbon() {
        return count(BICARBONATE) + count(CARBONATE);
    }

    /** Calcium from a mole. */
    @Unit("mol/mol")
    public double calcium() {
        return count(CALCIUM);
    }

    /** Magnesium from a mole. */
    @Unit("mol/mol")
    public double magnesium() {
        return count(MAGNESIUM);
    }

    /** Sodium from a mole. */
    @Unit("mol/mol")
    public double sodium() {
        return count(SODIUM);
    }

    /** Potassium from a mole. */
    @Unit("mol/mol")
    public double potassium() {
        return count(POTASSIUM);
    }

    /** Chloride from a mole. */
    @Unit("mol/mol")
    public double chloride() {
        return count(CHLORIDE);
    }

    /** Sulfate from a mole. */
    @Unit("mol/mol")
    public double sulfate() {
        return count(SULFATE);
    }

    /** Ammonia and ammonium together, from a mole. */
    @Unit("mol/mol")
    public double ammonia() {
        return count(AMMONIUM);
    }

    /** Nitrate from a mole. */
    @Unit("mol/mol")
    public double nitrate() {
        return count(NITRATE);
    }

    /** Phosphate from a mole, all its forms together. */
    @Unit("mol/mol")
    public double phosphate() {
        return count(DIHYDROGEN_PHOSPHATE);
    }

    /** Carbon that bacteria can respire, from a mole. */
    @Unit("mol/mol")
    public double organicCarbon() {
        return 2 * count(ACETATE);
    }

    /** Mass of the ions that only add to the salt of the water: sodium, potassium, chloride and sulfate. */
    @Unit("kg/mol")
    public double seaSalt() {
        return count(SODIUM) * SODIUM.molarMass()
                + count(POTASSIUM) * POTASSIUM.molarMass()
                + count(CHLORIDE) * CHLORIDE.molarMass()
                + count(SULFATE) * SULFATE.molarMass();
    }

    private double count(Constituent part) {
        return formula.getOrDefault(part, 0);
    }
}
