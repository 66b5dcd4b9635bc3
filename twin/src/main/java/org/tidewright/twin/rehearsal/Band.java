package org.tidewright.twin.rehearsal;

import org.tidewright.seawater.unit.Unit;

/** A quantity along time over many draws: the 5th, 50th and 95th of 100 at each moment, in the quantity's own unit. */
public record Band(
        @Unit("*") double[] low,
        @Unit("*") double[] middle,
        @Unit("*") double[] high) {}
