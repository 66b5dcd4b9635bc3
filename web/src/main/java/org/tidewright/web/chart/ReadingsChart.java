package org.tidewright.web.chart;

import static org.tidewright.web.chart.TraceChart.percent;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.FigureText;
import org.tidewright.web.drawing.SvgWriter;

/**
 * A quantity over days or years: readings with the bar of their error, or strokes from the least of many to the most, what a
 * probe said as a band from least to most with its mean, the estimate with its band, what is to be expected, the range
 * it is held in, what settles, and the dose in a strip of its own below, on the same scale of time.
 */
public final class ReadingsChart {
    private static final double TOP = 34;
    /** Where what settles is named, above all readings. */
    private static final double LANE = 4;

    private static final double HEIGHT = 310;
    private static final double STRIP = 74;

    /** Of the strip, for its name, the triangles and the words over the steps. */
    private static final double STRIP_HEAD = 42;

    private static final double BAR = 7;
    private static final double FOOT = 34;

    /** Width of the box that stretches; its own unit, not pixels. */
    private static final double BOX = 1000;

    private static final double CAP = 4;
    private static final double DOT = 4;

    /** Of a reading that stands alone where others are strokes. */
    private static final double LONE_DOT = 2.2;

    /** Half of the width of a column that stands alone. */
    private static final double LONE = 0.002;

    /** Readings set aside that are told beside their mark. */
    private static final int FEW = 3;

    /** Share of the width that the words of a dose take. */
    private static final double WORDS = 0.13;

    /**
     * A reading.
     *
     * @param at share of the width
     * @param half of its bar, which holds nine of ten
     * @param square for what a photometer or a probe shows, a circle for what an eye judges
     * @param words it is told in
     */
    public record Dot(double at, double value, double half, boolean square, boolean setAside, String words) {}

    /** Many readings that stand too close to be drawn one by one. */
    public record Stroke(double at, double least, double mean, double most, String words) {}

    /** What a probe said, drawn already by its band, in words. */
    public record Told(double at, double value, String words) {}

    /** The estimate at a place, with the ends of its band. */
    public record Point(double at, double middle, double low, double high) {}

    /** A dose from a place on. */
    public record Step(double at, double amount, String words) {}

    /** A name on the scale of time. */
    public record Mark(double at, String words, boolean wideOnly) {}

    /** A stretch that settles. */
    public record Settles(double from, double to, String until) {}

    /**
     * What is drawn, in the reader's unit, places as shares of the width.
     *
     * @param least of the range; NaN for none
     * @param most of the range; NaN for none
     * @param strokes in place of dots where there are too many; dots are then those set aside
     * @param probe stretches in which a probe spoke without a break
     * @param told by the probe at some places
     * @param dosed what the steps of the doses are, with their unit
     * @param today place of now; NaN where it is not on the chart
     * @param bars places at which the bars of the scale change
     */
    public record Content(
            String label,
            List<Dot> dots,
            List<Stroke> strokes,
            List<List<Thinned.Column>> probe,
            List<Told> told,
            List<Point> past,
            List<Point> ahead,
            double least,
            double most,
            String range,
            @Nullable Settles settles,
            String dosed,
            List<Step> doses,
            double today,
            List<Double> bars,
            List<Mark> marks) {}

    private final Content content;
    private final SvgWriter svg = new SvgWriter();
    private final double low;
    private final double high;
    private final double strip;

    private ReadingsChart(Content content) {
        this.content = content;
        List<Double> shown = new ArrayList<>();
        content.dots().forEach(dot -> {
            shown.add(dot.value() - (dot.setAside() ? 0 : dot.half()));
            shown.add(dot.value() + (dot.setAside() ? 0 : dot.half()));
        });
        content.strokes().forEach(stroke -> {
            shown.add(stroke.least());
            shown.add(stroke.most());
        });
        content.probe().stream().flatMap(List::stream).forEach(column -> {
            shown.add(column.least());
            shown.add(column.most());
        });
        content.past().forEach(point -> {
            shown.add(point.low());
            shown.add(point.high());
        });
        content.ahead().forEach(point -> shown.add(point.middle()));
        if (!Double.isNaN(content.least())) {
            shown.add(content.least());
            shown.add(content.most());
        }
        double least = shown.stream().mapToDouble(value -> value).min().orElse(0);
        double most = shown.stream().mapToDouble(value -> value).max().orElse(1);
        double room = Math.max(0.06 * (most - least), 1e-9 + 1e-4 * Math.abs(most));
        low = least >= 0 ? Math.max(0, least - room) : least - room;
        high = most + room;
        strip = content.doses().isEmpty() ? 0 : STRIP;
    }

