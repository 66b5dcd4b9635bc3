package org.tidewright.husbandry.spreadsheet;

import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.tidewright.seawater.unit.Unit;

/** Counts one series: 16 bytes for each of its numbers. */
final class SeriesTally {
    /** Nobody tests by hand more often than this for days on end. */
    private static final Duration HAND = Duration.ofHours(3);

    /** With fewer numbers a busy day looks like a probe. */
    private static final int LEAST_OF_A_PROBE = 100;

    private static final long NANOS = 1_000_000_000L;

    private double[] values = new double[16];
    private long[] times = new long[16];
    private int count;
    private boolean sorted;

    void add(Instant at, @Unit("*") double value) {
        if (count == values.length) {
            values = Arrays.copyOf(values, 2 * count);
            times = Arrays.copyOf(times, 2 * count);
        }
        values[count] = value;
        times[count] = Math.addExact(Math.multiplyExact(at.getEpochSecond(), NANOS), at.getNano());
        count++;
    }

    private void sort() {
        if (!sorted) {
            values = Arrays.copyOf(values, count);
            times = Arrays.copyOf(times, count);
            Arrays.sort(values);
            Arrays.sort(times);
            sorted = true;
        }
    }

    int count() {
        return count;
    }

    @Unit("*")
    double least() {
        sort();
        return values[0];
    }

    @Unit("*")
    double most() {
        sort();
        return values[count - 1];
    }

    /** The middle one, or half-way between the two in the middle. */
    @Unit("*")
    double median() {
        sort();
        return count % 2 == 1 ? values[count / 2] : values[count / 2 - 1] / 2 + values[count / 2] / 2;
    }

    Instant first() {
        sort();
        return at(times[0]);
    }

    Instant last() {
        sort();
        return at(times[count - 1]);
    }

    /** How many numbers stand at a time that an earlier one has. */
    int repeated() {
        sort();
        int repeated = 0;
        for (int i = 1; i < count; i++) {
            repeated += times[i] == times[i - 1] ? 1 : 0;
        }
        return repeated;
    }

    /** The first time that stands more than once; null where none does. */
    @Nullable
    Instant firstRepeated() {
        sort();
        for (int i = 1; i < count; i++) {
            if (times[i] == times[i - 1]) {
                return at(times[i]);
            }
        }
        return null;
    }

    /** From one time to the next, on average; null with less than two times. */
    @Nullable
    Duration pace() {
        int different = count - (count == 0 ? 0 : repeated());
        return different < 2 ? null : Duration.between(first(), last()).dividedBy(different - 1L);
    }

    boolean isAProbes() {
        Duration pace = pace();
        return count - repeated() >= LEAST_OF_A_PROBE && pace != null && pace.compareTo(HAND) < 0;
    }

    private static Instant at(long nanos) {
        return Instant.ofEpochSecond(Math.floorDiv(nanos, NANOS), Math.floorMod(nanos, NANOS));
    }
}
