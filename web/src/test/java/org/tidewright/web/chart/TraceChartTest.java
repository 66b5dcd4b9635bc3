package org.tidewright.web.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.limit.Limit;
import org.tidewright.husbandry.rehearsal.Crossing;
import org.tidewright.husbandry.rehearsal.Trace;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.twin.rehearsal.Band;
import org.tidewright.web.drawing.Xml;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** A straight fall from 25 to 20 °C in ten hours, so that every position can be worked out by hand. */
class TraceChartTest {
    private static final Limit LIMIT = new Limit("act", 22, true, "");
    private static final Trace TRACE = new Trace(
            "temperature",
            "Temperature, <display>",
            Measure.TEMPERATURE,
            new double[] {0, 18000, 36000},
            new Band(new double[] {25, 22, 19}, new double[] {25, 22.5, 20}, new double[] {25, 23, 21}),
            List.of(LIMIT, new Limit("harm", -40, true, "")));
    private static final Crossing AT_SIX_HOURS =
            new Crossing("temperature", LIMIT, Figure.between(Measure.DURATION, 21600, 18000, 27000), 1);

    private static Document chart(UnitSystem units) {
        Curve curve = Curve.of(TRACE, List.of(AT_SIX_HOURS), units);
        return Xml.parse(TraceChart.of(curve, new TimeAxis(10, false), units));
    }

    @Test
    void curveAndLimitMeetWhereTheCrossingIsMarked() {
        Document chart = chart(UnitSystem.METRIC);
        Element limit = Xml.with(chart, "line", "class", "limit").get(0);
        double limitY = Double.parseDouble(limit.getAttribute("y1"));
        String[] points = Xml.with(chart, "path", "class", "curve")
                .get(0)
                .getAttribute("d")
                .substring(1)
                .split("L", -1);
        double[] second = numbers(points[1]);
        double[] third = numbers(points[2]);
        double shareAtLimit = (22.5 - 22) / (22.5 - 20);
        assertThat(second[1] + shareAtLimit * (third[1] - second[1])).isCloseTo(limitY, offset(0.15));
        assertThat(second[0] + shareAtLimit * (third[0] - second[0])).isCloseTo(600, offset(0.15));
        assertThat(Xml.with(chart, "svg", "x", "60.0%")).hasSize(1);
    }

    private static double[] numbers(String point) {
        String[] parts = point.split(",", -1);
        return new double[] {Double.parseDouble(parts[0]), Double.parseDouble(parts[1])};
    }

    @Test
    void ticksStandOnTheForbiddenSide() {
        Document chart = chart(UnitSystem.METRIC);
        double limitY = Double.parseDouble(
                Xml.with(chart, "line", "class", "limit").get(0).getAttribute("y1"));
        Element ticks = Xml.with(chart, "rect", "fill", "url(#limit-ticks)").get(0);
        assertThat(Double.parseDouble(ticks.getAttribute("y"))).isCloseTo(limitY, offset(0.06));
    }

    @Test
    void aLimitFarFromAnythingThatHappensGetsNoLine() {
        assertThat(Xml.with(chart(UnitSystem.METRIC), "line", "class", "limit")).hasSize(1);
    }

    @Test
    void tellsTheReadersUnit() {
        assertThat(chart(UnitSystem.US).getDocumentElement().getTextContent()).contains("act under 71.6\u00a0°F");
        assertThat(chart(UnitSystem.METRIC).getDocumentElement().getTextContent())
                .contains("act under 22\u00a0°C");
    }

    @Test
    void saysItsResultInWords() {
        assertThat(chart(UnitSystem.METRIC).getDocumentElement().getAttribute("aria-label"))
                .startsWith("Temperature, <display>: from 25\u00a0°C to 20\u00a0°C")
                .contains("act at 22\u00a0°C after 6");
    }

    @Test
    void theTableHoldsTheSameNumbers() {
        Curve curve = Curve.of(TRACE, List.of(), UnitSystem.METRIC);
        CurveTable table = CurveTable.of(curve, new TimeAxis(10, false), UnitSystem.METRIC);
        assertThat(table.rows()).contains(new CurveTable.Row("5\u00a0h", "22.5", "22.0–23.0"));
        assertThat(table.rows().get(0)).isEqualTo(new CurveTable.Row("0\u00a0s", "25.0", ""));
        assertThat(table.rows().get(table.rows().size() - 1).middle()).isEqualTo("20.0");
    }
}
