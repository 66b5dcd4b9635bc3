package org.tidewright.husbandry.exchange;

/**
 * A single value as it stands in a copy.
 *
 * @param text without quotes or guards
 */
record Scalar(Form form, String text, Place place) {
    enum Form {
        /** Nothing known: null in JSON, an empty cell in CSV. */
        ABSENT,
        TEXT,
        NUMBER,
        FLAG,
        /** A cell of CSV, which may be any of them. */
        CELL,
        /** Several values where one should stand. */
        NESTED
    }

    /** As a message shows it, cut where it is long. */
    String shown() {
        return switch (form) {
            case ABSENT -> "nothing";
            case NESTED -> "a list or an object";
            case TEXT -> "the text “" + cut(text) + "”";
            default -> "“" + cut(text) + "”";
        };
    }

    private static String cut(String text) {
        return text.length() <= 60 ? text : text.substring(0, 57) + "…";
    }
}
