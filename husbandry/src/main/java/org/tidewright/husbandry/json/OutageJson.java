package org.tidewright.husbandry.json;

import java.util.Locale;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.rehearsal.Crossing;
import org.tidewright.husbandry.rehearsal.OutageReport;
import org.tidewright.husbandry.rehearsal.Trace;
import org.tidewright.husbandry.rehearsal.WaterReport;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.twin.rehearsal.WaterMovement;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** A rehearsed power cut as JSON. */
public final class OutageJson {
    private OutageJson() {}

    /**
     * One object.
     *
     * @param units in which the sentences are told; the numbers are metric
     */
    public static String text(OutageReport report, UnitSystem units) {
        ObjectNode root = AdviceJson.JSON.createObjectNode();
        root.put("system", report.plan().name());
        root.put("event", "outage");
        order(root.putObject("order"), report);
        root.put("lead", report.lead().text(units));
        water(root.putObject("water"), report.water());
        ArrayNode crossings = root.putArray("crossings");
        for (Crossing crossing : report.crossings()) {
            crossing(crossings.addObject(), crossing, measure(report, crossing.trace()));
        }
        ArrayNode traces = root.putArray("traces");
        for (Trace trace : report.traces()) {
            trace(traces.addObject(), trace);
        }
        ArrayNode remarks = root.putArray("remarks");
        report.remarks().forEach(remark -> remarks.add(remark.text(units)));
        AdviceJson.assumptions(root, report.assumptions());
        AdviceJson.sources(root, report.sources());
        AdviceJson.cautions(root, report.cautions());
        return AdviceJson.text(root);
    }

    private static void order(ObjectNode node, OutageReport report) {
        node.put("hours_h", report.order().hours());
        AdviceJson.putNumbers(
                node,
                "outdoor_time",
                Measure.DURATION,
                report.order().outdoors().time());
        AdviceJson.putNumbers(
                node,
                "outdoor_temperature",
                Measure.TEMPERATURE,
                report.order().outdoors().temperature());
        node.put("air_holes_clear", report.order().airHolesClear());
        node.put("backup_used", report.order().backupUsed());
    }

    private static void water(ObjectNode node, WaterReport water) {
        node.put("floor_dry", water.floorDry());
        if (water.room() != null) {
            AdviceJson.put(node, "room_left", water.room());
        }
        WaterMovement movement = water.movement();
        if (movement == null) {
            return;
        }
        ArrayNode time = node.putArray("time_s");
        for (double second : movement.time()) {
            time.add(second);
        }
        AdviceJson.putNumbers(node, "room_left_course", Measure.VOLUME, water.roomLeft());
        ArrayNode vessels = node.putArray("vessels");
        for (WaterMovement.Vessel vessel : movement.vessels()) {
            ObjectNode entry = vessels.addObject();
            entry.put("name", vessel.name());
            entry.put("place", vessel.place().name().toLowerCase(Locale.ROOT));
            AdviceJson.putNumbers(entry, "level", Measure.LEVEL, vessel.level());
            AdviceJson.putNumbers(entry, "volume", Measure.VOLUME, vessel.volume());
        }
        ArrayNode streams = node.putArray("streams");
        for (WaterMovement.Stream stream : movement.streams()) {
            ObjectNode entry = streams.addObject();
            entry.put("kind", stream.kind().name().toLowerCase(Locale.ROOT));
            entry.put("from", stream.from());
            entry.put("to", stream.to());
            AdviceJson.putNumbers(entry, "flow", Measure.FLOW, stream.flow());
        }
    }

    private static void crossing(ObjectNode node, Crossing crossing, Measure measure) {
        node.put("trace", crossing.trace());
        node.put("limit", crossing.limit().words());
        AdviceJson.put(node, "value", Figure.exact(measure, crossing.limit().value()));
        node.put("side", crossing.limit().forbiddenBelow() ? "below" : "above");
        AdviceJson.put(node, "after", crossing.after());
        node.put("share_of_draws", crossing.share());
        node.put("source", crossing.limit().source());
    }

    private static void trace(ObjectNode node, Trace trace) {
        node.put("id", trace.id());
        node.put("title", trace.title());
        AdviceJson.putNumbers(node, "time", Measure.DURATION, trace.time());
        AdviceJson.putNumbers(node, "low", trace.measure(), trace.band().low());
        AdviceJson.putNumbers(node, "middle", trace.measure(), trace.band().middle());
        AdviceJson.putNumbers(node, "high", trace.measure(), trace.band().high());
    }

    private static Measure measure(OutageReport report, String trace) {
        return report.traces().stream()
                .filter(candidate -> candidate.id().equals(trace))
                .findFirst()
                .orElseThrow()
                .measure();
    }
}
