package org.tidewright.seawater.ions;

import org.tidewright.seawater.density.Density;
import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.salinity.AbsoluteSalinity;
import org.tidewright.seawater.unit.Unit;

/**
 * A constituent of sea salt in the reference composition of seawater: Millero, Feistel, Wright and McDougall 2008, Deep-Sea
 * Res. I 55, 50-72, doi 10.1016/j.dsr.2007.10.001, table 4. All stand in constant proportion to salinity; bicarbonate,
 * carbonate and their like as at 25 degC in equilibrium with the air of today's ocean. A salt mix of the trade has other
 * proportions, and a tank drifts further.
 */
public enum MajorIon {
    SODIUM("Na⁺", 1, 4_188_071, 22.98976928),
    MAGNESIUM("Mg²⁺", 2, 471_678, 24.3050),
    CALCIUM("Ca²⁺", 2, 91_823, 40.078),
    POTASSIUM("K⁺", 1, 91_159, 39.0983),
    STRONTIUM("Sr²⁺", 2, 810, 87.62),
    CHLORIDE("Cl⁻", -1, 4_874_839, 35.453),
    SULFATE("SO₄²⁻", -2, 252_152, 96.0626),
    BICARBONATE("HCO₃⁻", -1, 15_340, 61.01684),
    BROMIDE("Br⁻", -1, 7_520, 79.904),
    CARBONATE("CO₃²⁻", -2, 2_134, 60.0089),
    BORATE("B(OH)₄⁻", -1, 900, 78.8404),
    FLUORIDE("F⁻", -1, 610, 18.9984032),
    HYDROXIDE("OH⁻", -1, 71, 17.00734),
    BORIC_ACID("B(OH)₃", 0, 2_807, 61.8330),
    CARBON_DIOXIDE("CO₂", 0, 86, 44.0095);

    /** Mean molar mass of sea salt, from the same table. */
    @Unit("g/mol")
    public static final double SALT_MOLAR_MASS = 31.4038218;

    private static final double PARTS = 1e-7;

    private final String formula;
    private final int charge;
    private final int parts;
    private final double molarMass;

    MajorIon(String formula, int charge, int parts, double molarMass) {
        this.formula = formula;
        this.charge = charge;
        this.parts = parts;
        this.molarMass = molarMass;
    }

    /** With its charge. */
    public String formula() {
        return formula;
    }

    /** In elementary charges. */
    public int charge() {
        return charge;
    }

    /** From the IUPAC atomic weights of 2005, as the table. */
    @Unit("g/mol")
    public double molarMass() {
        return molarMass;
    }

    /** Moles of it per mole of sea salt. */
    @Unit("1")
    public double moleFraction() {
        return parts * PARTS;
    }

    /** Grams of it per gram of sea salt. */
    @Unit("1")
    public double massFraction() {
        return moleFraction() * molarMass / SALT_MOLAR_MASS;
    }

    /**
     * What standard seawater holds of it.
     *
     * @param practicalSalinity PSS-78
     * @return per kilogram of seawater
     */
    @Unit("mol/kg")
    public double perMass(@Unit("1") double practicalSalinity) {
        return moleFraction() * AbsoluteSalinity.fromPractical(practicalSalinity) / SALT_MOLAR_MASS;
    }

    /**
     * What standard seawater holds of it, as test kits tell it.
     *
     * @param practicalSalinity PSS-78
     * @param temperature of the water when its volume is taken, ITS-90
     * @return milligrams per litre of seawater
     */
    @Unit("mg/L")
    public double massPerVolume(@Unit("1") double practicalSalinity, @Unit("degC") double temperature) {
        return perMass(practicalSalinity) * molarMass * Density.ofSeawater(temperature, practicalSalinity);
    }

    /**
     * A measured amount over what the salinity would have with it: 1 in standard seawater, 0.9 where a tenth has been
     * used up.
     *
     * @param measured milligrams per litre
     * @param practicalSalinity of the same water, PSS-78, above 0
     * @param temperature of the water when its volume was taken, ITS-90
     * @return the ratio
     */
    @Unit("1")
    public double relativeToSalinity(
            @Unit("mg/L") double measured, @Unit("1") double practicalSalinity, @Unit("degC") double temperature) {
        Bounds.notNegative(measured, "mg/L", formula);
        Bounds.positive(practicalSalinity, "1", "practical salinity");
        return measured / massPerVolume(practicalSalinity, temperature);
    }

    /**
     * Boron in all its forms, as a laboratory tells it.
     *
     * @param practicalSalinity PSS-78
     * @param temperature of the water when its volume is taken, ITS-90
     * @return milligrams of B per litre of standard seawater
     * @source the two forms of boron of the table; atomic weight of boron 10.811 g/mol (IUPAC 2005)
     * @validity sea salt in its natural proportions
     */
    @Unit("mg/L")
    public static double boron(@Unit("1") double practicalSalinity, @Unit("degC") double temperature) {
        return (BORATE.perMass(practicalSalinity) + BORIC_ACID.perMass(practicalSalinity))
                * 10.811
                * Density.ofSeawater(temperature, practicalSalinity);
    }
}
