package org.tidewright.husbandry.arrival;

import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * Animals that are wished for and come together: one fish, a pair, a group, a handful of snails.
 *
 * @param id names it in the request and in the plan
 * @param words what it is called
 * @param count animals
 * @param load their live mass on the day they come, all together: their share of the nitrogen the filter is to carry
 * @param temperament from 1, peaceful, to 5, relentless
 * @param length of one animal on the day it comes
 * @param quarantineDays least days in quarantine; 0 and it goes straight into the display
 * @param price of all together, in the currency's smallest coin; null where it is not known
 * @param fromShop before which it cannot come, and why; null if it can be had any day
 * @param intoDisplay before which the display is not ready for it, and why; null if it is
 * @param after what must be in the display first
 * @param apart ids of what must not share its quarantine; said on one side, it holds for both
 */
public record Wish(
        String id,
        String words,
        int count,
        @Unit("kg") double load,
        int temperament,
        @Unit("m") double length,
        int quarantineDays,
        @Nullable Long price,
        @Nullable NotBefore fromShop,
        @Nullable NotBefore intoDisplay,
        List<After> after,
        Set<String> apart) {
    private static final long DEAREST = 50_000_000;
    private static final int LONGEST_QUARANTINE = 365;

    /** Refuses what cannot be meant. */
    public Wish {
        if (id.isBlank()) {
            throw new IllegalArgumentException("a wish (\"" + words + "\") has no id; it must have one of its own");
        }
        Bounds.within(count, "1", 1, 10_000, "animals of " + id);
        Bounds.within(load, "kg", 0, 1000, "live mass of " + id, "is it in grams?");
        Bounds.within(temperament, "1", 1, 5, "temperament of " + id);
        Bounds.within(length, "m", 0, 5, "length of " + id, "is it in centimetres?");
        Bounds.within(quarantineDays, "d", 0, LONGEST_QUARANTINE, "quarantine of " + id);
        if (price != null) {
            Bounds.within(price, "coins", 0, DEAREST, "price of " + id);
        }
        after = List.copyOf(after);
        apart = Set.copyOf(apart);
    }

    /**
     * What must be in the display before a wish.
     *
     * @param id another wish, on the list or in the display already
     * @param days least days between the two, at least 1
     */
    public record After(String id, int days) {
        /** Refuses what cannot be meant. */
        public After {
            Bounds.within(days, "d", 1, 3660, "days after " + id);
        }
    }

    /** The same with another quarantine. */
    Wish withQuarantine(int days) {
        return new Wish(id, words, count, load, temperament, length, days, price, fromShop, intoDisplay, after, apart);
    }

    /** The same of fewer animals. */
    Wish withAnimals(int newCount, double newLoad) {
        return new Wish(
                id,
                words,
                newCount,
                newLoad,
                temperament,
                length,
                quarantineDays,
                price,
                fromShop,
                intoDisplay,
                after,
                apart);
    }

    /** The same, to be had on another day. */
    Wish withShop(NotBefore day) {
        return new Wish(
                id, words, count, load, temperament, length, quarantineDays, price, day, intoDisplay, after, apart);
    }
}
