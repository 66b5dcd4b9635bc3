package org.tidewright.husbandry.spreadsheet;

/** In which order day, month and year stand where all three are numbers and the year does not come first with four digits. */
public enum DateOrder {
    DMY("day, month, year"),
    MDY("month, day, year"),
    YMD("year, month, day");

    private final String words;

    DateOrder(String words) {
        this.words = words;
    }

    /** As a sentence says it. */
    public String words() {
        return words;
    }
}
