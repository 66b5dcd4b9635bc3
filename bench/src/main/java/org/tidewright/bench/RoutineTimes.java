package org.tidewright.bench;

import java.util.ArrayList;
import java.util.List;
import org.tidewright.twin.contract.Routine;
import org.tidewright.twin.contract.View;

/** The times of a routine as a few that come again. */
final class RoutineTimes {
    private static final double DAY = 86_400;

    /** Whole weeks and fortnights and six weeks, twice over. */
    private static final double LOOKED_AHEAD = 84 * DAY;

    private static final double NEVER = 1e15;
    private static final double ROUNDING = 1e-6;

    private RoutineTimes() {}

    /**
     * One of a routine's times.
     *
     * @param first after time zero
     * @param period after which it comes again; infinite for never
     */
    record Time(double first, double period) {}

    static List<Time> of(Routine routine, View start) {
        List<Double> times = new ArrayList<>();
        double time = routine.next().after(0, start);
        while (time <= LOOKED_AHEAD) {
            times.add(time);
            time = routine.next().after(time, start);
        }
        if (times.isEmpty()) {
            if (time > NEVER) {
                return List.of();
            }
            throw new IllegalArgumentException(routine.name() + " comes too seldom to be told by a period");
        }
        times.add(time);
        for (int inPeriod = 1; 2 * inPeriod <= times.size(); inPeriod++) {
            double period = times.get(inPeriod) - times.get(0);
            if (comesAgain(times, inPeriod, period)) {
                return times.subList(0, inPeriod).stream()
                        .map(first -> new Time(first, period))
                        .toList();
            }
        }
        throw new IllegalArgumentException(routine.name() + " does not come again after a period");
    }

    private static boolean comesAgain(List<Double> times, int inPeriod, double period) {
        for (int i = 0; i + inPeriod < times.size(); i++) {
            if (Math.abs(times.get(i + inPeriod) - times.get(i) - period) > ROUNDING) {
                return false;
            }
        }
        return true;
    }
}