    /** The chart as an SVG element without a width of its own. */
    public static String of(Content content) {
        return new ReadingsChart(content).drawn();
    }

    private String drawn() {
        svg.open("svg")
                .has("class", "readings-chart")
                .has("height", HEIGHT + strip + BAR + FOOT)
                .has("role", "img")
                .has("aria-label", content.label());
        settles();
        levels();
        range();
        stretched();
        marks();
        doses();
        time();
        return svg.close().finished();
    }

    private void settles() {
        ReadingsChart.Settles settles = content.settles();
        if (settles == null) {
            return;
        }
        svg.open("rect")
                .has("class", "settles")
                .has("x", percent(settles.from()))
                .has("width", percent(settles.to() - settles.from()))
                .has("y", LANE)
                .has("height", HEIGHT + strip - LANE)
                .close();
        // Beside its left edge, or before its right one where that would run out of the sheet.
        boolean late = settles.from() > 0.5;
        svg.open("text")
                .has("class", "amber strong")
                .has("x", percent(settles.from()))
                .has("dx", late ? -6.0 : 6.0)
                .has("text-anchor", late ? "end" : "start")
                .has("y", LANE + 12)
                .text("settling until " + settles.until())
                .close();
    }

    private void levels() {
        double step = ValueAxis.step(high - low);
        int decimals = Math.max(0, (int) -Math.floor(Math.log10(step) + 1e-9));
        for (double at = Math.ceil(low / step) * step; at <= high + 1e-9; at += step) {
            line("grid", 0, 1, y(at), y(at));
            svg.open("text")
                    .has("class", "tick")
                    .has("x", 0.0)
                    .has("dx", -8.0)
                    .has("y", y(at) + 4)
                    .has("text-anchor", "end")
                    .text(FigureText.number(at, decimals))
                    .close();
        }
    }

    private void range() {
        if (Double.isNaN(content.least())) {
            return;
        }
        line("range", 0, 1, y(content.least()), y(content.least()));
        line("range", 0, 1, y(content.most()), y(content.most()));
        svg.open("text")
                .has("class", "halo")
                .has("x", 0.0)
                .has("dx", 6.0)
                .has("y", y(content.most()) - 6)
                .text(content.range())
                .close();
    }

    private void stretched() {
        svg.open("svg")
                .has("viewBox", "0 0 1000 " + SvgWriter.number(HEIGHT))
                .has("preserveAspectRatio", "none")
                .has("width", "100%")
                .has("height", HEIGHT)
                .has("aria-hidden", "true");
        band("expected", content.ahead());
        band("doubt", content.past());
        content.probe().forEach(this::probe);
        curve("curve", content.past());
        curve("curve ahead", content.ahead());
        svg.close();
    }

    private void band(String classes, List<Point> points) {
        StringBuilder path = new StringBuilder();
        for (Point point : points) {
            step(path, point.at(), point.high());
        }
        for (int i = points.size() - 1; i >= 0; i--) {
            step(path, points.get(i).at(), points.get(i).low());
        }
        if (path.length() > 0) {
            svg.open("path")
                    .has("class", classes)
                    .has("d", path.append('Z').toString())
                    .close();
        }
    }

    private void curve(String classes, List<Point> points) {
        StringBuilder path = new StringBuilder();
        for (Point point : points) {
            step(path, point.at(), point.middle());
        }
        if (path.length() > 0) {
            svg.open("path").has("class", classes).has("d", path.toString()).close();
        }
    }

    /** A band from least to most, and a line through the means; a lone column is widened to be seen. */
    private void probe(List<Thinned.Column> columns) {
        StringBuilder band = new StringBuilder();
        StringBuilder mean = new StringBuilder();
        Thinned.Column first = columns.get(0);
        double widened = columns.size() == 1 ? LONE : 0;
        step(band, first.at() - widened, first.most());
        columns.forEach(column -> step(band, column.at() + widened, column.most()));
        for (int i = columns.size() - 1; i >= 0; i--) {
            step(band, columns.get(i).at() + widened, columns.get(i).least());
        }
        step(band, first.at() - widened, first.least());
        step(mean, first.at() - widened, first.mean());
        columns.forEach(column -> step(mean, column.at() + widened, column.mean()));
        svg.open("path")
                .has("class", "probe")
                .has("d", band.append('Z').toString())
                .close();
        svg.open("path").has("class", "probe-mean").has("d", mean.toString()).close();
    }

