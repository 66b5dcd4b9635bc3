package org.tidewright.husbandry.arrival;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * How fast a display may be stocked: bacteria follow a load, they do not wait for it. What goes in on one day is one
 * addition.
 *
 * @param present live mass that lives in the display on the first day of the plan
 * @param share of the live mass in the display that an addition may have at most; what was added before counts with what it
 *     weighed on the day it came
 * @param spare live mass that any addition may have, whoever lives there: what the filter can carry beyond its load, and so
 *     the limit of the first addition to an empty display
 * @param daysBetween least days from one addition to the next
 * @param lastAddition before the plan; null if there was none, or long ago
 * @param budget for what comes in a calendar month, in the currency's smallest coin; null where money does not matter. What
 *     is left of a month is not carried over
 */
public record Pace(
        @Unit("kg") double present,
        @Unit("1") double share,
        @Unit("kg") double spare,
        int daysBetween,
        @Nullable LocalDate lastAddition,
        @Nullable Long budget) {
    /** Refuses what cannot be meant. */
    public Pace {
        Bounds.within(present, "kg", 0, 10_000, "live mass in the display", "is it in grams?");
        Bounds.within(share, "1", 0, 10, "share of an addition", "is it in percent?");
        Bounds.within(spare, "kg", 0, 1000, "mass any addition may have", "is it in grams?");
        Bounds.within(daysBetween, "d", 1, 365, "days between additions");
        if (budget != null) {
            Bounds.within(budget, "coins", 0, 1e9, "budget of a month");
        }
    }
}
