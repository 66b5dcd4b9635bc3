package org.tidewright.husbandry.json;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.forecast.AssumedAir;
import org.tidewright.husbandry.forecast.AssumedGrowth;
import org.tidewright.husbandry.forecast.ForecastReport;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.twin.forecast.Change;
import org.tidewright.twin.forecast.Course;
import org.tidewright.twin.forecast.Outlook;
import org.tidewright.twin.forecast.Quantity;
import org.tidewright.twin.rehearsal.Band;
import org.tidewright.twin.run.Occurrence;
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
            node.put("words", ForecastReport.words(change, units));
            node.put("from_d", change.from() / DAY);
            if (Double.isFinite(change.lasts())) {
                node.put("lasts_d", change.lasts() / DAY);
            }
        }
        root.put("lead", report.lead(units));
        ArrayNode assumed = root.putArray("assumed");
        AssumedAir.of(report.plan().room()).ifPresent(assumed::add);
        AssumedGrowth.of(report).ifPresent(assumed::add);
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
        ArrayNode overflows = root.putArray("overflows");
        for (Occurrence overflow : report.overflows()) {
            overflows.addObject().put("words", overflow.event()).put("after_d", overflow.time() / DAY);
        }
        ForecastReport.Doubt doubt = report.doubt();
        if (doubt != null) {
            root.put("draws", doubt.asRun().draws());
        }
        course(root.putObject("as_run"), report.asRun(), doubt == null ? null : doubt.asRun());
        if (report.changed() != null) {
            course(root.putObject("changed"), report.changed(), doubt == null ? null : doubt.changed());
        }
        return AdviceJson.text(root);
    }

    private static void course(ObjectNode node, Course course, @Nullable Outlook outlook) {
        time(node, course.time());
        for (Quantity quantity : Quantity.values()) {
            values(node, quantity.key(), course.of(quantity));
        }
        if (course.brokenOff() != null) {
            node.put("broken_off", course.brokenOff());
        }
        if (outlook != null) {
            bands(node.putObject("bands"), outlook);
        }
    }

    private static void bands(ObjectNode node, Outlook outlook) {
        time(node, outlook.time());
        for (Quantity quantity : Quantity.values()) {
            Band band = outlook.of(quantity);
            values(node, quantity.key() + "_low", band.low());
            values(node, quantity.key() + "_middle", band.middle());
            values(node, quantity.key() + "_high", band.high());
        }
        if (outlook.endedEarly() > 0) {
            node.put("draws_ended_early", outlook.endedEarly());
        }
    }

    private static void time(ObjectNode node, double[] seconds) {
        values(
                node,
                "time_d",
                Arrays.stream(seconds).map(second -> second / DAY).toArray());
    }

    private static void values(ObjectNode node, String name, double[] values) {
        ArrayNode array = node.putArray(name);
        for (double value : values) {
            array.add(value);
        }
    }
}
