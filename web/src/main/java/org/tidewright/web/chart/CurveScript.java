package org.tidewright.web.chart;

import java.io.StringWriter;
import java.util.List;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.json.JsonFactory;

/** The curves' samples and scales, as rehearse.js reads them. */
public final class CurveScript {
    private static final JsonFactory JSON = new JsonFactory();

    private CurveScript() {}

    public static String of(List<Curve> curves, TimeAxis time) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = JSON.createGenerator(ObjectWriteContext.empty(), text)) {
            json.writeStartObject();
            json.writeNumberProperty("length_s", time.seconds());
            json.writeNumberProperty("first_s", time.twoSpeeds() ? TimeAxis.FIRST : 0);
            json.writeNumberProperty("break_at", time.breakAt());
            json.writeNumberProperty("break_width", time.breakWidth());
            json.writeArrayPropertyStart("curves");
            for (Curve curve : curves) {
                curve(json, curve);
            }
            json.writeEndArray();
            json.writeEndObject();
        }
        return text.toString();
    }

    private static void curve(JsonGenerator json, Curve curve) {
        ValueAxis axis = ValueAxis.of(curve);
        json.writeStartObject();
        json.writeStringProperty("id", curve.id());
        json.writeStringProperty("title", curve.title());
        json.writeStringProperty("unit", curve.unit().symbol());
        json.writeNumberProperty("decimals", Math.max(1, curve.unit().decimals()));
        json.writeStringProperty("standard_error", curve.standardError());
        json.writeBooleanProperty("room", curve.id().equals(Curve.ROOM));
        json.writeNumberProperty("bottom", axis.low());
        json.writeNumberProperty("top", axis.high());
        array(json, "time_s", curve.time(), 10);
        array(json, "low", curve.low(), 1000);
        array(json, "middle", curve.middle(), 1000);
        array(json, "high", curve.high(), 1000);
        json.writeArrayPropertyStart("limits");
        for (Curve.Bound bound : curve.bounds()) {
            json.writeStartObject();
            json.writeStringProperty("words", bound.words());
            json.writeNumberProperty("value", bound.value());
            json.writeBooleanProperty("forbidden_below", bound.forbiddenBelow());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private static void array(JsonGenerator json, String name, double[] values, double parts) {
        json.writeArrayPropertyStart(name);
        for (double value : values) {
            if (Double.isFinite(value)) {
                json.writeNumber(Math.rint(value * parts) / parts);
            } else {
                json.writeNull();
            }
        }
        json.writeEndArray();
    }
}
