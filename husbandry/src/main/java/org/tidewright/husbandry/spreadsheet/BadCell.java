package org.tidewright.husbandry.spreadsheet;

/** Why a cell, or a row, cannot be taken as it stands. */
final class BadCell extends Exception {
    private static final long serialVersionUID = 1L;

    private final String found;
    private final String expected;
    private final String mend;
    private final int column;

    BadCell(String found, String expected, String mend) {
        this(found, expected, mend, 0);
    }

    private BadCell(String found, String expected, String mend, int column) {
        super(found, null, false, false);
        this.column = column;
        this.found = found;
        this.expected = expected;
        this.mend = mend;
    }

    /** A cell's text as a message shows it. */
    static String quoted(String cell) {
        String shown = cell.length() <= 40 ? cell : cell.substring(0, 37) + "…";
        return "“" + shown.replaceAll("\\p{Cntrl}", " ") + "”";
    }

    /** The same, of the cell in this column. */
    BadCell in(int ofColumn) {
        return new BadCell(found, expected, mend, ofColumn);
    }

    /** Counted from 1; 0 where only the row is known. */
    int column() {
        return column;
    }

    String found() {
        return found;
    }

    String expected() {
        return expected;
    }

    String mend() {
        return mend;
    }
}
