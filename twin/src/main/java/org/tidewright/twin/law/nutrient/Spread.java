package org.tidewright.twin.law.nutrient;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * What is known of a constant: its usual value between the ends that one system in twenty lies below and one in twenty
 * above. All three in the unit written at the constant.
 */
public record Spread(
        @Unit("*") double low,
        @Unit("*") double usual,
        @Unit("*") double high) {
    private static final double DAY = 86_400;

    public Spread {
        Bounds.notNegative(low, "*", "low end");
        if (!(low <= usual && usual <= high && high < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "low " + low + ", usual " + usual + " and high " + high + " do not follow in order");
        }
    }

    /**
     * From numbers in another unit.
     *
     * @param low low end, in the other unit
     * @param usual in the other unit
     * @param high high end, in the other unit
     * @param factor what one of the other unit is
     * @source definition
     */
    public static Spread of(
            @Unit("*") double low, @Unit("*") double usual, @Unit("*") double high, @Unit("*") double factor) {
        return new Spread(low, usual, high).times(factor);
    }

    /** From numbers per day to the same per second. */
    static Spread perDay(double low, double usual, double high) {
        return new Spread(low, usual, high).times(1 / DAY);
    }

    /** The same constant in another unit. */
    public Spread times(@Unit("*") double factor) {
        return new Spread(low * factor, usual * factor, high * factor);
    }

    /** The product with another that is known independently of this one, both taken as log-normal on each side. */
    public Spread times(Spread other) {
        double middle = usual * other.usual;
        return new Spread(
                middle * Math.exp(-Math.hypot(Math.log(usual / low), Math.log(other.usual / other.low))),
                middle,
                middle * Math.exp(Math.hypot(Math.log(high / usual), Math.log(other.high / other.usual))));
    }
}
