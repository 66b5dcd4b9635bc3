package org.tidewright.web.chart;

import static org.tidewright.web.chart.ValueAxis.HEIGHT;

import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.FigureText;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.rehearsal.Crossing;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.web.drawing.SvgWriter;

/** One curve over the time axis. */
public final class TraceChart {
    /** Width of the box that stretches; its own unit, not pixels. */
    private static final double BOX = 1000;

    private final Curve curve;
    private final TimeAxis time;
    private final ValueAxis value;
    private final UnitSystem units;
    private final SvgWriter svg = new SvgWriter();

    private TraceChart(Curve curve, TimeAxis time, UnitSystem units) {
        this.curve = curve;
        this.time = time;
        this.value = ValueAxis.of(curve);
        this.units = units;
    }

    /** The chart as an SVG element without a size of its own. */
    public static String of(Curve curve, TimeAxis time, UnitSystem units) {
        return new TraceChart(curve, time, units).drawn();
    }

    private String drawn() {
        svg.open("svg")
                .has("class", "trace-plot")
                .has("height", HEIGHT)
                .has("role", "img")
                .has("aria-label", told());
        grid();
        stretched();
        numbers();
        new LimitMarks(svg, curve, time, value, units).draw();
        wet();
        svg.open("line")
                .has("data-cursor", "")
                .has("class", "cursor")
                .has("x1", "0%")
                .has("x2", "0%")
                .has("y1", 0.0)
                .has("y2", HEIGHT)
                .close();
        svg.open("circle")
                .has("data-dot", "")
                .has("class", "dot")
                .has("r", 4.5)
                .has("cx", "0%")
                .has("cy", value.y(curve.middle()[0]))
                .close();
        return svg.close().finished();
    }

    private void grid() {
        if (time.twoSpeeds()) {
            svg.open("rect")
                    .has("class", "break")
                    .has("x", percent(time.breakAt()))
                    .has("width", percent(time.breakWidth()))
                    .has("y", 0.0)
                    .has("height", HEIGHT)
                    .close();
        }
        for (double tick : value.ticks()) {
            double y = value.y(tick);
            svg.open("line")
                    .has("class", "grid")
                    .has("x1", 0.0)
                    .has("x2", "100%")
                    .has("y1", y)
                    .has("y2", y)
                    .close();
        }
    }

    private void numbers() {
        for (double tick : value.ticks()) {
            svg.open("text")
                    .has("x", "100%")
                    .has("dx", 6.0)
                    .has("y", value.y(tick) + 4)
                    .has("class", "tick")
                    .text(FigureText.number(tick, value.decimals()))
                    .close();
        }
    }

    /** Band and curve, in a box that takes the width it is given. */
    private void stretched() {
        svg.open("svg")
                .has("viewBox", "0 0 1000 " + SvgWriter.number(HEIGHT))
                .has("preserveAspectRatio", "none")
                .has("width", "100%")
                .has("height", HEIGHT)
                .has("aria-hidden", "true");
        int last = shownSamples();
        StringBuilder band = new StringBuilder("M");
        for (int i = 0; i <= last; i++) {
            point(band, i, curve.high()[i], i == 0);
        }
        for (int i = last; i >= 0; i--) {
            point(band, i, curve.low()[i], false);
        }
        svg.open("path")
                .has("class", "band")
                .has("d", band.append('Z').toString())
                .close();
        StringBuilder line = new StringBuilder("M");
        for (int i = 0; i <= last; i++) {
            point(line, i, curve.middle()[i], i == 0);
        }
        svg.open("path").has("class", "curve").has("d", line.toString()).close();
        svg.close();
    }

    private int shownSamples() {
        int last = curve.time().length - 1;
        while (last > 0 && curve.time()[last] > time.seconds() + 1) {
            last--;
        }
        return last;
    }

    private void point(StringBuilder path, int i, double at, boolean first) {
        double held = Double.isNaN(at) ? curve.middle()[i] : at;
        if (!first) {
            path.append('L');
        }
        path.append(SvgWriter.number(BOX * time.position(curve.time()[i])))
                .append(',')
                .append(SvgWriter.number(value.y(held)));
    }

    /** For the room in the sump, the moment the floor gets wet. */
    private void wet() {
        if (!curve.id().equals(Curve.ROOM)) {
            return;
        }
        for (int i = 0; i < curve.middle().length; i++) {
            if (curve.middle()[i] < 0) {
                boolean left = time.position(curve.time()[i]) > 0.6;
                svg.open("text")
                        .has("class", "alarm halo")
                        .has("x", percent(time.position(curve.time()[i])))
                        .has("dx", left ? -8.0 : 8.0)
                        .has("y", value.y(0) - 8)
                        .has("text-anchor", left ? "end" : "start")
                        .text("the floor is wet from "
                                + FigureText.of(Figure.exact(Measure.DURATION, curve.time()[i]), units)
                                        .line())
                        .close();
                return;
            }
        }
    }

    /** The chart's result in words. */
    private String told() {
        StringBuilder text = new StringBuilder(curve.title());
        int last = shownSamples();
        text.append(": from ")
                .append(curve.told(curve.middle()[0]))
                .append(" to ")
                .append(curve.told(curve.middle()[last]));
        for (Curve.Bound bound : curve.bounds()) {
            Crossing met = bound.crossing();
            if (met != null) {
                text.append("; ").append(bound.words()).append(" at ").append(curve.told(bound.value()));
                text.append(
                        Double.isInfinite(met.after().value())
                                ? " not reached"
                                : " after " + FigureText.of(met.after(), units).line());
            }
        }
        return text.append('.').toString();
    }

    static String percent(double share) {
        return Math.round(share * 1e5) / 1e3 + "%";
    }
}
