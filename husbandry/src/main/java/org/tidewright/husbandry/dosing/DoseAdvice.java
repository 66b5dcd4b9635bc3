package org.tidewright.husbandry.dosing;

import org.tidewright.seawater.unit.Unit;

/** What to do about a dose. Doses are in the quantity's unit a day. */
public sealed interface DoseAdvice {
    /**
     * Leave it: the level stays in its range until the next test with a good chance.
     *
     * @param chance of being outside then
     */
    record Leave(@Unit("1") double chance) implements DoseAdvice {}

    /**
     * Leave it: it was moved, and what that did cannot be told from noise yet.
     *
     * @param chance of being outside at the next test
     */
    record Settle(Settling settling, @Unit("1") double chance) implements DoseAdvice {}

    /**
     * Move it.
     *
     * @param dose to set, of what can be moved
     * @param chance of being outside at the next test if it is left
     */
    record Move(@Unit("*") double dose, @Unit("1") double chance) implements DoseAdvice {}

    /**
     * Bring the level back first: it is likely outside its range.
     *
     * @param lift in all, negative where it is to fall
     * @param days over which to spread it, no day with more than the safe rate
     * @param dose to set beside it, of what can be moved
     * @param chance that it is outside now
     */
    record Correct(
            @Unit("*") double lift,
            int days,
            @Unit("*") double dose,
            @Unit("1") double chance) implements DoseAdvice {}
}
