package org.tidewright.husbandry.spreadsheet;

import java.util.List;
import java.util.Map;
import org.tidewright.husbandry.journal.Draft;
import org.tidewright.husbandry.journal.ProbeLog.Probe;
import org.tidewright.husbandry.journal.ProbeLog.Value;
import org.tidewright.plan.fault.Fault;

/** What came of taking a sheet in. */
public sealed interface Taking {
    /**
     * All of it, ready to be kept.
     *
     * @param drafts readings, and the keeper's words of rows without any, in the order of the sheet
     * @param values of probes, in the order of the sheet
     * @param leftOut the first cells that were passed over, because the mapping says so
     * @param leftOutCount of all of them
     */
    record Taken(List<Draft> drafts, Map<Probe, List<Value>> values, List<Fault> leftOut, int leftOutCount)
            implements Taking {}

    /**
     * Nothing.
     *
     * @param questions what the keeper still has to say
     * @param bad the first cells and rows that cannot be taken
     * @param badCount of all of them
     */
    record Refused(List<String> questions, List<Fault> bad, int badCount) implements Taking {}
}
