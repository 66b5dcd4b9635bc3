package org.tidewright.twin.contract;

import org.tidewright.seawater.unit.Unit;

/**
 * What an event, a schedule or a failure may switch while the twin runs: 1 for on, 0 for off, between for a speed.
 *
 * @param index position among the network's settings
 */
public record Setting(int index, String name, @Unit("*") double initial) {}
