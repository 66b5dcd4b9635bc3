package org.tidewright.web.drawing;

import java.io.StringWriter;
import java.util.function.IntToDoubleFunction;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.twin.rehearsal.WaterMovement;
import org.tidewright.twin.rehearsal.WaterMovement.Vessel;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.json.JsonFactory;

/**
 * The samples of a movement, as drawing.js reads them: levels in millimetres, volumes in the reader's unit, and for each
 * pipe only which way it runs.
 */
public final class WaterScript {
    private static final JsonFactory JSON = new JsonFactory();

    private WaterScript() {}

    /** The movement as a JSON object. */
    public static String of(Plan plan, WaterMovement movement, UnitSystem units) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = JSON.createGenerator(ObjectWriteContext.empty(), text)) {
            int samples = movement.time().length;
            json.writeStartObject();
            array(json, "time_s", samples, i -> movement.time()[i], 100);
            Measure.Unit level = Measure.LEVEL.unit(units);
            json.writeObjectPropertyStart("level_unit");
            json.writeStringProperty("symbol", level.symbol());
            json.writeNumberProperty("per_mm", level.factor() / 1000);
            json.writeNumberProperty("decimals", level.decimals());
            json.writeEndObject();
            Measure.Unit volume = Measure.VOLUME.unit(units);
            json.writeStringProperty("volume_unit", volume.symbol());
            json.writeNumberProperty("litres_per_volume_unit", 1000 / volume.factor());
            if (plan.sump() != null) {
                json.writeNumberProperty(
                        "rim_mm", Math.round(Area.mm(plan.sump().height()) * 10) / 10.0);
            }
            json.writeObjectPropertyStart("levels_mm");
            for (Vessel vessel : movement.vessels()) {
                if (Double.isFinite(vessel.level()[0])) {
                    array(json, WaterKeys.of(vessel, plan), samples, i -> 1000 * vessel.level()[i], 10);
                }
            }
            json.writeEndObject();
            json.writeObjectPropertyStart("volumes");
            for (Vessel vessel : movement.vessels()) {
                array(json, WaterKeys.of(vessel, plan), samples, i -> volume.shown(vessel.volume()[i]), 1000);
            }
            json.writeEndObject();
            json.writeObjectPropertyStart("directions");
            for (String key : WaterKeys.flows(plan)) {
                array(json, key, samples, i -> Math.signum(new WaterLevels(plan, movement, i).flow(key)), 1);
            }
            json.writeEndObject();
            json.writeEndObject();
        }
        return text.toString();
    }

    private static void array(JsonGenerator json, String name, int length, IntToDoubleFunction values, double parts) {
        json.writeArrayPropertyStart(name);
        for (int i = 0; i < length; i++) {
            double value = values.applyAsDouble(i);
            if (!Double.isFinite(value)) {
                json.writeNull();
                continue;
            }
            double rounded = Math.rint(value * parts) / parts;
            if (rounded == Math.rint(rounded)) {
                json.writeNumber((long) rounded);
            } else {
                json.writeNumber(rounded);
            }
        }
        json.writeEndArray();
    }
}
