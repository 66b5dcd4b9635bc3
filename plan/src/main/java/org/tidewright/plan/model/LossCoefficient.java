package org.tidewright.plan.model;

import org.tidewright.seawater.unit.Unit;

/**
 * Loss coefficient K of a piece in a pipe: head lost = K v^2 / (2g), v in the pipe of the same bore, turbulent flow.
 * Below a Reynolds number of about 10 000 every K is larger.
 *
 * @param usual to take when nothing better is known
 * @param least that published methods give
 * @param most that published methods give
 */
public record LossCoefficient(
        @Unit("1") double usual,
        @Unit("1") double least,
        @Unit("1") double most) {
    /** Where the numbers of this catalogue come from, for showing beside them. */
    public static final String SOURCE = "from memory, handbook range";
}
