package org.tidewright.husbandry.arrival;

import java.util.ArrayList;
import java.util.List;
import org.tidewright.husbandry.arrival.Wish.After;

/**
 * One wish goes into the display before another, if both do.
 *
 * @param days least days between
 * @param why what a keeper is told
 */
record Precedence(String first, String second, int days, Why why) {
    /** Where the order comes from. */
    enum Why {
        AFTER,
        TIMID,
        PREY
    }

    /** All that a request asks for, between wishes of its list or towards one that is on no list. */
    static List<Precedence> of(ArrivalRequest request) {
        List<Precedence> all = new ArrayList<>();
        for (Wish wish : request.wishes()) {
            for (After after : wish.after()) {
                all.add(new Precedence(after.id(), wish.id(), after.days(), Why.AFTER));
            }
            for (Wish bolder : request.wishes()) {
                boolean trouble = request.troubles().contains(new Trouble(wish.id(), bolder.id()))
                        || request.troubles().contains(new Trouble(bolder.id(), wish.id()));
                if (trouble && bolder.temperament() - wish.temperament() >= Trouble.BOLDER) {
                    all.add(new Precedence(wish.id(), bolder.id(), 1, Why.TIMID));
                }
            }
        }
        for (PreyFirst pair : request.preyFirst()) {
            if (request.wish(pair.prey()).isPresent()
                    && request.wish(pair.predator()).isPresent()) {
                all.add(new Precedence(pair.prey(), pair.predator(), pair.days(), Why.PREY));
            }
        }
        return all;
    }

    /** Whether the second cannot come without the first. */
    boolean needed() {
        return why == Why.AFTER;
    }
}
