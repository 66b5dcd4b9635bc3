package org.tidewright.husbandry.json;

import org.tidewright.husbandry.forecast.ForecastReport;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.twin.forecast.Change;
import org.tidewright.twin.forecast.Course;
import org.tidewright.twin.forecast.Quantity;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** A forecast as JSON; every number ends its name in its unit. */
public final class ForecastJson {
    private static final double DAY = 86_400;

    private ForecastJson() {}

    /**
     * One object.
     *
     * @param units in which the sentences are told; the numbers are metric
     */
    public static String text(ForecastReport report, UnitSystem units) {
        ObjectNode root = AdviceJson.JSON.createObjectNode();
        root.put("system", report.plan().name());
        root.put("days_d", report.days());
        ArrayNode changes = root.putArray("changes");
        for (Change change : report.changes()) {
            ObjectNode node = changes.addObject();
            node.put("lever", change.lever().name());
            node.put("words", ForecastReport.words(change));
            node.put("from_d", change.from() / DAY);
            if (Double.isFinite(change.lasts())) {
                node.put("lasts_d", change.lasts() / DAY);
            }
        }
        root.put("lead", report.lead(units));
        ArrayNode warnings = root.putArray("warnings");
        for (ForecastReport.Warning warning : report.warnings()) {
            ObjectNode node = warnings.addObject();
            node.put("quantity", warning.band().quantity().key());
            node.put("first_left_d", warning.day());
            node.put("farthest", warning.value());
            node.put("bound", warning.bound());
            node.put("reason", warning.band().reason());
            node.put("without_the_changes_too", warning.asRunToo());
        }
        course(root.putObject("as_run"), report.asRun());
        if (report.changed() != null) {
            course(root.putObject("changed"), report.changed());
        }
        return AdviceJson.text(root);
    }

    private static void course(ObjectNode node, Course course) {
        ArrayNode time = node.putArray("time_d");
        for (double second : course.time()) {
            time.add(second / DAY);
        }
        for (Quantity quantity : Quantity.values()) {
            ArrayNode values = node.putArray(quantity.key());
            for (double value : course.of(quantity)) {
                values.add(value);
            }
        }
        if (course.brokenOff() != null) {
            node.put("broken_off", course.brokenOff());
        }
    }
}
