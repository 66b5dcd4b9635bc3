package org.tidewright.store.probe;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.tidewright.husbandry.journal.ProbeLog.Bin;

/** Gathers what comes in order of time into stretches, for as long as they do not get too many. */
final class Tally {
    private final Stretch stretch;
    private final int most;
    private final List<Bin> bins = new ArrayList<>();
    private long from;
    private int count;
    private double least;
    private double sum;
    private double greatest;

    Tally(Stretch stretch, int most) {
        this.stretch = stretch;
        this.most = most;
    }

    /**
     * Adds values of one time or one shorter stretch.
     *
     * @return whether there is room for another
     */
    boolean add(long atMs, int count, double least, double sum, double greatest) {
        long begins = stretch.floor(atMs);
        if (this.count > 0 && begins == from) {
            this.count += count;
            this.least = Math.min(this.least, least);
            this.sum += sum;
            this.greatest = Math.max(this.greatest, greatest);
            return true;
        }
        close();
        from = begins;
        this.count = count;
        this.least = least;
        this.sum = sum;
        this.greatest = greatest;
        return !isOverfull();
    }

    /** Whether there are more stretches than were asked for; some may be missing then. */
    boolean isOverfull() {
        return bins.size() + (count > 0 ? 1 : 0) > most;
    }

    List<Bin> bins() {
        close();
        return bins;
    }

    private void close() {
        if (count > 0) {
            bins.add(new Bin(Instant.ofEpochMilli(from), count, least, sum / count, greatest));
            count = 0;
        }
    }
}
