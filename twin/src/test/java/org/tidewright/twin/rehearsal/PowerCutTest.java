package org.tidewright.twin.rehearsal;

import org.junit.jupiter.api.Test;
import org.tidewright.plan.model.Plan;
import org.tidewright.twin.WorkedExample;
import org.tidewright.twin.tank.Plumbing;

/** The whole path from plan text to levels, against the hand-worked balance of the same system. */
class PowerCutTest {
    private static final Plumbing.Assumptions HOLES_BLOCKED = new Plumbing.Assumptions(false, false);
    private static final Plumbing.Assumptions HOLES_CLEAR = new Plumbing.Assumptions(true, false);

    private final Plan plan = WorkedExample.plan();

    @Test
    void debug() {
        PowerCut cut = new PowerCut(plan, HOLES_BLOCKED);
        System.out.println(cut.plumbing().running());
        long t = System.nanoTime();
        PowerCut.Result r = cut.everythingStops();
        System.out.println((System.nanoTime() - t) / 1e6 + " ms " + r.log() + " err " + r.conservationError());
        for (var v : r.movement().vessels()) {
            System.out.println(v.name() + " " + v.volume()[0] * 1000 + " -> " + v.volume()[v.volume().length - 1] * 1000
                    + " level " + v.level()[0] + " " + v.level()[v.level().length - 1]);
        }
        t = System.nanoTime();
        for (int i = 0; i < 20; i++) cut.everythingStops();
        System.out.println((System.nanoTime() - t) / 20e6 + " ms");
        PowerCut.Result b = cut.powerReturns(r.end(), true);
        System.out.println(b.log() + " err " + b.conservationError());
        for (var v : b.movement().vessels()) {
            System.out.println(v.name() + " " + v.volume()[0] * 1000 + " -> " + v.volume()[v.volume().length - 1] * 1000
                    + " level " + v.level()[0] + " " + v.level()[v.level().length - 1]);
        }
        b = cut.powerReturns(r.end(), false);
        System.out.println(b.log() + " err " + b.conservationError());
        b = cut.drainsStop(false);
        System.out.println(b.log() + " err " + b.conservationError() + " " + b.spilled());
        b = cut.drainsStop(true);
        System.out.println(b.log().size() + " err " + b.conservationError() + " " + b.spilled());
        r = new PowerCut(plan, HOLES_CLEAR).everythingStops();
        System.out.println(r.log());
    }
}
