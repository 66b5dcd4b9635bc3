package org.tidewright.store;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.concurrent.atomic.AtomicLong;

/** Goes on by a little whenever it is read, so that no two lines are written at the same time. */
public final class TestClock extends Clock {
    private static final Instant BEGINNING = Instant.parse("2026-03-01T08:00:00.000000001Z");
    private static final Duration TICK = Duration.ofNanos(1_234_567);

    private final AtomicLong ticks = new AtomicLong();

    @Override
    public Instant instant() {
        return BEGINNING.plus(TICK.multipliedBy(ticks.incrementAndGet()));
    }

    @Override
    public ZoneId getZone() {
        return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
        throw new UnsupportedOperationException("instants have no zone");
    }
}
