package org.tidewright.app.sheet;

/** Why a file cannot be solved at all, in words for the keeper; nothing has been written. */
public final class UnusableCsv extends Exception {
    private static final long serialVersionUID = 1L;

    UnusableCsv(String words) {
        super(words);
    }
}
