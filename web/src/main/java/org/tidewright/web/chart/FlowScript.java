package org.tidewright.web.chart;

import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.tidewright.husbandry.advice.FigureText;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.nutrient.Element;
import org.tidewright.husbandry.nutrient.FlowPicture;
import org.tidewright.plan.model.UnitSystem;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.json.JsonFactory;

/** The flows of an element, as feed-and-export.js draws them: those too thin to see are left to the table. */
public final class FlowScript {
    private static final JsonFactory JSON = new JsonFactory();

    /** Share of all that comes in below which a flow is not drawn. */
    private static final double THIN = 0.004;

    private FlowScript() {}

    public static String of(FlowPicture picture, UnitSystem units) {
        List<FlowPicture.Flow> drawn = new ArrayList<>();
        List<FlowPicture.Node> nodes = new ArrayList<>();
        for (FlowPicture.Flow flow : picture.flows()) {
            if (flow.rate() >= THIN * picture.total()) {
                drawn.add(flow);
            }
        }
        for (FlowPicture.Node node : picture.nodes()) {
            if (drawn.stream()
                    .anyMatch(flow -> flow.from().equals(node) || flow.to().equals(node))) {
                nodes.add(node);
            }
        }
        StringWriter text = new StringWriter();
        try (JsonGenerator json = JSON.createGenerator(ObjectWriteContext.empty(), text)) {
            json.writeStartObject();
            json.writeArrayPropertyStart("nodes");
            for (FlowPicture.Node node : nodes) {
                json.writeStartObject();
                json.writeStringProperty("id", node.id());
                json.writeStringProperty("words", node.words());
                json.writeStringProperty("kind", node.kind().name().toLowerCase(Locale.ROOT));
                json.writeStringProperty(
                        "told", told(picture, Math.max(picture.into(node), picture.outOf(node)), units));
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeArrayPropertyStart("flows");
            for (FlowPicture.Flow flow : drawn) {
                json.writeStartObject();
                json.writeStringProperty("from", flow.from().id());
                json.writeStringProperty("to", flow.to().id());
                json.writeNumberProperty(
                        "g_per_d", flow.rate() * Measure.TURNOVER.unit(units).factor());
                json.writeStringProperty("told", told(picture, flow.rate(), units));
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeEndObject();
        }
        return text.toString();
    }

    private static String told(FlowPicture picture, double rate, UnitSystem units) {
        return told(picture.element(), rate, units) + "\u00a0"
                + Measure.TURNOVER.unit(units).symbol();
    }

    /** Thousandths of a gram of nitrogen, and of phosphorus, of which there is a tenth, one digit more. */
    public static String told(Element element, double rate, UnitSystem units) {
        double shown = Measure.TURNOVER.unit(units).shown(rate);
        return FigureText.number(shown, element == Element.NITROGEN ? 3 : 4);
    }
}
