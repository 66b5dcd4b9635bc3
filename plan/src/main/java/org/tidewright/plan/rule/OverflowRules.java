package org.tidewright.plan.rule;

import java.util.List;
import org.tidewright.plan.model.Display;
import org.tidewright.plan.model.Overflow;
import org.tidewright.plan.model.Plan;

/** The overflow: crest, box and drains. */
final class OverflowRules {
    private OverflowRules() {}

    static void check(Plan plan, Findings findings) {
        Overflow overflow = plan.overflow();
        if (overflow == null) {
            return;
        }
        crest(overflow, plan.display(), findings);
        box(overflow, plan.display(), findings);
        drains(overflow, findings);
    }

    private static void crest(Overflow overflow, Display display, Findings findings) {
        findings.notBelow("overflow.crest", overflow.crest(), "the tank's height", display.height());
        if ((overflow.teeth() == null) == (overflow.smoothLength() == null)) {
            findings.add(
                    "overflow",
                    overflow.teeth() == null ? "neither teeth nor smooth_length" : "both teeth and smooth_length",
                    "one of the two, so that the flow over the crest can be computed",
                    "");
        }
        Overflow.Box box = overflow.box();
        double around = box.length().in("m") + 2 * box.width().in("m");
        if (overflow.teeth() != null) {
            double open = overflow.teeth().count() * overflow.teeth().width().in("m");
            if (open > around) {
                findings.add(
                        "overflow.teeth",
                        Math.round(open * 1000) + " mm of open slots",
                        "no more than the three sides of the box, " + Math.round(around * 1000) + " mm",
                        "");
            }
        }
        if (overflow.smoothLength() != null && overflow.smoothLength().in("m") > around + 1e-9) {
            findings.add(
                    "overflow.smooth_length",
                    overflow.smoothLength().toString(),
                    "no more than the three sides of the box, " + Math.round(around * 1000) + " mm",
                    "");
        }
    }

    private static void box(Overflow overflow, Display display, Findings findings) {
        Overflow.Box box = overflow.box();
        findings.notBelow("overflow.box.length", box.length(), "the tank's length", display.length());
        findings.notBelow("overflow.box.width", box.width(), "the tank's width", display.width());
        if (2 * box.wall().in("m") >= Math.min(box.length().in("m"), box.width().in("m"))) {
            findings.add("overflow.box.wall", box.wall().toString(), "walls that leave room between them", "");
        }
        if (box.runningLevel() != null) {
            findings.notBelow("overflow.box.running_level", box.runningLevel(), "the crest's height", overflow.crest());
        }
        if (box.bottom() != null) {
            findings.notBelow("overflow.box.bottom", box.bottom(), "the crest's height", overflow.crest());
        }
        boolean hangs = overflow.kind() == Overflow.Kind.HANG_ON;
        if (hangs != (overflow.outerBox() != null)) {
            findings.add(
                    "overflow",
                    hangs ? "a hung overflow without outer_box" : "an outer_box on an internal overflow",
                    "outer_box where kind is hang_on, and only there",
                    "");
        }
    }

    private static void drains(Overflow overflow, Findings findings) {
        List<Overflow.Drain> drains = overflow.drains();
        for (int i = 0; i < drains.size(); i++) {
            Overflow.Drain drain = drains.get(i);
            String path = "overflow.drains[" + (i + 1) + "]";
            findings.notBelow(path + ".inlet", drain.inlet(), "the crest's height", overflow.crest());
            if (overflow.box().bottom() != null
                    && drain.inlet().in("m") < overflow.box().bottom().in("m")) {
                findings.add(path + ".inlet", drain.inlet().toString(), "an inlet above the box's bottom", "");
            }
            if (drain.kind() == Overflow.DrainKind.SIPHON) {
                if (overflow.box().runningLevel() == null) {
                    findings.add(
                            "overflow.box",
                            "no key “running_level”",
                            "the level the valve of the full siphon is set to",
                            "Add running_level: to box.");
                } else {
                    findings.notBelow(
                            path + ".inlet",
                            drain.inlet(),
                            "the box's running level",
                            overflow.box().runningLevel());
                }
            }
        }
        if (drains.get(0).kind() == Overflow.DrainKind.EMERGENCY) {
            findings.add(
                    "overflow.drains[1]",
                    "an emergency drain first",
                    "the drain that carries the flow, before any spare",
                    "Put the working drain first.");
        }
    }
}
