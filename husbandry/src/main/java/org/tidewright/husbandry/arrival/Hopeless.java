package org.tidewright.husbandry.arrival;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tidewright.husbandry.arrival.Precedence.Why;
import org.tidewright.husbandry.arrival.Reason.ComesAfter;
import org.tidewright.husbandry.arrival.Reason.NoTank;

/** Wishes that no order of the others can help. */
final class Hopeless {
    private Hopeless() {}

    /** Such wishes and what stands against them. */
    static Map<String, List<Reason>> of(ArrivalRequest request, List<Precedence> precedences) {
        Map<String, List<Reason>> hopeless = new LinkedHashMap<>();
        int before;
        do {
            before = hopeless.size();
            for (Wish wish : request.wishes()) {
                if (request.inDisplay(wish.id()).isEmpty() && !request.isLost(wish.id())) {
                    List<Reason> reasons = new ArrayList<>(reasons(request, precedences, wish, hopeless));
                    if (!reasons.isEmpty()) {
                        hopeless.putIfAbsent(wish.id(), reasons);
                    }
                }
            }
        } while (hopeless.size() > before);
        return hopeless;
    }

    private static List<Reason> reasons(
            ArrivalRequest request, List<Precedence> precedences, Wish wish, Map<String, List<Reason>> hopeless) {
        List<Reason> reasons = new ArrayList<>();
        boolean outside = request.happened(wish.id()).isEmpty();
        boolean fits = request.tanks().stream().anyMatch(tank -> tank.capacity() >= wish.load());
        if (outside && wish.quarantineDays() > 0 && !fits) {
            reasons.add(new NoTank(wish.load()));
        }
        for (Precedence each : precedences) {
            if (each.second().equals(wish.id()) && each.needed()) {
                boolean never = request.wish(each.first()).isEmpty()
                        || request.isLost(each.first())
                        || hopeless.containsKey(each.first());
                if (never) {
                    reasons.add(new ComesAfter(each.first(), null, each.days()));
                }
            }
            boolean tooLate = request.inDisplay(each.second()).isPresent();
            if (each.first().equals(wish.id()) && tooLate && !each.needed()) {
                reasons.add(told(each));
            }
        }
        return reasons;
    }

    /** Two that trouble each other, or predator and prey: the second is in the display, so the first cannot be first. */
    private static Reason told(Precedence precedence) {
        return precedence.why() == Why.PREY
                ? new Reason.Prey(precedence.second())
                : new Reason.TimidFirst(precedence.second());
    }
}
