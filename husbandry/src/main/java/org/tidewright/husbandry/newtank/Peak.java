package org.tidewright.husbandry.newtank;

import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.forecast.Course;
import org.tidewright.twin.forecast.Quantity;

/**
 * The highest of a quantity.
 *
 * @param value in the quantity's unit
 * @param day since the course's start
 */
public record Peak(@Unit("*") double value, @Unit("d") double day) {
    private static final double DAY = 86_400;

    static Peak of(Course course, Quantity quantity) {
        double[] values = course.of(quantity);
        int highest = 0;
        for (int i = 1; i < values.length; i++) {
            highest = values[i] > values[highest] ? i : highest;
        }
        return new Peak(values[highest], course.time()[highest] / DAY);
    }

    /** First day after its peak on which a quantity is below a bound; infinite for none. */
    static @Unit("d") double fallsBelow(Course course, Quantity quantity, @Unit("*") double bound) {
        double[] values = course.of(quantity);
        Peak peak = of(course, quantity);
        for (int i = 0; i < values.length; i++) {
            double day = course.time()[i] / DAY;
            if (day >= peak.day() && values[i] < bound) {
                return day;
            }
        }
        return Double.POSITIVE_INFINITY;
    }
}
