package org.tidewright.husbandry.reef;

import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.seawater.unit.Unit;

/**
 * A number that cannot be negative, known within a factor.
 *
 * @param value the middle
 * @param logError one standard error of its natural logarithm: 0.1 is about a tenth
 */
public record PointValue(@Unit("*") double value, @Unit("1") double logError) {
    private static final double NINETY_PER_CENT = 1.645;

    /** Of 100 such numbers 5 lie below. */
    public @Unit("*") double low() {
        return value * Math.exp(-NINETY_PER_CENT * logError);
    }

    /** Of 100 such numbers 5 lie above. */
    public @Unit("*") double high() {
        return value * Math.exp(NINETY_PER_CENT * logError);
    }

    /** One standard error, right for small ones. */
    public @Unit("*") double standardError() {
        return value * logError;
    }

    public Figure figure(Measure measure) {
        return Figure.between(measure, value, low(), high());
    }
}
