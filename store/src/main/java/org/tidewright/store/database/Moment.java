package org.tidewright.store.database;

import java.time.Duration;
import java.time.Instant;
import org.tidewright.husbandry.journal.Span;

/**
 * A moment as two whole columns: milliseconds, which everybody's tools read, and what a clock said more exactly.
 *
 * @param ms since 1970-01-01T00:00Z
 * @param ns beyond the millisecond
 */
public record Moment(long ms, int ns) {
    /**
     * The moment to be kept.
     *
     * @throws IllegalArgumentException where no span could find it again
     */
    public static Moment of(Instant instant) {
        if (instant.isBefore(Span.EVER.from()) || !instant.isBefore(Span.EVER.to())) {
            throw new IllegalArgumentException("the time " + instant + " cannot be kept: times go from "
                    + Span.EVER.from() + " up to " + Span.EVER.to());
        }
        return split(instant);
    }

    /** The end of a span, drawn in to where something can be kept. */
    public static Moment end(Instant end) {
        return split(
                end.isBefore(Span.EVER.from()) ? Span.EVER.from() : end.isAfter(Span.EVER.to()) ? Span.EVER.to() : end);
    }

    private static Moment split(Instant instant) {
        long ms = instant.toEpochMilli();
        return new Moment(
                ms, (int) Duration.between(Instant.ofEpochMilli(ms), instant).toNanos());
    }

    public Instant instant() {
        return Instant.ofEpochMilli(ms).plusNanos(ns);
    }

    /** The first whole millisecond that is not before it. */
    public long firstMs() {
        return ns == 0 ? ms : ms + 1;
    }
}
