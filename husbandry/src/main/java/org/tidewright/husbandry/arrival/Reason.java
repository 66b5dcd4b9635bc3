package org.tidewright.husbandry.arrival;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tidewright.seawater.unit.Unit;

/** Why a wish does not come earlier, or not at all. */
public sealed interface Reason {
    /**
     * Its quarantine tank is taken.
     *
     * @param by the wish that is in it; null where it is not free for another reason
     * @param until the day it is empty
     */
    record TankTaken(String tank, @Nullable String by, LocalDate until) implements Reason {}

    /** Its quarantine tank stands dry until a day. */
    record Dry(String tank, LocalDate until) implements Reason {}

    /**
     * It would be too near to another addition to the display.
     *
     * @param day of that addition
     * @param ids what goes in on that day; empty where that was before this plan
     * @param room live mass which that addition could still have: where it is less than that of the wish, the display would
     *     not have taken it on that day either
     */
    record Paced(
            LocalDate day, List<String> ids, @Unit("kg") double room) implements Reason {
        /** Keeps a list of its own. */
        public Paced {
            ids = List.copyOf(ids);
        }
    }

    /** The money of a month is spent, or never enough for it. */
    record Budget(YearMonth month) implements Reason {}

    /**
     * It comes so many days after another.
     *
     * @param day on which the other goes into the display; null where it does not, and so neither can this one
     */
    record ComesAfter(String id, @Nullable LocalDate day, int days) implements Reason {}

    /** Of two that trouble each other the timid one is first; {@code id} is the other. */
    record TimidFirst(String id) implements Reason {}

    /** Of predator and prey the prey is first; {@code id} is the other. */
    record Prey(String id) implements Reason {}

    /**
     * It cannot come, or go into the display, before a day.
     *
     * @param words why
     */
    record Earliest(LocalDate day, String words) implements Reason {}

    /** It shares its quarantine with another, which waits for this. */
    record Shared(String with, Reason why) implements Reason {}

    /** It shares its quarantine with another that has to stay longer. */
    record LongerStay(String with) implements Reason {}

    /** No quarantine tank carries so much. */
    record NoTank(@Unit("kg") double load) implements Reason {}

    /**
     * It is more than the display takes at once, even after all others.
     *
     * @param room live mass which it would take
     */
    record TooMuch(@Unit("kg") double room) implements Reason {}

    /**
     * It would be too late.
     *
     * @param day on which it could go into the display after all others
     */
    record TooLate(LocalDate day) implements Reason {}
}
