package org.tidewright.husbandry.burden;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.forecast.Change;
import org.tidewright.twin.forecast.Course;
import org.tidewright.twin.forecast.Forecast;
import org.tidewright.twin.forecast.Quantity;
import org.tidewright.twin.system.SystemTwin;

/**
 * One draw of a system to which animals come, on one day or another. Until then it runs by its own plan, from then on by the
 * plan with them in it.
 */
final class Arrivals {
    /** They come a second after midnight, when nothing else happens. */
    static final double AFTER_MIDNIGHT = 1;

    static final int SAMPLES_A_DAY = 24;
    private static final double DAY = 86_400;
    private static final int WEEK = 7;
    private static final int LAST_WEEK = Addition.LATEST / WEEK;
    private static final Set<Quantity> ALL = all();

    private final SystemTwin joined;
    private final double mass;
    private final List<Forecast> weeks = new ArrayList<>();

    /**
     * A draw.
     *
     * @param begun of the system as it is, just after the first midnight
     * @param joined its twin with the animals in it
     * @param mass of them
     */
    Arrivals(Forecast begun, SystemTwin joined, @Unit("kg") double mass) {
        this.joined = joined;
        this.mass = mass;
        weeks.add(begun);
    }

    private static Set<Quantity> all() {
        Set<Quantity> all = EnumSet.copyOf(Peaks.TOLD);
        all.addAll(Weeks.TOLD);
        return all;
    }

    /** Twelve weeks of a system to which nobody comes. */
    static Course without(Forecast begun) {
        return begun.courseAlone(Weeks.DAYS, Weeks.DAYS * SAMPLES_A_DAY + 1, ALL, List.of());
    }

    /** Twelve weeks of which they come on the first day. */
    Course today() {
        return course(0, Weeks.DAYS, ALL);
    }

    /** Whether they may come today and three weeks are lived through with the water calm. */
    boolean isCalmToday() {
        Course course = course(0, Peaks.DAYS, Peaks.TOLD);
        return course.brokenOff() == null && Peaks.of(course, 0).isCalm();
    }

    /** Three weeks from the day they come. */
    Peaks peaks(int day) {
        return Peaks.of(course(day, day + Peaks.DAYS, Peaks.TOLD), day);
    }

    private Course course(int day, int lastDay, Set<Quantity> quantities) {
        Forecast before = week(day / WEEK);
        Forecast eve = day % WEEK == 0 ? before : before.at(day * DAY + AFTER_MIDNIGHT, List.of());
        Change come = new Change(joined.levers().get("added fish"), mass, eve.begins(), Double.POSITIVE_INFINITY);
        int samples = (lastDay - day) * SAMPLES_A_DAY + 1;
        return eve.goingOnBy(joined).courseAlone(lastDay, samples, quantities, List.of(come));
    }

    private Forecast week(int number) {
        while (weeks.size() <= number) {
            Forecast last = weeks.get(weeks.size() - 1);
            weeks.add(last.at(weeks.size() * WEEK * DAY + AFTER_MIDNIGHT, List.of()));
        }
        return weeks.get(number);
    }

    /**
     * First of the days 7, 14 … on which they could come and the water stay calm, where it does not today; infinite for none.
     * The longer the bacteria have had, the lower the peak, so that halving finds it.
     */
    @Unit("d")
    double laterCalmDay() {
        int not = 0;
        int calm = LAST_WEEK;
        if (!peaks(calm * WEEK).isCalm()) {
            return Double.POSITIVE_INFINITY;
        }
        while (calm - not > 1) {
            int middle = (not + calm) / 2;
            if (peaks(middle * WEEK).isCalm()) {
                calm = middle;
            } else {
                not = middle;
            }
        }
        return calm * WEEK;
    }
}
