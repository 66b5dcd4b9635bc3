package org.tidewright.husbandry.quantity;

import java.util.Arrays;
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
 * @param probed whether a probe told it, hour for hour, and not the estimate of each day
 */
public record Stability(int days, Known inRange, @Unit("*") double variation, boolean probed) {
    /** Days that go together: keepers test once or twice a week, and what is not known of one day is not known of the next. */
    private static final double TOGETHER = 7;

    /** Ways in which a probe may be off, evenly likely, over which a share is averaged. */
    private static final int BIASES = 41;

    /**
     * From what a probe showed each hour.
     *
     * <pre>
     * in range  = mean over all the probe may be off by of the share of hours with (shown - off) within the range
     * its error = standard deviation of that share over the same
     * variation = standard deviation of the hours
     * </pre>
     *
     * @param shown mean of each hour
     * @param off by how much all of them are too high
     */
    static Stability ofProbe(double[] shown, Known off, int days, @Unit("*") double least, @Unit("*") double most) {
        double sum = 0;
        double squares = 0;
        for (int i = 0; i < BIASES; i++) {
            double by = off.standardError() > 0 ? off.quantile((i + 0.5) / BIASES) : off.value();
            double share = Arrays.stream(shown)
                            .filter(value -> value - by >= least && value - by <= most)
                            .count()
                    / (double) shown.length;
            sum += share;
            squares += share * share;
        }
        double inRange = sum / BIASES;
        double mean = Arrays.stream(shown).average().orElseThrow();
        double variance = Arrays.stream(shown)
                .map(value -> (value - mean) * (value - mean))
                .average()
                .orElseThrow();
        return new Stability(
                days,
                new Known(inRange, Math.sqrt(Math.max(0, squares / BIASES - inRange * inRange))),
                Math.sqrt(variance),
                true);
    }

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
                Math.sqrt(spread + unknown / count),
                false);
    }
}
