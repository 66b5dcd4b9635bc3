package org.tidewright.web.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.tidewright.web.drawing.Xml;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

class ReadingsChartTest {
    private static Document chart(
            List<ReadingsChart.Dot> dots,
            List<ReadingsChart.Stroke> strokes,
            List<List<Thinned.Column>> probe,
            ReadingsChart.@Nullable Settles settles,
            List<ReadingsChart.Step> doses,
            double today) {
        return Xml.parse(ReadingsChart.of(new ReadingsChart.Content(
                "told",
                dots,
                strokes,
                probe,
                List.of(),
                List.of(),
                List.of(),
                7,
                9,
                "range 7–9",
                settles,
                "doses bring, dKH/d",
                doses,
                today,
                List.of(0.0, 0.5, 1.0),
                List.of())));
    }

    private static Thinned.Column column(double at, double least, double most) {
        return new Thinned.Column(at, at, 1, least, (least + most) / 2, most);
    }

    @Test
    void aStrokeGoesFromTheLeastToTheMost() {
        Document chart = chart(
                List.of(),
                List.of(new ReadingsChart.Stroke(0.5, 7, 8, 9, "words")),
                List.of(),
                null,
                List.of(),
                Double.NaN);
        Element stroke = Xml.with(chart, "g", "class", "dot many").get(0);
        assertThat(stroke.getAttribute("data-words")).isEqualTo("words");
        // The range is the same two numbers, so its lines are the ends of the stroke, a pixel within.
        List<Element> range = Xml.with(chart, "line", "class", "range");
        String path = Xml.with(chart, "path", "class", "bar").get(0).getAttribute("d");
        int down = path.indexOf('V');
        assertThat(Double.parseDouble(path.substring("M0,".length(), down)))
                .isEqualTo(Double.parseDouble(range.get(1).getAttribute("y1")) - 1);
        assertThat(Double.parseDouble(path.substring(down + 1)))
                .isEqualTo(Double.parseDouble(range.get(0).getAttribute("y1")) + 1);
    }

    @Test
    void aProbeThatPausedIsDrawnInTwoBands() {
        Document chart = chart(
                List.of(),
                List.of(),
                List.of(List.of(column(0.1, 7, 8), column(0.2, 7, 8)), List.of(column(0.9, 7.5, 8))),
                null,
                List.of(),
                Double.NaN);
        assertThat(Xml.with(chart, "path", "class", "probe")).hasSize(2);
        assertThat(Xml.with(chart, "path", "class", "probe-mean")).hasSize(2);
    }

    @Test
    void todayIsMarkedOnlyWhereItIsOnTheChart() {
        assertThat(Xml.with(
                        chart(List.of(), List.of(), List.of(), null, List.of(), Double.NaN), "line", "class", "today"))
                .isEmpty();
        assertThat(Xml.with(chart(List.of(), List.of(), List.of(), null, List.of(), 0.8), "line", "class", "today"))
                .hasSize(1);
    }

    @Test
    void dosesThatWereMovedOftenAreToldWhereThereIsRoomTheLastOneAlways() {
        List<ReadingsChart.Step> steps = new ArrayList<>();
        for (int i = 0; i <= 20; i++) {
            steps.add(new ReadingsChart.Step(i / 20.0, i, "dose " + i));
        }
        Document chart = chart(List.of(), List.of(), List.of(), null, steps, Double.NaN);
        List<String> told = Xml.with(chart, "text", "class", "halo").stream()
                .map(Element::getTextContent)
                .filter(words -> words.startsWith("dose"))
                .toList();
        assertThat(told).contains("dose 20").hasSizeLessThan(9);
    }

    @Test
    void fewReadingsSetAsideAreNamedAndManyAreOnlyStruckThrough() {
        List<ReadingsChart.Dot> dots = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            dots.add(new ReadingsChart.Dot(i / 10.0, 8, 0.1, true, true, "words"));
        }
        assertThat(chart(dots, List.of(), List.of(), null, List.of(), 1)
                        .getDocumentElement()
                        .getTextContent())
                .contains("set aside");
        dots.add(new ReadingsChart.Dot(0.5, 8, 0.1, true, true, "words"));
        Document many = chart(dots, List.of(), List.of(), null, List.of(), 1);
        assertThat(many.getDocumentElement().getTextContent()).doesNotContain("set aside");
        assertThat(Xml.with(many, "path", "class", "struck")).hasSize(4);
    }
}
