package org.tidewright.web.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.tidewright.twin.rehearsal.Band;
import org.tidewright.web.drawing.Xml;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** Level lines, so that every position can be worked out by hand. */
class WeeksChartTest {
    private static Document chart(double asRun, @Nullable Double changed) {
        double[] days = new double[85];
        Arrays.setAll(days, i -> i);
        double[] base = new double[85];
        Arrays.fill(base, asRun);
        double[] other = null;
        if (changed != null) {
            other = new double[85];
            Arrays.fill(other, changed);
        }
        return Xml.parse(
                WeeksChart.of(new WeeksChart.Curves("Nitrate", "mg/L", 1, 2, 12, days, base, other, null, 84, false)));
    }

    /** From 12 down to 4 over a course of 8: the band's path begins at its high end and closes along its low one. */
    @Test
    void theDoubtIsDrawnFromItsHighToItsLowEnd() {
        double[] days = {0, 84};
        double[] eight = {8, 8};
        Band drawn = new Band(new double[] {4, 4}, eight, new double[] {12, 12});
        Document chart = Xml.parse(
                WeeksChart.of(new WeeksChart.Curves("Nitrate", "mg/L", 1, 0, 12, days, eight, null, drawn, 84, false)));
        String[] path = Xml.with(chart, "path", "class", "doubt")
                .get(0)
                .getAttribute("d")
                .split("[MLZ]", -1);
        double high = Double.parseDouble(path[1].split(",", -1)[1]);
        double low = Double.parseDouble(path[4].split(",", -1)[1]);
        // The upright scale is linear, and 8 lies half way between 4 and 12.
        assertThat((high + low) / 2).isCloseTo(height(chart, "curve"), offset(0.06));
        assertThat(high).isLessThan(low);
        assertThat(Xml.with(chart(12, 2.0), "path", "class", "doubt")).isEmpty();
    }

    private static double height(Document chart, String style) {
        String path = Xml.with(chart, "path", "class", style).get(0).getAttribute("d");
        return Double.parseDouble(path.substring(path.lastIndexOf(',') + 1));
    }

    @Test
    void theBandReachesFromItsLowToItsHighEnd() {
        Document chart = chart(12, 2.0);
        Element band = Xml.with(chart, "rect", "class", "target").get(0);
        double top = Double.parseDouble(band.getAttribute("y"));
        double tall = Double.parseDouble(band.getAttribute("height"));
        assertThat(top).isCloseTo(height(chart, "curve before"), offset(0.06));
        assertThat(top + tall).isCloseTo(height(chart, "curve"), offset(0.06));
    }

    @Test
    void theStartIsACircleAtTheStatedValue() {
        Document chart = chart(5, null);
        Element start = Xml.with(chart, "circle", "class", "reading").get(0);
        assertThat(start.getAttribute("cx")).isEqualTo("0%");
        assertThat(Double.parseDouble(start.getAttribute("cy"))).isCloseTo(height(chart, "curve"), offset(0.06));
    }

    @Test
    void itsLabelTellsTheResult() {
        assertThat(chart(5, null)
                        .getDocumentElement()
                        .getAttribute("aria-label")
                        .replace('\u00a0', ' '))
                .isEqualTo("Nitrate from 5.0 mg/L to 5.0 mg/L in twelve weeks as it is run.");
        assertThat(chart(5, 3.0).getDocumentElement().getAttribute("aria-label").replace('\u00a0', ' '))
                .endsWith("as it is run, to 3.0 mg/L with the change.");
    }

    @Test
    void namesOfCurvesThatEndTogetherDoNotCoverEachOther() {
        Document chart = chart(5, 5.0);
        double[] heights = Xml.with(chart, "text", "text-anchor", "end").stream()
                .filter(text -> text.getAttribute("class").contains("halo"))
                .mapToDouble(text -> Double.parseDouble(text.getAttribute("y")))
                .toArray();
        assertThat(heights).hasSize(2);
        assertThat(Math.abs(heights[0] - heights[1])).isGreaterThanOrEqualTo(14);
    }
}
