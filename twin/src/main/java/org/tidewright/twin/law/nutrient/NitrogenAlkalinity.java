package org.tidewright.twin.law.nutrient;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/** Alkalinity that each step of the nutrients' cycle gives to the water, in equivalents per mole of nitrogen. */
public final class NitrogenAlkalinity {
    /** Organic nitrogen let go as ammonia. */
    @Unit("1")
    public static final double AMMONIA_RELEASED = 1;

    /** Ammonia oxidised to nitrite; nitrite to nitrate changes nothing. */
    @Unit("1")
    public static final double AMMONIA_OXIDISED = -2;

    @Unit("1")
    public static final double AMMONIUM_TAKEN_UP = -1;

    /** Nitrate or nitrite. */
    @Unit("1")
    public static final double NITRATE_TAKEN_UP = 1;

    @Unit("1")
    public static final double NITRATE_TURNED_TO_GAS = 1;

    /** Per mole of phosphorus; Wolf-Gladrow et al. 2007. */
    @Unit("1")
    public static final double PHOSPHATE_RELEASED = -1;

    private NitrogenAlkalinity() {}

    /**
     * Alkalinity gained while food became nitrate that stands in the water; negative, a loss.
     *
     * <pre>(AMMONIA_RELEASED + AMMONIA_OXIDISED) N = -N</pre>
     *
     * @param nitrate N, rise of nitrate from food
     * @return equivalents per volume
     * @source Middelburg, Soetaert and Hagens 2020, Rev. Geophys. 58, table 2; Wolf-Gladrow et al. 2007, Mar. Chem.
     *     106, 287-300
     * @validity everywhere; phosphate and sulfate from the food, about a tenth as much, are left out
     */
    @Unit("mol/m^3")
    public static double ofFoodToNitrate(@Unit("mol/m^3") double nitrate) {
        return (AMMONIA_RELEASED + AMMONIA_OXIDISED) * Bounds.finite(nitrate, "mol/m^3", "rise of nitrate");
    }
}
