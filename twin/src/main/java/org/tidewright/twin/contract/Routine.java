package org.tidewright.twin.contract;

import org.tidewright.seawater.unit.Unit;

/**
 * Something that happens at known times: a light goes on, a meal, a dose, a water change.
 *
 * @param name as the log and the accounts of a run tell it
 * @param next when it happens next
 * @param deed what happens
 */
public record Routine(String name, Next next, Watch.Deed deed) {
    /** The times of a routine. */
    @FunctionalInterface
    public interface Next {
        /**
         * The first time after another, infinite when there is none. It may follow from settings; it is asked anew
         * whenever one changes.
         */
        @Unit("s")
        double after(@Unit("s") double time, View now);
    }

    /** A time of the day, every so many days. */
    public static Next daily(@Unit("s") double timeOfDay, int everyDays) {
        double period = everyDays * 86_400.0;
        return (time, now) -> {
            double periods = Math.floor((time - timeOfDay) / period) + 1;
            double next = periods * period + timeOfDay;
            return next > time ? next : next + period;
        };
    }
}
