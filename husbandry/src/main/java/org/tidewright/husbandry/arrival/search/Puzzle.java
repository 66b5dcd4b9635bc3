package org.tidewright.husbandry.arrival.search;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What is to be scheduled. A batch comes as one, stays in one tank and goes into the display on one day; batches that share
 * a tank at one time share their whole stay. What goes into the display on one day is one addition.
 *
 * @param lastDay on which a batch may go into the display
 * @param gap least days from one addition to the next, at least 1
 * @param firstAddition earliest day of one
 * @param spare mass that any addition may have, however little lives in the display
 * @param welcome mass that what lives there at the start lets an addition have
 * @param batches in the order in which they should rather come
 * @param orders of two batches, where both are placed
 * @param apart pairs that must not share a stay
 * @param months all that begin by the last day, or none where money does not matter
 */
public record Puzzle(
        int lastDay,
        int gap,
        int firstAddition,
        int spare,
        int welcome,
        List<Batch> batches,
        List<Tank> tanks,
        List<Order> orders,
        List<Pair> apart,
        List<Month> months) {

    /**
     * What comes as one.
     *
     * @param mass in grains
     * @param welcome by how many grains a later addition may be larger for it
     * @param quarantine least days of its stay; none and it goes straight into the display
     * @param fromShop first day on which it can come
     * @param intoDisplay first day on which it may go into the display
     * @param price in the smallest coin
     * @param rank of those that rather come in order; equal where it is all the same
     * @param stay where it is since when, if it has come already
     */
    public record Batch(
            int mass,
            int welcome,
            int quarantine,
            int fromShop,
            int intoDisplay,
            int price,
            int rank,
            @Nullable Stay stay) {
        boolean straight() {
            return quarantine == 0 && stay == null;
        }
    }

    /** A batch in a tank since a day, before the first day as a rule. */
    public record Stay(int tank, int since) {}

    /**
     * A quarantine tank.
     *
     * @param room mass it can hold
     * @param places batches it can hold
     * @param free first day on which a stay may begin
     * @param dry days from the end of a stay to the next
     * @param watch least days of a stay
     */
    public record Tank(int room, int places, int free, int dry, int watch) {}

    /**
     * One batch goes into the display before another.
     *
     * @param lag least days between, at least 1
     * @param needed whether the second cannot be placed without the first
     */
    public record Order(int first, int second, int lag, boolean needed) {}

    /** Two batches. */
    public record Pair(int one, int other) {}

    /**
     * A month, or what of it is left.
     *
     * @param from its first day
     * @param budget what batches that come in it may cost
     */
    public record Month(int from, int budget) {}

    /** Least days of a batch in a tank. */
    int need(int batch, int tank) {
        return Math.max(batches.get(batch).quarantine(), tanks.get(tank).watch());
    }

    /** Least days from one batch's addition to that of another that is to be later. */
    int lag(Order order) {
        return Math.max(order.lag(), gap);
    }

    /** The month of a day, or -1 where money does not matter or the day is before all months. */
    int month(int day) {
        int month = -1;
        while (month + 1 < months.size() && months.get(month + 1).from() <= day) {
            month++;
        }
        return month;
    }

    boolean keptApart(int one, int other) {
        return apart.contains(new Pair(one, other)) || apart.contains(new Pair(other, one));
    }
}
