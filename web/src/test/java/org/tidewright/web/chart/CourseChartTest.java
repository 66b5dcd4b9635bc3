package org.tidewright.web.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.web.drawing.Xml;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** A straight rise beside a level line, so that every position can be worked out by hand. */
class CourseChartTest {
    private static final double DAY = 86_400;

    private static Document chart() {
        CourseChart chart = new CourseChart(
                "ph",
                "pH <total>",
                "",
                2,
                new double[] {0, DAY / 2, DAY},
                new double[] {7.8, 7.9, 8.0},
                new double[] {7.9, 7.9, 7.9},
                List.of(new Curve.Bound("watch", 7.95, false, null)),
                List.of(new CourseChart.Shade(0.25, 0.75)),
                List.of(new CourseChart.Mark(0.5, "noon"), new CourseChart.Mark(0.1, "")));
        return Xml.parse(chart.svg(CourseScale.ofDay(), UnitSystem.METRIC));
    }

    @Test
    void theTwoLinesMeetWhereTheirValuesDo() {
        Document chart = chart();
        double[] tried = point(chart, "curve", 1);
        double[] beside = point(chart, "beside", 1);
        assertThat(tried).containsExactly(beside, offset(1e-9));
        assertThat(tried[0]).isEqualTo(500);
        // Upwards is less on a screen.
        assertThat(point(chart, "curve", 2)[1]).isLessThan(point(chart, "beside", 2)[1]);
    }

    @Test
    void litHoursAreShadedOverTheirShareOfTheDay() {
        Element lit = Xml.with(chart(), "rect", "class", "lit").get(0);
        assertThat(lit.getAttribute("x")).isEqualTo("25.0%");
        assertThat(lit.getAttribute("width")).isEqualTo("50.0%");
    }

    @Test
    void momentsAreALineWithWordsOrATriangle() {
        Document chart = chart();
        assertThat(Xml.with(chart, "line", "class", "moment").get(0).getAttribute("x1"))
                .isEqualTo("50.0%");
        assertThat(Xml.with(chart, "path", "class", "given")).hasSize(1);
    }

    @Test
    void theLabelTellsTheResult() {
        Element svg = chart().getDocumentElement();
        assertThat(svg.getAttribute("aria-label")).isEqualTo("pH <total>: from 7.80 to 8.00.");
        assertThat(svg.getAttribute("role")).isEqualTo("img");
    }

    @Test
    void aScaleOfDaysEndsOnItsLastDay() {
        CourseScale weeks = CourseScale.ofDays(60);
        assertThat(weeks.numbers())
                .extracting(TimeAxis.Label::words)
                .startsWith("day 0", "10")
                .endsWith("50", "day 60");
        assertThat(Xml.with(Xml.parse(weeks.svg()), "rect", "class", "bar-ink")).hasSize(15);
        // 72 days: no number so near the last that the two would touch.
        assertThat(CourseScale.ofDays(72).numbers())
                .extracting(TimeAxis.Label::words)
                .endsWith("60", "day 72");
    }

    private static double[] point(Document chart, String kind, int index) {
        String[] points = Xml.with(chart, "path", "class", kind)
                .get(0)
                .getAttribute("d")
                .substring(1)
                .split("L", -1);
        String[] both = points[index].split(",", -1);
        return new double[] {Double.parseDouble(both[0]), Double.parseDouble(both[1])};
    }
}
