package org.tidewright.husbandry.exchange;

import java.time.Instant;
import java.util.List;
import java.util.function.Consumer;
import org.tidewright.husbandry.journal.ProbeLog;
import org.tidewright.husbandry.journal.ProbeLog.Bin;
import org.tidewright.husbandry.journal.ProbeLog.Probe;
import org.tidewright.husbandry.journal.ProbeLog.Value;
import org.tidewright.husbandry.journal.Span;

/** All values of a probe in their order, a part at a time, so that years of minutes pass through little memory. */
final class ProbeBlocks {
    /** A century of days. */
    private static final int BINS = 40_000;

    private ProbeBlocks() {}

    static void each(KeptSystem from, Probe probe, Consumer<List<Value>> block) {
        ProbeLog log = from.probes();
        Instant start = Span.EVER.from();
        int count = 0;
        for (Bin bin : log.bins(from.name(), probe, Span.EVER, BINS)) {
            if (count > 0 && count + bin.count() > CopyReader.BLOCK) {
                block.accept(log.values(from.name(), probe, new Span(start, bin.from())));
                start = bin.from();
                count = 0;
            }
            count += bin.count();
        }
        block.accept(log.values(from.name(), probe, new Span(start, Span.EVER.to())));
    }
}
