package org.tidewright.husbandry.exchange;

import java.util.List;
import org.tidewright.plan.fault.Fault;

/** What became of reading a copy back. */
public sealed interface Restoring {
    /**
     * All of it is kept.
     *
     * @param system the name the copy gives the system
     * @param lines revisions in the copy
     * @param newLines those of them that were not here yet
     * @param probeValues values of probes in the copy
     * @param photos pictures in the copy
     */
    record Done(String system, int lines, int newLines, long probeValues, int photos) implements Restoring {}

    /**
     * Nothing was kept.
     *
     * @param faults the first of what is wrong, as they stand in the copy
     * @param count of all that is wrong
     */
    record Faulty(List<Fault> faults, int count) implements Restoring {}
}
