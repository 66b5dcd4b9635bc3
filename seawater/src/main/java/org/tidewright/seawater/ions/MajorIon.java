package org.tidewright.seawater.ions;

import org.tidewright.seawater.unit.Unit;

/**
 * The constituents of the salt of the sea in the Reference Composition, exact by definition: their mole fractions add
 * up to 1 and their charges to 0.
 *
 * <p>Bicarbonate, carbonate, borate, boric acid, hydroxide and carbon dioxide shift with pH: the table has them as they
 * are at 25 degC under air of about 340 uatm of carbon dioxide. A tank's own follow from its alkalinity by
 * {@link org.tidewright.seawater.carbonate.CarbonateSystem}. There calcium is after Riley and Tongudai 1967, 0.0102846
 * mol/kg at S = 35, as other codes of the carbon dioxide system have it; here it is 0.0102821, 0.02 % less. Boron is
 * 415.1 umol/kg here; there it is 415.7 after Uppström 1974 or 432.6 after Lee et al. 2010.
 *
 * @source Millero, Feistel, Wright and McDougall 2008, Deep-Sea Res. I 55, 50-72, doi 10.1016/j.dsr.2007.10.001, table
 *     4: mole fractions from memory; mass fractions and molalities of the same table, as public transcriptions have
 *     them, prove every digit
 */
public enum MajorIon implements SeaSaltPart {
    /** Na+. */
    SODIUM("Na+", 4_188_071, 1, AtomicWeight.SODIUM),
    /** Mg++. */
    MAGNESIUM("Mg2+", 471_678, 2, AtomicWeight.MAGNESIUM),
    /** Ca++. */
    CALCIUM("Ca2+", 91_823, 2, AtomicWeight.CALCIUM),
    /** K+. */
    POTASSIUM("K+", 91_159, 1, AtomicWeight.POTASSIUM),
    /** Sr++. */
    STRONTIUM("Sr2+", 810, 2, AtomicWeight.STRONTIUM),
    /** Cl-. */
    CHLORIDE("Cl-", 4_874_839, -1, AtomicWeight.CHLORINE),
    /** SO4--, with the bisulfate. */
    SULFATE("SO4 2-", 252_152, -2, AtomicWeight.SULFUR + 4 * AtomicWeight.OXYGEN),
    /** HCO3-. */
    BICARBONATE("HCO3-", 15_340, -1, AtomicWeight.HYDROGEN + AtomicWeight.CARBON + 3 * AtomicWeight.OXYGEN),
    /** Br-. */
    BROMIDE("Br-", 7_520, -1, AtomicWeight.BROMINE),
    /** CO3--. */
    CARBONATE("CO3 2-", 2_134, -2, AtomicWeight.CARBON + 3 * AtomicWeight.OXYGEN),
    /** B(OH)4-. */
    BORATE("B(OH)4-", 900, -1, AtomicWeight.BORON + 4 * (AtomicWeight.OXYGEN + AtomicWeight.HYDROGEN)),
    /** F-. */
    FLUORIDE("F-", 610, -1, AtomicWeight.FLUORINE),
    /** OH-. */
    HYDROXIDE("OH-", 71, -1, AtomicWeight.OXYGEN + AtomicWeight.HYDROGEN),
    /** B(OH)3, not an ion but counted with the salt. */
    BORIC_ACID("B(OH)3", 2_807, 0, AtomicWeight.BORON + 3 * (AtomicWeight.OXYGEN + AtomicWeight.HYDROGEN)),
    /** CO2, not an ion but counted with the salt. */
    CARBON_DIOXIDE("CO2", 86, 0, AtomicWeight.CARBON + 2 * AtomicWeight.OXYGEN);

    /** Mean mass of a mole of sea salt, as Millero et al. 2008 print it; the table's own sum agrees to all digits. */
    @Unit("kg/mol")
    public static final double SEA_SALT_MOLAR_MASS = 31.4038218e-3;

    private final String formula;
    private final int inTenMillion;
    private final int charge;
    private final double gramsPerMole;

    MajorIon(String formula, int inTenMillion, int charge, double gramsPerMole) {
        this.formula = formula;
        this.inTenMillion = inTenMillion;
        this.charge = charge;
        this.gramsPerMole = gramsPerMole;
    }

    /** As chemists write it, in plain letters. */
    public String formula() {
        return formula;
    }

    /** In units of the elementary charge. */
    public int charge() {
        return charge;
    }

    @Override
    public @Unit("1") double moleFraction() {
        return inTenMillion / 1e7;
    }

    /** Its mass by the atomic weights of IUPAC 2005, those of the definition. */
    @Override
    public @Unit("kg/mol") double molarMass() {
        return gramsPerMole / 1000;
    }
}
