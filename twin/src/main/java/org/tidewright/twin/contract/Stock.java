package org.tidewright.twin.contract;

/** What a body holds, each conserved over all bodies together. */
public enum Stock {
    /** Water with what is dissolved in it, m³ at the network's reference density. */
    WATER(0, "m^3"),
    /** Dissolved salt, kg. */
    SALT(1, "kg"),
    /** Heat of the water and the solids in it above 0 °C, J; in a battery, its energy. */
    HEAT(2, "J"),
    /** Dissolved oxygen, mol. */
    OXYGEN(3, "mol");

    /** Number of stocks. */
    public static final int COUNT = values().length;

    private final int slot;
    private final String unit;

    Stock(int slot, String unit) {
        this.slot = slot;
        this.unit = unit;
    }

    /** Position among a body's stocks. */
    int slot() {
        return slot;
    }

    public String unit() {
        return unit;
    }
}
