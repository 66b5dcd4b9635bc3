package org.tidewright.husbandry.quantity;

import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.estimate.Known;
import org.tidewright.seawater.unit.Unit;

/**
 * What a dose would lead to.
 *
 * @param words {@code keep}, {@code raise to}
 * @param dose a day
 * @param level when the time is up
 * @param inRange chance that it is within its range then
 */
public record Fork(
        String words, Figure dose, Known level, @Unit("1") double inRange) {}
