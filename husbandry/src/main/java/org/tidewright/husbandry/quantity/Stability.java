package org.tidewright.husbandry.quantity;

import org.tidewright.husbandry.estimate.Known;
import org.tidewright.seawater.unit.Unit;

/**
 * How steady a quantity was over the last days.
 *
 * <pre>
 * in range  = mean of P(level within its range) over the days
 * variation = sqrt(variance of the levels over the days + mean of the variance with which each is known)
 * </pre>
 *
 * @param days looked back
 * @param inRange share of the time within the range; its error takes days within a week to go together
 * @param variation standard deviation of the level
 */
public record Stability(int days, Known inRange, @Unit("*") double variation) {
    /** Days that go together: keepers test once or twice a week, and what is not known of one day is not known of the next. */
    private static final double TOGETHER = 7;

    /**
     * From the levels of some days.
     *
     * @param levels as many of each day
     */
    static Stability of(int days, Known[] levels, @Unit("*") double least, @Unit("*") double most) {
        double within = 0;
        double doubt = 0;
        double sum = 0;
        double squares = 0;
        double unknown = 0;
        for (Known level : levels) {
            double chance = level.chanceBelow(most) - level.chanceBelow(least);
            within += chance;
            doubt += chance * (1 - chance);
            sum += level.value();
            squares += level.value() * level.value();
            unknown += level.standardError() * level.standardError();
        }
        double count = levels.length;
        double mean = sum / count;
        double spread = Math.max(0, squares / count - mean * mean);
        return new Stability(
                days,
                new Known(within / count, Math.sqrt(doubt / count * TOGETHER / days)),
                Math.sqrt(spread + unknown / count));
    }
}
