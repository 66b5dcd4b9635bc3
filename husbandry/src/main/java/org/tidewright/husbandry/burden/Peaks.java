package org.tidewright.husbandry.burden;

import java.util.EnumSet;
import java.util.Set;
import org.tidewright.husbandry.newtank.Stocking;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.forecast.Course;
import org.tidewright.twin.forecast.Quantity;

/** The highest ammonia and nitrite of the three weeks after a day, as nitrogen. */
record Peaks(
        @Unit("mg/L") double ammonia,
        @Unit("mg/L") double freeAmmonia,
        @Unit("mg/L") double nitrite) {
    static final Set<Quantity> TOLD = EnumSet.of(Quantity.AMMONIA, Quantity.FREE_AMMONIA, Quantity.NITRITE);

    static final int DAYS = 21;

    private static final double DAY = 86_400;

    static Peaks of(Course course, int day) {
        return new Peaks(
                highest(course, Quantity.AMMONIA, day),
                highest(course, Quantity.FREE_AMMONIA, day),
                highest(course, Quantity.NITRITE, day));
    }

    private static double highest(Course course, Quantity quantity, int day) {
        double[] values = course.of(quantity);
        double highest = 0;
        for (int i = 0; i < values.length; i++) {
            double at = course.time()[i] / DAY;
            highest = at >= day && at <= day + DAYS ? Math.max(highest, values[i]) : highest;
        }
        return highest;
    }

    /** Whether no animal has to mind: the bounds are those of a new tank. */
    boolean isCalm() {
        return freeAmmonia < Stocking.WATCH && nitrite < Stocking.NITRITE_WATCH;
    }
}
