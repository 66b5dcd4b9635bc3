package org.tidewright.husbandry.spreadsheet;

/**
 * Which rows are taken, where a sheet tells of several tanks.
 *
 * @param column whose text decides; 0 for all rows
 * @param text that it must have, case apart
 * @param sure whether the keeper has said so; until then all rows are looked at
 */
public record RowChoice(int column, String text, boolean sure) {
    /** Every row. */
    public static final RowChoice ALL = new RowChoice(0, "", true);

    boolean takes(SheetRows.Row row) {
        return !sure || column == 0 || row.cell(column).equalsIgnoreCase(text);
    }
}
