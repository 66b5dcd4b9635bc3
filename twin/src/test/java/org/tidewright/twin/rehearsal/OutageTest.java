package org.tidewright.twin.rehearsal;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tidewright.plan.Examples;
import org.tidewright.plan.model.Plan;
import org.tidewright.twin.WorkedExample;
import org.tidewright.twin.tank.Plumbing;

class OutageTest {
    @Test
    void debug() {
        for (String name : Examples.NAMES) {
            Plan plan = WorkedExample.read(Examples.text(name));
            OutageOrder order = new OutageOrder(24, Outdoors.constant(0), true, true);
            var bounds = List.of(
                    new Bound("cold", Bound.Quantity.TEMPERATURE, 23, true),
                    new Bound("harm", Bound.Quantity.TEMPERATURE, 20, true),
                    new Bound("o2", Bound.Quantity.OXYGEN, 3.3e-3 / 32e-3, true));
            org.tidewright.twin.tank.Climate.Volumes v;
            if (plan.hasSump()) {
                PowerCut cut = new PowerCut(plan, new Plumbing.Assumptions(true, false));
                System.out.println(cut.plumbing().running());
                PowerCut.Result r = cut.everythingStops();
                System.out.println(r.log() + " spilled " + r.spilled());
                v = Outage.volumesAfter(cut, r);
                PowerCut blocked = new PowerCut(plan, new Plumbing.Assumptions(false, false));
                System.out.println("blocked " + blocked.everythingStops().spilled());
            } else v = Outage.volumesOf(plan);
            System.out.println(v);
            Outage o = new Outage(plan, order, v, bounds);
            long t = System.nanoTime();
            Outage.Result r = o.rehearse(200);
            System.out.println((System.nanoTime() - t) / 1e6 + " ms");
            t = System.nanoTime();
            r = o.rehearse(200);
            System.out.println((System.nanoTime() - t) / 1e6 + " ms second");
            var run = o.usualRun();
            double[] before = new double[4];
            t = System.nanoTime();
            run.until(86400);
            System.out.println((System.nanoTime() - t) / 1e6 + " ms one");
            System.out.println(run.log());
            r.firstTimes()
                    .forEach((k, q) -> System.out.println(
                            k + " " + q.at(.05) / 3600 + " " + q.at(.5) / 3600 + " " + q.at(.95) / 3600));
            if (r.batteryEmpty() != null)
                System.out.println("battery " + r.batteryEmpty().at(.5) / 3600);
            for (int i = 0; i < 145; i += 24) {
                System.out.printf(
                        "%5.1f T %.2f room %.2f O2 %.2f%n",
                        r.time()[i] / 3600,
                        r.displayTemperature().middle()[i],
                        r.roomTemperature().middle()[i],
                        r.displayOxygen().middle()[i] * 32);
            }
        }
    }
}
