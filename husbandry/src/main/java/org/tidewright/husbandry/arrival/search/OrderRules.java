package org.tidewright.husbandry.arrival.search;

import org.chocosolver.solver.variables.BoolVar;
import org.tidewright.husbandry.arrival.search.Puzzle.Order;

/** Who goes into the display before whom. */
final class OrderRules {
    private OrderRules() {}

    static void post(ArrivalModel at) {
        at.puzzle.orders().forEach(order -> post(at, order));
    }

    private static void post(ArrivalModel at, Order order) {
        BoolVar first = at.placed[order.first()];
        BoolVar second = at.placed[order.second()];
        if (order.needed()) {
            at.model.arithm(second, "<=", first).post();
        }
        BoolVar both = at.both(first, second);
        at.model.arithm(both, "<=", at.before[order.first()][order.second()]).post();
        at.model.impXrelYC(at.out[order.second()], ">=", at.out[order.first()], at.puzzle.lag(order), both);
    }
}
