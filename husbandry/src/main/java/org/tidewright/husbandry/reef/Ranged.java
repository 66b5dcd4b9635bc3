package org.tidewright.husbandry.reef;

import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * A number with the ends between which it probably lies, 90 times of 100 where its source says no better.
 *
 * @param value the usual
 */
public record Ranged(
        @Unit("*") double value,
        @Unit("*") double low,
        @Unit("*") double high) {
    public Ranged {
        Bounds.finite(value, "*", "a number");
        if (!(low <= value && value <= high)) {
            throw new IllegalArgumentException(value + " does not lie between " + low + " and " + high);
        }
    }

    public static Ranged exactly(@Unit("*") double value) {
        return new Ranged(value, value, value);
    }

    /** Between two ends, with their middle as the usual. */
    public static Ranged between(@Unit("*") double low, @Unit("*") double high) {
        return new Ranged((low + high) / 2, low, high);
    }

    public Ranged times(@Unit("*") double factor) {
        return new Ranged(factor * value, factor * low, factor * high);
    }

    public Figure figure(Measure measure) {
        return low == high ? Figure.exact(measure, value) : Figure.between(measure, value, low, high);
    }
}
