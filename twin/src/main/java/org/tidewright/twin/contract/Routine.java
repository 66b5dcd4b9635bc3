package org.tidewright.twin.contract;

import org.tidewright.seawater.unit.Unit;

/**
 * Something that happens at known times: a light goes on, a meal, a dose, a water change.
 *
 * @param name as the log and the accounts of a run tell it
 * @param next when it happens next
 * @param deed what happens
 * @param logged whether the log of a run tells it
 * @param bend whether it only marks where a rate bends without a jump: an error far below what a coarse run is asked for, so
 *     that only close runs stop there
 */
public record Routine(String name, Next next, Watch.Deed deed, boolean logged, boolean bend) {
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

    /** A routine the log tells. */
    public Routine(String name, Next next, Watch.Deed deed) {
        this(name, next, deed, true);
    }

    public Routine(String name, Next next, Watch.Deed deed, boolean logged) {
        this(name, next, deed, logged, false);
    }

    /** Times at which a rate jumps, so that no step leads across; nothing else happens there. */
    public static Routine quiet(String name, Next next) {
        return new Routine(name, next, (now, switches) -> {}, false);
    }

    /** Times at which a rate bends; nothing else happens there. */
    public static Routine bend(String name, Next next) {
        return new Routine(name, next, (now, switches) -> {}, false, true);
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