    /** In order of place, as keys step through them. */
    private void marks() {
        TreeMap<Double, List<Runnable>> marks = new TreeMap<>();
        // What is struck through says so by itself where there is no room for the words.
        boolean named = content.dots().stream().filter(Dot::setAside).count() <= FEW;
        content.dots()
                .forEach(dot -> marks.computeIfAbsent(dot.at(), none -> new ArrayList<>())
                        .add(() -> dot(dot, named)));
        content.strokes()
                .forEach(stroke -> marks.computeIfAbsent(stroke.at(), none -> new ArrayList<>())
                        .add(() -> stroke(stroke)));
        content.told()
                .forEach(told -> marks.computeIfAbsent(told.at(), none -> new ArrayList<>())
                        .add(() -> told(told)));
        marks.values().forEach(here -> here.forEach(Runnable::run));
    }

    private void stroke(Stroke stroke) {
        svg.open("g").has("class", "dot many").has("data-words", stroke.words());
        svg.open("svg").has("x", percent(stroke.at())).has("y", 0.0).has("overflow", "visible");
        if (stroke.least() == stroke.most()) {
            svg.open("circle")
                    .has("class", "mark")
                    .has("cx", 0.0)
                    .has("cy", y(stroke.mean()))
                    .has("r", LONE_DOT)
                    .close();
            svg.close().close();
            return;
        }
        double upper = y(stroke.most()) - 1;
        double lower = y(stroke.least()) + 1;
        svg.open("path")
                .has("class", "bar")
                .has("d", "M0," + SvgWriter.number(upper) + "V" + SvgWriter.number(lower))
                .close();
        svg.open("path")
                .has("class", "mark")
                .has("d", "M-2.5," + SvgWriter.number(y(stroke.mean())) + "h5")
                .close();
        svg.close().close();
    }

    /** Seen only while it is the one that is told. */
    private void told(Told told) {
        svg.open("g").has("class", "dot told").has("data-words", told.words());
        svg.open("circle")
                .has("class", "mark")
                .has("cx", percent(told.at()))
                .has("cy", y(told.value()))
                .has("r", DOT)
                .close();
        svg.close();
    }

    private void step(StringBuilder path, double at, double value) {
        path.append(path.length() == 0 ? 'M' : 'L')
                .append(SvgWriter.number(BOX * at))
                .append(',')
                .append(SvgWriter.number(y(value)));
    }

    private void dot(Dot dot, boolean named) {
        svg.open("g").has("class", dot.setAside() ? "dot aside" : "dot").has("data-words", dot.words());
        svg.open("svg").has("x", percent(dot.at())).has("y", 0.0).has("overflow", "visible");
        double upper = y(dot.value() + dot.half());
        double lower = y(dot.value() - dot.half());
        svg.open("path")
                .has("class", "bar")
                .has(
                        "d",
                        "M0," + SvgWriter.number(upper) + "V" + SvgWriter.number(lower)
                                + (dot.square() ? "" : cap(upper) + cap(lower)))
                .close();
        double y = y(dot.value());
        if (dot.square()) {
            svg.open("rect")
                    .has("class", "mark")
                    .has("x", -DOT + 0.5)
                    .has("y", y - DOT + 0.5)
                    .has("width", 2 * DOT - 1)
                    .has("height", 2 * DOT - 1)
                    .close();
        } else {
            svg.open("circle")
                    .has("class", "mark")
                    .has("cx", 0.0)
                    .has("cy", y)
                    .has("r", DOT)
                    .close();
        }
        if (dot.setAside()) {
            svg.open("path")
                    .has("class", "struck")
                    .has("d", "M-7," + SvgWriter.number(y + 7) + "l14,-14")
                    .close();
        }
        if (dot.setAside() && named) {
            boolean late = dot.at() > 0.85;
            svg.open("text")
                    .has("class", "halo")
                    .has("x", late ? -11.0 : 11.0)
                    .has("text-anchor", late ? "end" : "start")
                    .has("y", y + 4)
                    .text("set aside")
                    .close();
        }
        svg.close().close();
    }

