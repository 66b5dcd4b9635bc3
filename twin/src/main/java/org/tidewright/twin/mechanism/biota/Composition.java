package org.tidewright.twin.mechanism.biota;

import org.tidewright.seawater.unit.Unit;

/**
 * What living matter is made of.
 *
 * @param carbon per nitrogen
 * @param phosphorus per nitrogen
 */
public record Composition(
        @Unit("1") double carbon, @Unit("1") double phosphorus) {}
