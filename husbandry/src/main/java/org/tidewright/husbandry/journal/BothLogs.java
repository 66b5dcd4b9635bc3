package org.tidewright.husbandry.journal;

import java.util.List;
import java.util.Map;
import java.util.function.IntConsumer;
import org.tidewright.husbandry.journal.ProbeLog.Probe;
import org.tidewright.husbandry.journal.ProbeLog.Value;

/** The journal and the probes' log where something goes into both at once: a spreadsheet is taken in whole or not at all. */
public interface BothLogs {
    /**
     * Keeps all lines and all values, or nothing. Lines already kept under their ids are passed over; of a time at which a
     * probe has a value already, the later one stands.
     *
     * @param progress told now and then how many lines are done
     * @return how many lines were new
     */
    int writeAll(String system, List<Draft> drafts, Map<Probe, List<Value>> values, IntConsumer progress);
}
