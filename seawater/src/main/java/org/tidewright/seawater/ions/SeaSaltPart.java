package org.tidewright.seawater.ions;

import org.tidewright.seawater.density.Density;
import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.salinity.AbsoluteSalinity;
import org.tidewright.seawater.unit.Unit;

/**
 * A part of the salt of the sea, by its share in the Reference Composition: how much of it seawater of a salinity
 * holds, and how a measured amount compares. A reading is the mass per volume that a test kit gives.
 *
 * <p>The proportions are those of the North Atlantic; elsewhere in the open ocean calcium, which organisms take up,
 * differs by about 1 % and the others by less (from memory). Salt mixes of the trade and old tanks differ as much as
 * they like, which is what the comparison is for.
 *
 * @source Millero, Feistel, Wright and McDougall 2008, Deep-Sea Res. I 55, 50-72, doi 10.1016/j.dsr.2007.10.001
 */
public sealed interface SeaSaltPart permits MajorIon, TestedElement {
    /** Moles of it in a mole of sea salt. */
    @Unit("1")
    double moleFraction();

    /** Mass of a mole of it, as it is weighed or reported. */
    @Unit("kg/mol")
    double molarMass();

    /** Mass of it in a mass of sea salt. */
    @Unit("1")
    default double massFraction() {
        return moleFraction() * molarMass() / MajorIon.SEA_SALT_MOLAR_MASS;
    }

    /**
     * Amount of it in seawater of the Reference Composition.
     *
     * <pre>n = x S_R / M, S_R = (35.16504 / 35) g/kg S_P, M = 31.4038218 g/mol</pre>
     *
     * @param practicalSalinity PSS-78
     * @return per kilogram of seawater
     * @source Millero et al. 2008, table 4
     * @validity sea salt in its natural proportions, any salinity
     * @checkvalue calcium at S = 35: 0.0102821 mol/kg
     */
    @Unit("mol/kg")
    default double amount(@Unit("1") double practicalSalinity) {
        return moleFraction()
                * AbsoluteSalinity.fromPractical(practicalSalinity)
                / (1000 * MajorIon.SEA_SALT_MOLAR_MASS);
    }

    /**
     * Mass of it in seawater of the Reference Composition.
     *
     * @param practicalSalinity PSS-78
     * @return grams per kilogram of seawater
     * @source as {@link #amount}
     * @validity as {@link #amount}
     */
    @Unit("g/kg")
    default double massPerMass(@Unit("1") double practicalSalinity) {
        return massFraction() * AbsoluteSalinity.fromPractical(practicalSalinity);
    }

    /**
     * What a test would read in seawater of the Reference Composition.
     *
     * @param temperature of the sample when its volume was taken, ITS-90
     * @param practicalSalinity PSS-78
     * @return mass per volume
     * @source {@link #amount} with EOS-80 density, {@link Density#ofSeawater}
     * @validity as the density
     * @checkvalue calcium at S = 35, 25 degC: 421.7 mg/L
     */
    @Unit("mg/L")
    default double reading(@Unit("degC") double temperature, @Unit("1") double practicalSalinity) {
        return toReading(amount(practicalSalinity), temperature, practicalSalinity);
    }

    /**
     * Mass per volume from an amount per kilogram of seawater.
     *
     * @param amount measured or computed
     * @param temperature of the sample when its volume was taken, ITS-90
     * @param practicalSalinity of the sample, PSS-78, whatever its composition
     * @return mass per volume
     * @source EOS-80 density, {@link Density#ofSeawater}
     * @validity as the density
     */
    @Unit("mg/L")
    default double toReading(
            @Unit("mol/kg") double amount, @Unit("degC") double temperature, @Unit("1") double practicalSalinity) {
        Bounds.notNegative(amount, "mol/kg", "amount");
        return amount * gramsPerMole() * Density.ofSeawater(temperature, practicalSalinity);
    }

