package org.tidewright.web.desk;

import java.util.List;
import org.tidewright.plan.fault.Fault;

/** What came of saving a plan. */
public sealed interface SaveResult {
    /** It is kept as this revision. */
    record Saved(int revision) implements SaveResult {}

    /** The text has faults; nothing was kept. */
    record Faulty(List<Fault> faults) implements SaveResult {}

    /**
     * Somebody saved in between; nothing was kept.
     *
     * @param revision the revision that stands now
     * @param text its text
     */
    record Conflict(int revision, String text) implements SaveResult {}
}
