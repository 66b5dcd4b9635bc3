package org.tidewright.husbandry.dosing;

import java.time.Instant;
import org.tidewright.seawater.unit.Unit;

/**
 * A lever was moved and its effect cannot be told from noise yet.
 *
 * @param lever that was moved
 * @param moved when
 * @param change it makes, in the quantity's unit a day
 * @param until when the effect is told at the present pace of tests, or when waiting longer tells no more
 * @param told whether the effect is told by then; if not, it is smaller than these tests can ever show
 * @param daily when it would be told, or waiting would tell no more, with a test a day from now on
 */
public record Settling(
        String lever, Instant moved, @Unit("*") double change, Instant until, boolean told, Instant daily) {}
