package org.tidewright.store.probe;

import java.time.Duration;
import org.jspecify.annotations.Nullable;

/** Lengths into which the time of UTC is divided, the finest first. */
enum Stretch {
    MINUTE(Duration.ofMinutes(1), null),
    HOUR(Duration.ofHours(1), MINUTE),
    DAY(Duration.ofDays(1), HOUR);

    private final long ms;
    private final @Nullable Stretch finer;

    Stretch(Duration length, @Nullable Stretch finer) {
        ms = length.toMillis();
        this.finer = finer;
    }

    long ms() {
        return ms;
    }

    int seconds() {
        return (int) (ms / 1000);
    }

    /** The beginning of the stretch a time lies in. */
    long floor(long atMs) {
        return Math.floorDiv(atMs, ms) * ms;
    }

    /** The first beginning of a stretch that is not before a time. */
    long ceiling(long atMs) {
        return -floor(-atMs);
    }

    /** The next finer ones that it is made of; null where that is the values themselves. */
    @Nullable
    Stretch finer() {
        return finer;
    }
}
