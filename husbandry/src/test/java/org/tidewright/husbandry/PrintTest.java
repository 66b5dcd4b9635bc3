package org.tidewright.husbandry;

import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.check.PlanChecks;
import org.tidewright.husbandry.rehearsal.OutageRehearsal;
import org.tidewright.plan.Examples;
import org.tidewright.plan.text.PlanReading;
import org.tidewright.plan.text.PlanText;
import org.tidewright.twin.rehearsal.OutageOrder;
import org.tidewright.twin.rehearsal.Outdoors;

class PrintTest {
    @Test
    void print() {
        for (String name : Examples.NAMES) {
            var plan = ((PlanReading.Sound) PlanText.read(Examples.text(name))).plan();
            var u = plan.units();
            System.out.println("##### " + name);
            long t = System.nanoTime();
            var report = PlanChecks.of(plan);
            System.out.println(
                    (System.nanoTime() - t) / 1e6 + " ms LEAD " + report.lead().text(u));
            for (var c : report.checks()) {
                System.out.println("[" + c.holding().words() + "] " + c.title() + ": "
                        + c.shown().text(u) + " | " + c.sentence().text(u) + " | margin "
                        + (c.margin() == null
                                ? ""
                                : org.tidewright.husbandry.advice.FigureText.of(c.margin(), u)
                                        .line()));
            }
            t = System.nanoTime();
            var out = OutageRehearsal.of(plan, new OutageOrder(24, Outdoors.constant(0), true, true));
            System.out.println(
                    (System.nanoTime() - t) / 1e6 + " ms LEAD " + out.lead().text(u));
            out.remarks().forEach(r -> System.out.println("- " + r.text(u)));
            out.crossings()
                    .forEach(r -> System.out.println("x " + r.trace() + " " + r.limit() + " "
                            + org.tidewright.husbandry.advice.FigureText.of(r.after(), u)
                                    .line() + " " + r.share()));
            out.assumptions()
                    .forEach(r -> System.out.println("a " + r.name() + ": "
                            + org.tidewright.husbandry.advice.FigureText.of(r.figure(), u)
                                    .line() + " " + r.basis().words() + " " + r.detail()));
            out = OutageRehearsal.of(plan, new OutageOrder(24, Outdoors.constant(35), false, false));
            System.out.println("LEAD " + out.lead().text(u));
        }
    }
}
