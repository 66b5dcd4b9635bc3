package org.tidewright.husbandry.json;

import java.time.Duration;
import java.util.Optional;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.husbandry.estimate.Known;
import org.tidewright.husbandry.quantity.Fork;
import org.tidewright.husbandry.quantity.QuantityCourse;
import org.tidewright.husbandry.quantity.QuantityStudy;
import org.tidewright.husbandry.quantity.Stability;
import org.tidewright.husbandry.quantity.Told;
import org.tidewright.husbandry.quantity.WaterStudy;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.plan.model.UnitSystem;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** What is known of a system's water as JSON; every number ends its name in its unit. */
public final class WaterJson {
    /** Readings older than twelve weeks are told by the log alone. */
    private static final Duration TOLD = Duration.ofDays(84);

    private WaterJson() {}

    /**
     * One object.
     *
     * @param asked one quantity alone; all where empty
     * @param units in which the sentences are told; the numbers are metric
     */
    public static String text(String system, WaterStudy study, Optional<WaterQuantity> asked, UnitSystem units) {
        ObjectNode root = AdviceJson.JSON.createObjectNode();
        root.put("system", system);
        root.put("at", study.now().toString());
        ArrayNode quantities = root.putArray("quantities");
        for (QuantityStudy each : study.quantities()) {
            if (asked.isEmpty() || asked.get() == each.quantity()) {
                quantity(quantities.addObject(), each, units);
            }
        }
        ArrayNode notes = root.putArray("not_counted");
        study.notes().forEach(notes::add);
        return AdviceJson.text(root);
    }

    private static void quantity(ObjectNode node, QuantityStudy study, UnitSystem units) {
        Measure level = Told.level(study.quantity());
        node.put("quantity", study.quantity().key());
        node.put("state", study.state());
        node.put("headline", study.headline());
        node.put("lead", study.advice().lead().text(units));
        ArrayNode remarks = node.putArray("remarks");
        for (Sentence remark : study.advice().remarks()) {
            remarks.add(remark.text(units));
        }
        known(node, "now", level, study.now());
        if (study.use() != null) {
            known(node, "used", Told.use(study.quantity()), study.use());
        }
        if (study.change() != null) {
            known(node, "change", Told.use(study.quantity()), study.change());
        }
        if (study.range() != null) {
            AdviceJson.put(node, "least", Figure.exact(level, study.range().least()));
            AdviceJson.put(node, "most", Figure.exact(level, study.range().most()));
        }
        node.put("next_test", study.nextTest().toString());
        if (study.settling() != null) {
            ObjectNode settling = node.putObject("settling");
            settling.put("lever", study.settling().lever());
            settling.put("moved", study.settling().moved().toString());
            settling.put("until", study.settling().until().toString());
            settling.put("told_by_then", study.settling().told());
            settling.put("until_with_a_test_a_day", study.settling().daily().toString());
        }
        ArrayNode forks = node.putArray("forks");
        for (Fork fork : study.forks()) {
            ObjectNode one = forks.addObject();
            one.put("words", fork.words());
            AdviceJson.put(one, "dose", fork.dose());
            one.put("at", study.forksAt().toString());
            known(one, "level", level, fork.level());
            one.put("within_range_percent", 100 * fork.inRange());
        }
        ArrayNode steady = node.putArray("steadiness");
        for (Stability stability : study.stability()) {
            ObjectNode one = steady.addObject();
            one.put("days_d", stability.days());
            one.put("by_probe", stability.probed());
            known(one, "within_range", Measure.SHARE, stability.inRange());
            one.put(
                    "variation" + AdviceJson.suffix(level),
                    stability.variation() * level.unit(UnitSystem.METRIC).factor());
        }
        AdviceJson.sources(node, study.advice().sources());
        if (study.watch() != null) {
            ObjectNode probe = node.putObject("probe");
            probe.put("place", study.watch().probe().place());
            probe.put("method", study.watch().probe().method());
            probe.put("last_hour", study.watch().last().toString());
            probe.put("live", study.watch().live());
        }
        ArrayNode readings = node.putArray("readings");
        QuantityCourse course = study.course();
        for (QuantityCourse.Dot dot :
                course.within(course.now().minus(TOLD), course.to()).readings()) {
            ObjectNode one = readings.addObject();
            one.put("line", dot.line().toString());
            one.put("at", dot.at().toString());
            known(one, "read", level, new Known(dot.value(), dot.error()));
            one.put("method", dot.method().key());
            known(one, "expected", level, dot.expected());
            one.put("off_standard_errors", dot.off());
            one.put("set_aside", dot.setAside());
        }
    }

    private static void known(ObjectNode node, String name, Measure measure, Known known) {
        AdviceJson.put(node, name, Figure.about(measure, known.value(), known.standardError()));
    }
}
