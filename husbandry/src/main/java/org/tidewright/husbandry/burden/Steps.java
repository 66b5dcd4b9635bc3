package org.tidewright.husbandry.burden;

import java.util.concurrent.atomic.AtomicInteger;
import org.tidewright.twin.ensemble.Ensemble;

/** Several ensembles watched as one. */
final class Steps implements Ensemble.Progress {
    private final Ensemble.Progress watched;
    private final int all;
    private final AtomicInteger done = new AtomicInteger();

    Steps(Ensemble.Progress watched, int all) {
        this.watched = watched;
        this.all = all;
    }

    @Override
    public void done(int draws, int ofAll) {
        watched.done(done.incrementAndGet(), all);
    }

    @Override
    public boolean isCancelled() {
        return watched.isCancelled();
    }
}
