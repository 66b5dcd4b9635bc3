package org.tidewright.husbandry.json;

import java.util.List;
import org.tidewright.husbandry.advice.Assumption;
import org.tidewright.husbandry.advice.Doubt;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.advice.Source;
import org.tidewright.plan.model.UnitSystem;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The parts that all advice shares. */
final class AdviceJson {
    static final JsonMapper JSON = JsonMapper.builder().build();

    private static final double SECONDS_PER_HOUR = 3600;

    private AdviceJson() {}

    /** A figure as {@code name_unit}, with {@code name_standard_error_unit} or {@code name_low_unit}, {@code _high_}. */
    static void put(ObjectNode node, String name, Figure figure) {
        String suffix = suffix(figure.measure());
        putNumber(node, name + suffix, shown(figure.measure(), figure.value()));
        if (figure.doubt() instanceof Doubt.StandardError error) {
            double size = shown(figure.measure(), error.size()) - shown(figure.measure(), 0);
            putNumber(node, name + "_standard_error" + suffix, size);
        } else if (figure.doubt() instanceof Doubt.Range range) {
            putNumber(node, name + "_low" + suffix, shown(figure.measure(), range.low()));
            putNumber(node, name + "_high" + suffix, shown(figure.measure(), range.high()));
        }
    }

    /** An infinite or unknown number is null: JSON has neither. */
    static void putNumber(ObjectNode node, String name, double value) {
        if (Double.isFinite(value)) {
            node.put(name, value);
        } else {
            node.putNull(name);
        }
    }

    static void putNumbers(ObjectNode node, String name, Measure measure, double[] values) {
        ArrayNode array = node.putArray(name + suffix(measure));
        for (double value : values) {
            double shown = shown(measure, value);
            if (Double.isFinite(shown)) {
                array.add(shown);
            } else {
                array.addNull();
            }
        }
    }

    /** Spans of time are told in hours. */
    private static double shown(Measure measure, double value) {
        return measure == Measure.DURATION
                ? value / SECONDS_PER_HOUR
                : measure.unit(UnitSystem.METRIC).shown(value);
    }

    static String suffix(Measure measure) {
        if (measure == Measure.DURATION) {
            return "_h";
        }
        String suffix = measure.unit(UnitSystem.METRIC).suffix();
        return suffix.isEmpty() ? "" : "_" + suffix;
    }

    static void sources(ObjectNode node, List<Source> sources) {
        ArrayNode array = node.putArray("sources");
        for (Source source : sources) {
            array.addObject()
                    .put("key", source.key())
                    .put("what", source.what())
                    .put("basis", source.basis().words())
                    .put("detail", source.detail());
        }
    }

    static void assumptions(ObjectNode node, List<Assumption> assumptions) {
        ArrayNode array = node.putArray("assumptions");
        for (Assumption assumption : assumptions) {
            ObjectNode entry = array.addObject();
            entry.put("name", assumption.name());
            put(entry, "value", assumption.figure());
            entry.put("basis", assumption.basis().words());
            entry.put("detail", assumption.detail());
        }
    }

    static void cautions(ObjectNode node, List<String> cautions) {
        ArrayNode array = node.putArray("cautions");
        cautions.forEach(array::add);
    }

    static String text(ObjectNode node) {
        return JSON.writerWithDefaultPrettyPrinter().writeValueAsString(node);
    }
}
