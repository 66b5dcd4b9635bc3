package org.tidewright.twin.contract;

import org.tidewright.seawater.unit.Unit;

/**
 * What a body holds. Amounts of matter are in moles: of charge for alkalinity, of the element for nutrients. What of it
 * is neither made nor lost when one turns into another, {@link Balance} says.
 */
public enum Stock {
    /** Water with what is dissolved in it, m³ at the network's reference density. */
    WATER(0, "m^3", 1e-6),
    /** Dissolved salt, kg. */
    SALT(1, "kg", 0.01),
    /** Heat of the water and the solids in it above 0 °C, J; in a battery, its energy. */
    HEAT(2, "J", 1e4),
    /** Dissolved oxygen. */
    OXYGEN(3, "mol", 1e-3),
    /** Total alkalinity of the definition of Dickson 1981. */
    ALKALINITY(4, "mol", 1e-3),
    /** Dissolved inorganic carbon; in a skeleton, its carbonate; in the air, carbon dioxide. */
    INORGANIC_CARBON(5, "mol", 1e-3),
    CALCIUM(6, "mol", 1e-2),
    MAGNESIUM(7, "mol", 1e-2),
    /** Nitrogen of ammonia and ammonium. */
    AMMONIA(8, "mol", 1e-4),
    /** Nitrogen of nitrite. */
    NITRITE(9, "mol", 1e-4),
    /** Nitrogen of nitrate. */
    NITRATE(10, "mol", 1e-4),
    /** Phosphorus of orthophosphate, dissolved or held by a medium. */
    PHOSPHATE(11, "mol", 1e-5),
    /** Carbon of living and dead organic matter. */
    ORGANIC_CARBON(12, "mol", 1e-2),
    /** Nitrogen of living and dead organic matter. */
    ORGANIC_NITROGEN(13, "mol", 1e-3),
    /** Phosphorus of living and dead organic matter. */
    ORGANIC_PHOSPHORUS(14, "mol", 1e-4),
    /** Nitrogen of dinitrogen gas set free. */
    NITROGEN_GAS(15, "mol", 1e-2);

    /** Number of stocks there are. */
    static final int COUNT = values().length;

    private final int number;
    private final String unit;
    private final double grain;

    Stock(int number, String unit, double grain) {
        this.number = number;
        this.unit = unit;
        this.grain = grain;
    }

    /** Its place among all stocks. */
    int number() {
        return number;
    }

    public String unit() {
        return unit;
    }

    /** Whether it goes along with water that moves, in proportion. */
    public boolean isDissolved() {
        return this != WATER && this != HEAT;
    }

    /**
     * An amount in a cubic metre of water that no keeper could measure and no mechanism feels, in the stock's unit: what
     * a run's absolute error is counted in.
     */
    public @Unit("*") double grain() {
        return grain;
    }
}
