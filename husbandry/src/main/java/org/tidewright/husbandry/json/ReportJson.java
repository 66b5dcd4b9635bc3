package org.tidewright.husbandry.json;

import java.util.Locale;
import org.tidewright.husbandry.advice.Check;
import org.tidewright.husbandry.advice.Report;
import org.tidewright.husbandry.water.SystemWater;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.twin.rehearsal.WaterMovement;
import org.tidewright.twin.tank.Place;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The checks of a plan as JSON. */
public final class ReportJson {
    private ReportJson() {}

    /**
     * One object.
     *
     * @param units in which the sentences are told; the numbers are metric
     */
    public static String text(Plan plan, Report report, UnitSystem units) {
        ObjectNode root = AdviceJson.JSON.createObjectNode();
        root.put("system", plan.name());
        root.put("holds", report.holds());
        root.put("lead", report.lead().text(units));
        volumes(root, plan);
        ArrayNode checks = root.putArray("checks");
        for (Check check : report.checks()) {
            check(checks.addObject(), check, units);
        }
        AdviceJson.sources(root, report.sources());
        AdviceJson.cautions(root, report.cautions());
        return AdviceJson.text(root);
    }

    private static void volumes(ObjectNode root, Plan plan) {
        AdviceJson.putNumber(root, "water_l", 1000 * SystemWater.volume(plan));
        ArrayNode vessels = root.putArray("vessels");
        for (WaterMovement.Vessel vessel : SystemWater.running(plan).vessels()) {
            if (vessel.place() == Place.FLOOR) {
                continue;
            }
            ObjectNode entry = vessels.addObject();
            entry.put("name", vessel.name());
            entry.put("place", vessel.place().name().toLowerCase(Locale.ROOT));
            AdviceJson.putNumber(entry, "volume_l", 1000 * vessel.volume()[0]);
            AdviceJson.putNumber(entry, "level_mm", 1000 * vessel.level()[0]);
        }
    }

    private static void check(ObjectNode node, Check check, UnitSystem units) {
        node.put("id", check.id());
        node.put("title", check.title());
        node.put("holding", check.holding().name().toLowerCase(Locale.ROOT));
        if (check.margin() != null) {
            AdviceJson.put(node, "margin", check.margin());
        }
        node.put("shown", check.shown().text(units));
        node.put("sentence", check.sentence().text(units));
        ArrayNode sources = node.putArray("sources");
        check.sources().forEach(sources::add);
    }
}
