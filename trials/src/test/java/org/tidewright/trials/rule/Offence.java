package org.tidewright.trials.rule;

import java.nio.file.Path;

/**
 * Something in a source that breaks a rule.
 *
 * @param file where it stands
 * @param line where it stands
 * @param what the member and what it lacks, without the line, so that it stays the same when the file grows
 */
record Offence(Path file, long line, String what) {
    /** How a frozen list names it. */
    String key() {
        return Checkout.name(file) + " " + what;
    }

    @Override
    public String toString() {
        return Checkout.name(file) + ":" + line + " " + what;
    }
}
