package org.tidewright.app.cli;

import java.io.PrintWriter;
import org.tidewright.twin.ensemble.Ensemble;

/** Says every few seconds how far an ensemble has come, and nothing where it is done before. */
final class SlowProgress implements Ensemble.Progress {
    private static final long EVERY = 5_000_000_000L;

    private final PrintWriter out;
    private long told = System.nanoTime();

    SlowProgress(PrintWriter out) {
        this.out = out;
    }

    @Override
    public synchronized void done(int draws, int ofAll) {
        long now = System.nanoTime();
        if (now - told >= EVERY && draws < ofAll) {
            told = now;
            out.println(draws + " of " + ofAll + " draws …");
            out.flush();
        }
    }

    @Override
    public boolean isCancelled() {
        return false;
    }
}
