package org.tidewright.plan.text;

import java.util.List;
import org.tidewright.plan.fault.Fault;
import org.tidewright.plan.model.Plan;

/** What came of reading a plan. */
public sealed interface PlanReading {
    /** The plan is sound. */
    record Sound(PlanDocument document) implements PlanReading {
        public Plan plan() {
            return document.plan();
        }
    }

    /** The plan has faults, all of them listed in the order of the file. */
    record Faulty(List<Fault> faults) implements PlanReading {
        public Faulty {
            faults = List.copyOf(faults);
        }
    }
}
