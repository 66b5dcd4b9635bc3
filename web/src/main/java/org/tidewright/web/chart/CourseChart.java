package org.tidewright.web.chart;

import static org.tidewright.web.chart.ValueAxis.HEIGHT;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.FigureText;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.web.drawing.SvgWriter;

/**
 * One quantity in two courses over the same time: what is tried as a curve, what it is compared with dotted.
 *
 * @param unit symbol, empty for a plain number
 * @param tried values in that unit
 * @param beside values of the other course; null for none
 * @param bounds what it should not pass
 * @param lit spans to shade, as shares of the axis
 * @param marks moments worth a sign
 */
public record CourseChart(
        String id,
        String title,
        String unit,
        int decimals,
        double[] time,
        double[] tried,
        double @Nullable [] beside,
        List<Curve.Bound> bounds,
        List<Shade> lit,
        List<Mark> marks) {
    private static final double BOX = 1000;

    /** A span that is shaded. */
    public record Shade(double from, double to) {}

    /**
     * A moment.
     *
     * @param at as a share of the axis
     * @param words beside an upright line; empty for a small triangle at the foot
     */
    public record Mark(double at, String words) {}

    /** The chart as an SVG element without a size of its own. */
    public String svg(CourseScale scale, UnitSystem units) {
        TimeAxis axis = scale.axis();
        Curve curve = curve();
        ValueAxis value = ValueAxis.of(curve);
        SvgWriter svg = new SvgWriter();
        svg.open("svg")
                .has("class", "trace-plot")
                .has("height", HEIGHT)
                .has("role", "img")
                .has("aria-label", told());
        for (Shade span : lit) {
            svg.open("rect")
                    .has("class", "lit")
                    .has("x", TraceChart.percent(span.from()))
                    .has("width", TraceChart.percent(span.to() - span.from()))
                    .has("y", 0.0)
                    .has("height", HEIGHT)
                    .close();
        }
        for (double tick : value.ticks()) {
            svg.open("line")
                    .has("class", "grid")
                    .has("x1", 0.0)
                    .has("x2", "100%")
                    .has("y1", value.y(tick))
                    .has("y2", value.y(tick))
                    .close();
        }
        svg.open("svg")
                .has("viewBox", "0 0 1000 " + SvgWriter.number(HEIGHT))
                .has("preserveAspectRatio", "none")
                .has("width", "100%")
                .has("height", HEIGHT)
                .has("aria-hidden", "true");
        if (beside != null) {
            line(svg, "beside", beside, axis, value);
        }
        line(svg, "curve", tried, axis, value);
        svg.close();
        for (double tick : value.ticks()) {
            svg.open("text")
                    .has("x", "100%")
                    .has("dx", 6.0)
                    .has("y", value.y(tick) + 4)
                    .has("class", "tick")
                    .text(FigureText.number(tick, value.decimals()))
                    .close();
        }
        new LimitMarks(svg, curve, axis, value, units).draw();
        marks.forEach(mark -> mark(svg, mark));
        return svg.close().finished();
    }

    private static void mark(SvgWriter svg, Mark mark) {
        String x = TraceChart.percent(mark.at());
        if (mark.words().isEmpty()) {
            svg.open("svg").has("x", x).has("y", HEIGHT).has("overflow", "visible");
            svg.open("path")
                    .has("class", "given")
                    .has("d", "M-4,0h8l-4,-7z")
                    .close()
                    .close();
            return;
        }
        svg.open("line")
                .has("class", "moment")
                .has("x1", x)
                .has("x2", x)
                .has("y1", 0.0)
                .has("y2", HEIGHT)
                .close();
        boolean left = mark.at() > 0.7;
        svg.open("text")
                .has("class", "halo strong")
                .has("x", x)
                .has("dx", left ? -6.0 : 6.0)
                .has("y", 14.0)
                .has("text-anchor", left ? "end" : "start")
                .text(mark.words())
                .close();
    }

    private void line(SvgWriter svg, String kind, double[] values, TimeAxis axis, ValueAxis value) {
        StringBuilder path = new StringBuilder("M");
        for (int i = 0; i < time.length; i++) {
            path.append(i == 0 ? "" : "L")
                    .append(SvgWriter.number(BOX * axis.position(time[i])))
                    .append(',')
                    .append(SvgWriter.number(value.y(values[i])));
        }
        svg.open("path").has("class", kind).has("d", path.toString()).close();
    }

    /** What of both the upright scale must hold. */
    private Curve curve() {
        double[] low = tried.clone();
        double[] high = tried.clone();
        if (beside != null) {
            for (int i = 0; i < low.length; i++) {
                low[i] = Math.min(low[i], beside[i]);
                high[i] = Math.max(high[i], beside[i]);
            }
        }
        return new Curve(id, title, new Measure.Unit(unit, "", 1, 0, decimals), time, low, tried, high, bounds, "");
    }

    private String told() {
        double least = tried[0];
        double most = tried[0];
        for (double each : tried) {
            least = Math.min(least, each);
            most = Math.max(most, each);
        }
        String symbol = unit.isEmpty() ? "" : " " + unit;
        return title + ": from " + FigureText.number(least, decimals) + " to " + FigureText.number(most, decimals)
                + symbol + ".";
    }
}
