package org.tidewright.husbandry.burden;

import java.util.EnumSet;
import java.util.Set;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.forecast.Course;
import org.tidewright.twin.forecast.Quantity;

/**
 * What twelve weeks do.
 *
 * @param nitrate mean of the last week
 * @param phosphate likewise
 * @param oxygen lowest of the seventh day
 * @param saturation likewise
 */
record Weeks(
        @Unit("mg/L") double nitrate,
        @Unit("mg/L") double phosphate,
        @Unit("mg/L") double oxygen,
        @Unit("%") double saturation) {
    static final Set<Quantity> TOLD =
            EnumSet.of(Quantity.NITRATE, Quantity.PHOSPHATE, Quantity.OXYGEN, Quantity.OXYGEN_SATURATION);

    static final int DAYS = 84;
    private static final int WEEK = 7;
    private static final double DAY = 86_400;

    static Weeks of(Course course) {
        return new Weeks(
                mean(course, Quantity.NITRATE),
                mean(course, Quantity.PHOSPHATE),
                lowest(course, Quantity.OXYGEN),
                lowest(course, Quantity.OXYGEN_SATURATION));
    }

    private static double lowest(Course course, Quantity quantity) {
        double[] values = course.of(quantity);
        double lowest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < values.length; i++) {
            double at = course.time()[i] / DAY;
            lowest = at >= WEEK - 1 && at <= WEEK ? Math.min(lowest, values[i]) : lowest;
        }
        return lowest;
    }

    private static double mean(Course course, Quantity quantity) {
        double[] values = course.of(quantity);
        double end = course.time()[values.length - 1];
        double sum = 0;
        int count = 0;
        for (int i = values.length - 1; i >= 0 && course.time()[i] > end - WEEK * DAY; i--) {
            sum += values[i];
            count++;
        }
        return sum / count;
    }
}
