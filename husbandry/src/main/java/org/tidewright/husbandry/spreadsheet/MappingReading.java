package org.tidewright.husbandry.spreadsheet;

import java.util.List;
import org.tidewright.plan.fault.Fault;

/** What a mapping's text was read as. */
public sealed interface MappingReading {
    /** A mapping, perhaps with open questions. */
    record Read(Mapping mapping) implements MappingReading {}

    /** What is wrong with the text, by line. */
    record Faulty(List<Fault> faults) implements MappingReading {}
}
