package org.tidewright.seawater.carbonate;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * What the water holds of the other acids and of calcium, all forms together. Sulfate and fluoride are always taken in
 * their proportion to salinity, which the constants suppose.
 *
 * @param borate boric acid and borate
 * @param calcium a tank's own measured value tells its saturation better than the sea's ratio
 * @param phosphate all phosphoric acid and its ions
 * @param silicate all silicic acid and its ions
 * @param ammonia NH3 and NH4+
 */
public record TotalConcentrations(
        @Unit("mol/kg") double borate,
        @Unit("mol/kg") double calcium,
        @Unit("mol/kg") double phosphate,
        @Unit("mol/kg") double silicate,
        @Unit("mol/kg") double ammonia) {

    /** More than any of them in a brine of three times the sea. */
    private static final double MOST = 0.1;

    /** Mass of chlorine over mass of seawater is S / 1.80655 parts per thousand, by the definition of 1969. */
    private static final double SALINITY_OVER_CHLORINITY = 1.80655;

    /** Refuses a total that cannot be meant. */
    public TotalConcentrations {
        refuseNonsense(borate, "total borate");
        refuseNonsense(calcium, "calcium");
        refuseNonsense(phosphate, "total phosphate");
        refuseNonsense(silicate, "total silicate");
        refuseNonsense(ammonia, "total ammonia");
    }

    /**
     * Those of natural seawater without nutrients.
     *
     * @param practicalSalinity PSS-78
     * @param boron whose ratio of boron to salinity
     * @source borate as {@link BoronRatio}; calcium 0.02128/40.087 mol/kg per unit of chlorinity, Riley and Tongudai
     *     1967, Chem. Geol. 2, 263-269
     * @validity sea salt in its natural proportions; salt mixes of the trade differ
     */
    public static TotalConcentrations ofSeawater(@Unit("1") double practicalSalinity, BoronRatio boron) {
        Bounds.practicalSalinity(practicalSalinity);
        return new TotalConcentrations(
                boron.totalBorate(practicalSalinity), naturalCalcium(practicalSalinity), 0, 0, 0);
    }

    /** The same with calcium as measured. */
    public TotalConcentrations withCalcium(@Unit("mol/kg") double measured) {
        return new TotalConcentrations(borate, measured, phosphate, silicate, ammonia);
    }

    /** The same with nutrients as measured. */
    public TotalConcentrations withNutrients(
            @Unit("mol/kg") double newPhosphate,
            @Unit("mol/kg") double newSilicate,
            @Unit("mol/kg") double newAmmonia) {
        return new TotalConcentrations(borate, calcium, newPhosphate, newSilicate, newAmmonia);
    }

    /**
     * Sulfate that comes with the salt of the sea.
     *
     * @param practicalSalinity PSS-78
     * @return sulfate and bisulfate
     * @source 0.1400 g per g of chlorinity, molar mass 96.062 g/mol: Morris and Riley 1966, Deep-Sea Res. 13, 699-705
     * @validity sea salt in its natural proportions
     */
    @Unit("mol/kg")
    public static double sulfate(@Unit("1") double practicalSalinity) {
        Bounds.practicalSalinity(practicalSalinity);
        return 0.14 / 96.062 * practicalSalinity / SALINITY_OVER_CHLORINITY;
    }

    /**
     * Fluoride that comes with the salt of the sea.
     *
     * @param practicalSalinity PSS-78
     * @return fluoride and hydrogen fluoride
     * @source 6.7e-5 g per g of chlorinity, molar mass 18.998 g/mol: Riley 1965, Deep-Sea Res. 12, 219-220
     * @validity sea salt in its natural proportions
     */
    @Unit("mol/kg")
    public static double fluoride(@Unit("1") double practicalSalinity) {
        Bounds.practicalSalinity(practicalSalinity);
        return 0.000067 / 18.998 * practicalSalinity / SALINITY_OVER_CHLORINITY;
    }

    static double naturalCalcium(double practicalSalinity) {
        return 0.02128 / 40.087 * practicalSalinity / SALINITY_OVER_CHLORINITY;
    }

    static void refuseNonsense(double amount, String what) {
        Bounds.within(amount, "mol/kg", 0, MOST, what, "is it in umol/kg or mg/L?");
    }
}