    private static String cap(double y) {
        return "M" + SvgWriter.number(-CAP) + "," + SvgWriter.number(y) + "h" + SvgWriter.number(2 * CAP);
    }

    /** The dose as a line of steps over its strip, with a triangle where it was moved. */
    private void doses() {
        if (content.doses().isEmpty()) {
            return;
        }
        double most = content.doses().stream().mapToDouble(Step::amount).max().orElse(1);
        double floor = HEIGHT + strip;
        svg.open("text")
                .has("class", "tick")
                .has("x", 0.0)
                .has("y", HEIGHT + 13)
                .text(content.dosed())
                .close();
        Set<Step> named = named(content.doses());
        for (int i = 0; i < content.doses().size(); i++) {
            Step step = content.doses().get(i);
            double to =
                    i + 1 < content.doses().size() ? content.doses().get(i + 1).at() : 1;
            double y = floor - 4 - (STRIP - STRIP_HEAD) * (most > 0 ? step.amount() / most : 0);
            svg.open("rect")
                    .has("class", "dosed")
                    .has("x", percent(step.at()))
                    .has("width", percent(Math.max(0, to - step.at())))
                    .has("y", y)
                    .has("height", floor - y)
                    .close();
            line("dose", step.at(), to, y, y);
            if (i > 0) {
                svg.open("svg").has("x", percent(step.at())).has("y", 0.0).has("overflow", "visible");
                svg.open("path")
                        .has("class", "moved")
                        .has("d", "M0," + SvgWriter.number(HEIGHT + 6) + "l-5,9h10z")
                        .close();
                svg.close();
            }
            if (!named.contains(step)) {
                continue;
            }
            boolean late = step.at() > 0.85;
            svg.open("text")
                    .has("class", "halo")
                    .has("x", percent(step.at()))
                    .has("dx", late ? -8.0 : 9.0)
                    .has("text-anchor", late ? "end" : "start")
                    .has("y", y - 5)
                    .text(step.words())
                    .close();
        }
        line("floor", 0, 1, floor, floor);
    }

    /** Those whose words have room, the last one first. */
    private static Set<Step> named(List<Step> steps) {
        Set<Step> named = new HashSet<>();
        double next = Double.POSITIVE_INFINITY;
        for (int i = steps.size() - 1; i >= 0; i--) {
            if (next - steps.get(i).at() >= WORDS || next > 1) {
                named.add(steps.get(i));
                next = steps.get(i).at();
            }
        }
        return named;
    }

    private void time() {
        double y = HEIGHT + strip + 4;
        for (int i = 0; i + 1 < content.bars().size(); i++) {
            double from = content.bars().get(i);
            svg.open("rect")
                    .has("class", i % 2 == 0 ? "bar-ink" : "bar-paper")
                    .has("x", percent(from))
                    .has("width", percent(content.bars().get(i + 1) - from))
                    .has("y", y)
                    .has("height", BAR)
                    .close();
        }
        for (Mark mark : content.marks()) {
            boolean today = mark.at() == content.today();
            svg.open("text")
                    .has("class", today ? "strong" : mark.wideOnly() ? "tick wide-only" : "tick")
                    .has("x", percent(mark.at()))
                    .has("y", y + BAR + 16)
                    .has("text-anchor", mark.at() < 0.03 ? "start" : mark.at() > 0.97 ? "end" : "middle")
                    .text(mark.words())
                    .close();
        }
        if (Double.isNaN(content.today())) {
            return;
        }
        line("today", content.today(), content.today(), TOP + 6, y - 2);
        svg.open("svg").has("x", percent(content.today())).has("y", 0.0).has("overflow", "visible");
        svg.open("path")
                .has("class", "now")
                .has("d", "M-7," + SvgWriter.number(y - 9) + "h14l-7,10z")
                .close();
        svg.close();
    }

    private void line(String classes, double from, double to, double y1, double y2) {
        svg.open("line")
                .has("class", classes)
                .has("x1", percent(from))
                .has("x2", percent(to))
                .has("y1", y1)
                .has("y2", y2)
                .close();
    }

    private double y(double value) {
        double held = Math.max(low, Math.min(high, value));
        return TOP + (HEIGHT - TOP - 8) * (1 - (held - low) / (high - low));
    }
}
