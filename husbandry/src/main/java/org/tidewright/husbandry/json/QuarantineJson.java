package org.tidewright.husbandry.json;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.tidewright.husbandry.advice.Advice;
import org.tidewright.husbandry.journal.Sign;
import org.tidewright.husbandry.quarantine.BareTankWater;
import org.tidewright.husbandry.quarantine.BareTankWords;
import org.tidewright.husbandry.quarantine.Batch;
import org.tidewright.husbandry.quarantine.CheckedDay;
import org.tidewright.husbandry.quarantine.FallowState;
import org.tidewright.husbandry.quarantine.FallowWords;
import org.tidewright.husbandry.quarantine.QuarantineStudy;
import org.tidewright.husbandry.quarantine.Restart;
import org.tidewright.husbandry.quarantine.Watch;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.UnitSystem;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** A quarantine tank, and a display that stands without fish, as JSON. */
public final class QuarantineJson {
    private QuarantineJson() {}

    /**
     * One object about a quarantine tank.
     *
     * @param units in which the sentences are told; the numbers are metric
     */
    public static String text(QuarantineStudy study, BareTankWater water, UnitSystem units) {
        ObjectNode root = AdviceJson.JSON.createObjectNode();
        root.put("system", study.plan().name());
        root.put("serves", study.quarantine().serves());
        root.put("today", study.today().toString());
        advice(root.putObject("duty"), study.duty(), units);
        if (study.batch() != null) {
            batch(root.putObject("batch"), study.batch());
        }
        if (study.watch() != null) {
            watch(root.putObject("watch"), study.watch(), study.today());
            advice(root.putObject("end"), study.end(), units);
        }
        ObjectNode ammonia = root.putObject("ammonia");
        run(ammonia.putObject("planned"), water.planned());
        run(ammonia.putObject("unchanged"), water.unchanged());
        run(ammonia.putObject("unfiltered"), water.unfiltered());
        advice(ammonia, BareTankWords.of(water), units);
        return AdviceJson.text(root);
    }

    /** One object about a display: the fallows that are not over, none where there are none. */
    public static String text(Plan display, List<FallowState> fallows, LocalDate today, UnitSystem units) {
        ObjectNode root = AdviceJson.JSON.createObjectNode();
        root.put("system", display.name());
        root.put("today", today.toString());
        ArrayNode list = root.putArray("fallows");
        for (FallowState fallow : fallows) {
            ObjectNode node = list.addObject();
            node.put("parasite", fallow.parasite().key());
            node.put("began", fallow.began().toString());
            node.put("counted_from", fallow.countedFrom().toString());
            node.put("restock", fallow.restock().toString());
            AdviceJson.putNumber(node, "shortest_d", fallow.span().shortest());
            AdviceJson.putNumber(node, "customary_d", fallow.span().customary());
            AdviceJson.putNumber(node, "longest_d", fallow.span().longest());
            ArrayNode breaks = node.putArray("breaks");
            for (FallowState.Break broken : fallow.breaks()) {
                breaks.addObject().put("on", broken.on().toString()).put("why", broken.why());
            }
            advice(node, FallowWords.of(fallow, display.name(), today), units);
        }
        return AdviceJson.text(root);
    }

    private static void batch(ObjectNode node, Batch batch) {
        node.put("began", batch.began().toString());
        node.put("ended", batch.ended() == null ? null : batch.ended().toString());
        node.put("came", batch.came());
        node.put("died", batch.died());
        node.put("left", batch.left());
        ArrayNode present = node.putArray("present");
        for (Batch.Animals animals : batch.present()) {
            present.addObject().put("animal", animals.name()).put("count", animals.count());
        }
    }

    private static void watch(ObjectNode node, Watch watch, LocalDate today) {
        node.put("end", watch.end().toString());
        node.put("day", watch.dayOf(today));
        node.put("days_d", watch.governing().days());
        ArrayNode restarts = node.putArray("restarts");
        for (Restart restart : watch.restarts()) {
            restarts.addObject()
                    .put("on", restart.on().toString())
                    .put("cause", restart.cause().name().toLowerCase(Locale.ROOT))
                    .put("why", restart.why())
                    .put("days_d", restart.days());
        }
        ArrayNode days = node.putArray("days");
        for (CheckedDay day : watch.days()) {
            ObjectNode entry = days.addObject();
            entry.put("day", day.day().toString());
            entry.put("checked", day.checked());
            if (day.appetite() != null) {
                entry.put("ate", day.appetite().name().toLowerCase(Locale.ROOT));
            }
            if (day.breaths() != null) {
                entry.put("breaths_per_minute", day.breaths().intValue());
            }
            ArrayNode signs = entry.putArray("signs");
            day.signs().stream().sorted().map(Sign::key).forEach(signs::add);
            entry.put("died", day.died());
        }
    }

    private static void run(ObjectNode node, BareTankWater.Run run) {
        AdviceJson.putNumber(node, "amber_d", run.amber());
        AdviceJson.putNumber(node, "red_d", run.red());
        AdviceJson.putNumber(node, "free_ammonia_n_peak_mg_per_l", run.peak());
        AdviceJson.putNumber(node, "free_ammonia_n_peak_d", run.peakDay());
        AdviceJson.putNumber(node, "nitrite_n_peak_mg_per_l", run.nitrite());
        AdviceJson.putNumber(node, "daily_change_percent", 100 * run.held());
    }

    private static void advice(ObjectNode node, Advice advice, UnitSystem units) {
        node.put("lead", advice.lead().text(units));
        ArrayNode remarks = node.putArray("remarks");
        advice.remarks().forEach(remark -> remarks.add(remark.text(units)));
        AdviceJson.sources(node, advice.sources());
        AdviceJson.cautions(node, advice.cautions());
    }
}