    /**
     * Amount per kilogram of seawater from a mass per volume, the inverse of {@link #toReading}.
     *
     * @param reading mass per volume
     * @param temperature of the sample when its volume was taken, ITS-90
     * @param practicalSalinity of the sample, PSS-78, whatever its composition
     * @return per kilogram of seawater
     * @source as {@link #toReading}
     * @validity as {@link #toReading}; taking a litre for a kilogram costs 2.3 %
     */
    @Unit("mol/kg")
    default double fromReading(
            @Unit("mg/L") double reading, @Unit("degC") double temperature, @Unit("1") double practicalSalinity) {
        Bounds.notNegative(reading, "mg/L", "reading");
        return reading / (gramsPerMole() * Density.ofSeawater(temperature, practicalSalinity));
    }

    /**
     * Practical salinity at which seawater of the Reference Composition holds this much, the inverse of
     * {@link #amount}.
     *
     * @param amount per kilogram of seawater
     * @return practical salinity, PSS-78
     * @source as {@link #amount}
     * @validity as {@link #amount}; refused where the answer is above {@link Bounds#SALTIEST_WATER}
     */
    @Unit("1")
    default double salinityHolding(@Unit("mol/kg") double amount) {
        Bounds.within(amount, "mol/kg", 0, amount(Bounds.SALTIEST_WATER), "amount", "is it in mmol/kg or per volume?");
        return Math.min(Bounds.SALTIEST_WATER, amount / amount(1));
    }

    /**
     * Practical salinity at which seawater of the Reference Composition gives this reading, the inverse of
     * {@link #reading}.
     *
     * @param reading mass per volume
     * @param temperature of the sample when its volume was taken, ITS-90
     * @return practical salinity, PSS-78
     * @source as {@link #reading}
     * @validity as {@link #reading}; refused where the answer is above {@link Bounds#SALTIEST_WATER}
     */
    @Unit("1")
    default double salinityReading(@Unit("mg/L") double reading, @Unit("degC") double temperature) {
        double most = reading(temperature, Bounds.SALTIEST_WATER);
        Bounds.within(reading, "mg/L", 0, most, "reading", "is it in ug/L?");
        // Density hardly depends on salinity: each step leaves a tenth of the error, or less.
        double salinity = Bounds.SALTIEST_WATER;
        for (int step = 0; step < 40; step++) {
            double next = Math.min(Bounds.SALTIEST_WATER, fromReading(reading, temperature, salinity) / amount(1));
            if (next == salinity) {
                break;
            }
            salinity = next;
        }
        return salinity;
    }

    /**
     * A measured amount over the one that goes with the salinity: 0.9 is "a tenth too low for the salinity".
     *
     * @param amount per kilogram of seawater, as measured
     * @param practicalSalinity of the same water, PSS-78, above 0
     * @return 1 where the proportion is the sea's
     * @source as {@link #amount}
     * @validity as {@link #amount}
     */
    @Unit("1")
    default double shareOfNatural(@Unit("mol/kg") double amount, @Unit("1") double practicalSalinity) {
        Bounds.notNegative(amount, "mol/kg", "amount");
        return amount / amount(salty(practicalSalinity));
    }

    /**
     * The same for a reading.
     *
     * @param reading mass per volume, as measured
     * @param temperature of the sample when its volume was taken, ITS-90
     * @param practicalSalinity of the same water, PSS-78, above 0
     * @return 1 where the proportion is the sea's
     * @source as {@link #reading}
     * @validity as {@link #reading}
     */
    @Unit("1")
    default double shareOfNatural(
            @Unit("mg/L") double reading, @Unit("degC") double temperature, @Unit("1") double practicalSalinity) {
        Bounds.notNegative(reading, "mg/L", "reading");
        return reading / reading(temperature, salty(practicalSalinity));
    }

    private double gramsPerMole() {
        return 1000 * molarMass();
    }

    private static double salty(double practicalSalinity) {
        Bounds.practicalSalinity(practicalSalinity);
        return Bounds.positive(practicalSalinity, "1", "practical salinity");
    }
}
