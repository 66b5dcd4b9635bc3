package org.tidewright.husbandry.nutrient;

import org.tidewright.husbandry.advice.Sentence;

/**
 * Something the page lets a keeper move, in the unit it is shown in.
 *
 * @param key its name in addresses, its unit at the end
 * @param lever name of the twin's lever behind it
 * @param words what it is
 * @param about what the plan does, in words; may be empty
 * @param symbol of the unit
 * @param perUnit the lever's value in one shown unit
 * @param least the lowest it goes
 * @param most the highest it goes
 * @param step of the slider
 * @param planned what the plan does
 */
public record Handle(
        String key,
        String lever,
        String words,
        Sentence about,
        String symbol,
        double perUnit,
        double least,
        double most,
        double step,
        double planned) {
    private static final double HALF_A_THOUSANDTH = 5.01e-4;

    /** Whether a value moves it away from the plan by more than a field, which shows thousandths, rounds. */
    public boolean isMoved(double value) {
        return Math.abs(value - planned) > Math.max(HALF_A_THOUSANDTH, 1e-4 * Math.abs(planned));
    }
}
