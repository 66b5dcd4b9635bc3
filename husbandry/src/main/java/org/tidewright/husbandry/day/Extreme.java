package org.tidewright.husbandry.day;

import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.forecast.Course;
import org.tidewright.twin.forecast.Quantity;

/**
 * Lowest, highest and mean of a quantity over a day.
 *
 * @param lowAt since midnight
 * @param highAt since midnight
 */
public record Extreme(
        @Unit("*") double low,
        @Unit("s") double lowAt,
        @Unit("*") double high,
        @Unit("s") double highAt,
        @Unit("*") double mean) {
    static Extreme of(Course course, Quantity quantity) {
        double[] values = course.of(quantity);
        int low = 0;
        int high = 0;
        double sum = 0;
        for (int i = 0; i < values.length; i++) {
            low = values[i] < values[low] ? i : low;
            high = values[i] > values[high] ? i : high;
            sum += values[i];
        }
        return new Extreme(values[low], course.time()[low], values[high], course.time()[high], sum / values.length);
    }

    /** From lowest to highest. */
    public @Unit("*") double swing() {
        return high - low;
    }
}
