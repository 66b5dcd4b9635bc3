package org.tidewright.plan.rule;

import java.util.List;
import org.tidewright.plan.model.Display;
import org.tidewright.plan.model.Inhabitants.Coral;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.Spot;
import org.tidewright.plan.quantity.Amount;

/** Places in the display, of corals and of what was measured: each lies inside its panes. */
final class SpotRules {
    private SpotRules() {}

    static void check(Plan plan, Findings findings) {
        Display display = plan.display();
        List<Display.LightPoint> lit = display.lightPoints();
        for (int i = 0; i < lit.size(); i++) {
            Display.LightPoint point = lit.get(i);
            inside("display.light_points[" + (i + 1) + "]", point.x(), point.y(), point.height(), display, findings);
        }
        List<Display.FlowPoint> flowing = display.flowPoints();
        for (int i = 0; i < flowing.size(); i++) {
            Display.FlowPoint point = flowing.get(i);
            inside("display.flow_points[" + (i + 1) + "]", point.x(), point.y(), point.height(), display, findings);
        }
        List<Coral> corals =
                plan.inhabitants() == null ? List.of() : plan.inhabitants().corals();
        for (int i = 0; i < corals.size(); i++) {
            coral(corals.get(i), "inhabitants.corals[" + (i + 1) + "]", display, findings);
        }
    }

    private static void coral(Coral coral, String path, Display display, Findings findings) {
        if (coral.colonies() != null) {
            double number = coral.colonies().in("1");
            if (Math.abs(number - Math.rint(number)) > 1e-9) {
                findings.add(path + ".colonies", coral.colonies().toString(), "a whole number of colonies", "");
            }
        }
        Spot at = coral.at();
        if (at == null) {
            return;
        }
        inside(path + ".at", at.x(), at.y(), at.height(), display, findings);
        if (coral.colonyCount() > 1) {
            findings.add(
                    path + ".at",
                    "one place for " + coral.colonyCount() + " colonies",
                    "a row of one colony",
                    "Give each colony a row of its own, with its own plan_area and place.");
        }
    }

    private static void inside(String path, Amount x, Amount y, Amount height, Display display, Findings findings) {
        within(path + ".x", x, "the tank's inside length", display.length(), findings);
        within(path + ".y", y, "the tank's inside width", display.width(), findings);
        findings.notBelow(path + ".height", height, "the tank's height", display.height());
    }

    private static void within(String path, Amount found, String name, Amount bound, Findings findings) {
        if (found.in("m") > bound.in("m")) {
            findings.add(path, found.toString(), "at most " + name + ", " + bound, "");
        }
    }
}
