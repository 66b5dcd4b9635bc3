package org.tidewright.web.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.tidewright.web.drawing.Xml;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** Straight lines of pH 8.2 and 7.6, so that every position can be worked out by hand. */
class AirChartTest {
    private static AirCurves curves(AirCurves.@Nullable Mark own) {
        double[] alkalinity = {4, 6.5, 9, 11.5, 14};
        return new AirCurves(
                alkalinity,
                List.of(
                        new AirCurves.Air(420, true, new double[] {8.2, 8.2, 8.2, 8.2, 8.2}),
                        new AirCurves.Air(1500, false, new double[] {7.6, 7.6, 7.6, 7.6, 7.6})),
                own);
    }

    private static Document chart(AirCurves.@Nullable Mark own) {
        return Xml.parse(AirChart.of(curves(own)));
    }

    private static double number(Element element, String attribute) {
        return Double.parseDouble(element.getAttribute(attribute).replace("%", ""));
    }

    @Test
    void thePointStandsWhereItsNumbersSay() {
        Document chart = chart(new AirCurves.Mark(8, 7.9, 8.2));
        Element own = Xml.with(chart, "circle", "class", "own").get(0);
        assertThat(number(own, "cx")).isEqualTo(40);
        // Half way between the two lines.
        double upper = line(chart, "air fresh");
        double lower = line(chart, "air");
        assertThat(number(own, "cy")).isCloseTo((upper + lower) / 2, offset(0.06));
        assertThat(number(Xml.with(chart, "circle", "class", "aim").get(0), "cy"))
                .isCloseTo(upper, offset(0.06));
    }

    /** Height of a level line. */
    private static double line(Document chart, String style) {
        String path = Xml.with(chart, "path", "class", style).get(0).getAttribute("d");
        return Double.parseDouble(path.substring(path.lastIndexOf(',') + 1));
    }

    @Test
    void withoutAWaterThereIsNoPoint() {
        assertThat(Xml.with(chart(null), "circle", "class", "own")).isEmpty();
        assertThat(chart(null).getDocumentElement().getAttribute("aria-label")).doesNotContain("Your water");
    }

    @Test
    void theAxisReachesEveryPoint() {
        for (double ph : new double[] {6.6, 9.4}) {
            Document chart = chart(new AirCurves.Mark(8, ph, 8.2));
            Element own = Xml.with(chart, "circle", "class", "own").get(0);
            assertThat(number(own, "cy")).isBetween(5.0, 325.0);
        }
    }

    @Test
    void theScaleIsANeatlineOfOneBarForEachDegree() {
        Document chart = chart(null);
        assertThat(Xml.with(chart, "rect", "class", "bar-ink")).hasSize(5);
        assertThat(Xml.with(chart, "rect", "class", "bar-paper")).hasSize(5);
    }

    @Test
    void namesOfCurvesThatEndTogetherStandApart() {
        List<AirCurves.Air> airs = new ArrayList<>();
        for (double ppm : new double[] {400, 420, 440}) {
            airs.add(new AirCurves.Air(ppm, ppm == 420, new double[] {8.0, 8.2}));
        }
        Document chart = Xml.parse(AirChart.of(new AirCurves(new double[] {4, 14}, airs, null)));
        List<Element> names = new ArrayList<>(Xml.with(chart, "text", "dx", "8"));
        assertThat(names).hasSize(3);
        for (int i = 1; i < names.size(); i++) {
            assertThat(number(names.get(i), "y") - number(names.get(i - 1), "y"))
                    .isGreaterThanOrEqualTo(14);
        }
    }

    @Test
    void saysItsResultInWords() {
        assertThat(chart(new AirCurves.Mark(8, 7.9, 8.2)).getDocumentElement().getAttribute("aria-label"))
                .contains("At 9 dKH it reads 8.20 in air of 420 ppm", "7.60 in air of 1\u202f500 ppm")
                .endsWith("Your water reads 7.90 and would read 8.20 in fresh air.");
    }

    @Test
    void theTableHoldsTheSameNumbersAtWholeDegrees() {
        assertThat(curves(null).heads()).containsExactly("420", "1\u202f500");
        assertThat(curves(null).rows())
                .containsExactly(
                        new AirCurves.Row("4", List.of("8.20", "7.60")),
                        new AirCurves.Row("9", List.of("8.20", "7.60")),
                        new AirCurves.Row("14", List.of("8.20", "7.60")));
    }
}
