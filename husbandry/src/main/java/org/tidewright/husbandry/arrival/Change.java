package org.tidewright.husbandry.arrival;

import java.time.LocalDate;
import org.tidewright.seawater.unit.Unit;

/** What is other than it was planned. */
public sealed interface Change {
    /** A wish died, or is given up: it is off the list, and a quarantine tank that it had for itself is empty. */
    record Gone(String id, LocalDate day) implements Change {}

    /** Animals of a wish died, or others came than were wished. */
    record Animals(String id, int count, @Unit("kg") double load) implements Change {}

    /** A wish can be had only from another day. */
    record Delayed(String id, NotBefore fromShop) implements Change {}

    /** A wish must stay in quarantine for another number of days in all, as after signs of illness. */
    record Quarantine(String id, int days) implements Change {}

    /** One more wish. */
    record Added(Wish wish) implements Change {}

    /** The pace is another. Its present mass is that on the day of planning anew, with all that has gone in by then. */
    record NewPace(Pace pace) implements Change {}
}
