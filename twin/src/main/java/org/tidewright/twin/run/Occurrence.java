package org.tidewright.twin.run;

import org.tidewright.seawater.unit.Unit;

/** Something a run's watches saw happen. */
public record Occurrence(@Unit("s") double time, String event) {}
