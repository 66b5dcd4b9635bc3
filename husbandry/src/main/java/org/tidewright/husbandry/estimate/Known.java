package org.tidewright.husbandry.estimate;

import org.tidewright.numerics.sample.StandardNormal;
import org.tidewright.seawater.unit.Unit;

/** A number as far as it is known: normally distributed. */
public record Known(@Unit("*") double value, @Unit("*") double standardError) {
    public Known {
        if (!Double.isFinite(value) || !(standardError >= 0)) {
            throw new IllegalArgumentException(
                    value + " ± " + standardError + " is not knowledge; it needs a number and an error of 0 or more");
        }
    }

    /** Known as well, and so much more. */
    public Known plus(@Unit("*") double more) {
        return new Known(value + more, standardError);
    }

    /** The number it lies below with a probability, as far as is known. */
    public @Unit("*") double quantile(@Unit("1") double probability) {
        return value + standardError * StandardNormal.quantile(probability);
    }

    /** Probability that it lies below a bound. */
    public @Unit("1") double chanceBelow(@Unit("*") double bound) {
        return standardError > 0 ? StandardNormal.cumulative((bound - value) / standardError) : value < bound ? 1 : 0;
    }

    /** Whether another number lies within the middle of it, of a probability: 0.9 for the 90 % interval. */
    public boolean holds(@Unit("*") double number, @Unit("1") double probability) {
        double tail = (1 - probability) / 2;
        return number >= quantile(tail) && number <= quantile(1 - tail);
    }
}
