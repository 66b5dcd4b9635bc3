package org.tidewright.husbandry.exchange;

import java.util.ArrayList;
import java.util.List;
import org.tidewright.plan.fault.Fault;

/** What is wrong with a copy; the first ones are kept, all are counted. */
final class Faults {
    /** More than anybody reads at once. */
    private static final int KEPT = 100;

    private final List<Fault> kept = new ArrayList<>();
    private int count;

    void add(Fault fault) {
        count++;
        if (kept.size() < KEPT) {
            kept.add(fault);
        }
    }

    /** Nothing but this: of a copy of another kind, nothing else can be said. */
    void only(Fault fault) {
        kept.clear();
        count = 0;
        add(fault);
    }

    boolean isEmpty() {
        return count == 0;
    }

    Restoring.Faulty faulty() {
        return new Restoring.Faulty(List.copyOf(kept), count);
    }
}
