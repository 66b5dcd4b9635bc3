package org.tidewright.husbandry.journal;

import java.time.Instant;

/**
 * From one time up to another.
 *
 * @param from with it
 * @param to without it
 */
public record Span(Instant from, Instant to) {
    /** All the time that can be written down. */
    public static final Span EVER =
            new Span(Instant.parse("0000-01-01T00:00:00Z"), Instant.parse("9999-12-31T00:00:00Z"));

    public Span {
        if (to.isBefore(from)) {
            throw new IllegalArgumentException("a span cannot end at " + to + ", before it begins at " + from);
        }
    }
}
