package org.tidewright.husbandry.spreadsheet;

/** Why nothing can be taken from a file at all, in words for the keeper. */
public final class UnusableSheet extends Exception {
    private static final long serialVersionUID = 1L;

    UnusableSheet(String words) {
        super(words);
    }
}
