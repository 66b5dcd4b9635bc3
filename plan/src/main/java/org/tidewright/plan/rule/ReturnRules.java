package org.tidewright.plan.rule;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.Refugium;
import org.tidewright.plan.model.ReturnLine;
import org.tidewright.plan.model.ReturnLine.CurvePoint;
import org.tidewright.plan.model.ReturnLine.Outlet;
import org.tidewright.plan.model.Sump;
import org.tidewright.plan.quantity.Amount;

/** The return line: pump curve, intake and nozzles; and the refugium it feeds. */
final class ReturnRules {
    private ReturnRules() {}

    static void check(Plan plan, Findings findings) {
        ReturnLine line = plan.returnLine();
        if (line != null) {
            curve(line.pump().curve(), findings);
            intake(line, plan.sump(), findings);
            for (int i = 0; i < line.outlets().size(); i++) {
                outlet(
                        line.outlets().get(i),
                        plan.display().height(),
                        "return_line.outlets[" + (i + 1) + "]",
                        findings);
            }
        }
        Refugium refugium = plan.refugium();
        if (refugium != null) {
            findings.notBelow("refugium.crest", refugium.crest(), "the refugium's height", refugium.height());
            outlet(refugium.outlet(), refugium.height(), "refugium.outlet", findings);
        }
    }

    private static void curve(List<CurvePoint> curve, Findings findings) {
        if (curve.get(0).flow().in("m^3/s") != 0) {
            findings.add(
                    "return_line.pump.curve[1].flow",
                    curve.get(0).flow().toString(),
                    "0 L/h: the first point is the shut-off head",
                    "");
        }
        for (int i = 1; i < curve.size(); i++) {
            String path = "return_line.pump.curve[" + (i + 1) + "]";
            CurvePoint before = curve.get(i - 1);
            CurvePoint here = curve.get(i);
            if (here.flow().in("m^3/s") <= before.flow().in("m^3/s")) {
                findings.add(
                        path + ".flow", here.flow().toString(), "more than the point before, " + before.flow(), "");
            }
            if (here.head().in("m") >= before.head().in("m")) {
                findings.add(
                        path + ".head", here.head().toString(), "less than the point before, " + before.head(), "");
            }
        }
    }

    private static void intake(ReturnLine line, @Nullable Sump sump, Findings findings) {
        if (sump == null) {
            return;
        }
        Amount level = sump.sections().get(sump.sections().size() - 1).waterLevel();
        if (level != null) {
            findings.notBelow(
                    "return_line.pump.intake", line.pump().intake(), "the running level of the last section", level);
        }
    }

    private static void outlet(Outlet outlet, Amount vesselHeight, String path, Findings findings) {
        if (outlet.lowerEdge().in("m") >= vesselHeight.in("m")) {
            findings.add(
                    path + ".lower_edge",
                    outlet.lowerEdge().toString(),
                    "a mouth inside the vessel, lower than its rim at " + vesselHeight,
                    "Measure up from the inside bottom to the lowest point of the mouth.");
        }
        if (outlet.airHole() != null) {
            Amount hole = outlet.airHole().height();
            if (hole.in("m") < outlet.lowerEdge().in("m")) {
                findings.add(
                        path + ".air_hole.height",
                        hole.toString(),
                        "a hole above the mouth's lower edge, " + outlet.lowerEdge(),
                        "A hole lower than the mouth breaks no siphon.");
            }
            findings.notBelow(path + ".air_hole.height", hole, "the vessel's height", vesselHeight);
        }
    }
}
