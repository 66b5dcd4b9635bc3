package org.tidewright.twin.contract;

import org.tidewright.seawater.unit.Unit;

/**
 * A crossing the stepper lands on, and what happens there.
 *
 * @param name of the event, as the log of a run tells it
 * @param crossing which change of sign counts
 * @param distance positive on one side, negative on the other
 * @param deed what is switched when it happens
 * @param once whether only the first time counts
 */
public record Watch(String name, Crossing crossing, Distance distance, Deed deed, boolean once) {
    /** Which change of sign counts. */
    public enum Crossing {
        RISING,
        FALLING
    }

    /** How far the state is from the event. */
    @FunctionalInterface
    public interface Distance {
        @Unit("*")
        double of(View now);
    }

    /** What an event switches. */
    @FunctionalInterface
    public interface Deed {
        void happen(View now, Switchboard switches);
    }

    /** Where an event changes settings. */
    public interface Switchboard {
        /** Moves amounts at once, each before the next is read. */
        Transfers atOnce();

        void set(Setting setting, @Unit("*") double value);

        /** Changes a setting later; replaces an earlier order for the same setting. */
        void setAt(@Unit("s") double time, Setting setting, @Unit("*") double value);
    }

    /** An event that switches something each time it happens. */
    public Watch(String name, Crossing crossing, Distance distance, Deed deed) {
        this(name, crossing, distance, deed, false);
    }

    /** An event of which only the first time is noted. */
    public static Watch noting(String name, Crossing crossing, Distance distance) {
        return new Watch(name, crossing, distance, (now, switches) -> {}, true);
    }
}
