package org.tidewright.husbandry.sheet;

/** What belongs together on a water sheet, in the order it is told. */
public enum SheetSection {
    SALT("Salt"),
    BODY("Density and heat"),
    GAS("Gases"),
    ALKALINITY("Alkalinity and carbon dioxide"),
    SPECIES("What it is made of"),
    TOTALS("Totals supposed"),
    CONSTANTS("Constants used");

    private final String title;

    SheetSection(String title) {
        this.title = title;
    }

    public String title() {
        return title;
    }
}
