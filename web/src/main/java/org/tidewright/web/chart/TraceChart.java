package org.tidewright.web.chart;

import static org.tidewright.web.chart.ValueAxis.HEIGHT;

import org.tidewright.husbandry.advice.Doubt;
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
        svg.open("svg", "class", "trace-plot", "height", HEIGHT, "role", "img", "aria-label", told());
        ticks();
        stretched();
        double before = Double.NEGATIVE_INFINITY;
        for (Curve.Bound bound : curve.bounds()) {
            if (value.shows(bound.value())) {
                // Two limits near each other name themselves side by side.
                bound(bound, Math.abs(value.y(bound.value()) - before) < 36);
                before = value.y(bound.value());
            }
        }
        for (Curve.Bound bound : curve.bounds()) {
            if (bound.crossing() != null && value.shows(bound.value())) {
                crossing(bound, bound.crossing());
            }
        }
        wet();
        svg.leaf("line", "data-cursor", "", "class", "cursor", "x1", "0%", "x2", "0%", "y1", 0.0, "y2", HEIGHT);
        svg.leaf("circle", "data-dot", "", "class", "dot", "r", 4.5, "cx", "0%", "cy", value.y(curve.middle()[0]));
        return svg.close().finished();
    }

    private void ticks() {
        if (time.twoSpeeds()) {
            svg.leaf(
                    "rect",
                    "class",
                    "break",
                    "x",
                    percent(time.breakAt()),
                    "width",
                    percent(time.breakWidth()),
                    "y",
                    0.0,
                    "height",
                    HEIGHT);
        }
        for (double tick : value.ticks()) {
            double y = value.y(tick);
            svg.leaf("line", "class", "grid", "x1", 0.0, "x2", "100%", "y1", y, "y2", y);
            boolean atLimit = curve.bounds().stream()
                    .filter(bound -> value.shows(bound.value()) && bound.value() != tick)
                    .anyMatch(bound -> Math.abs(value.y(bound.value()) - (y - 8)) < 11);
            if (atLimit) {
                continue;
            }
            svg.words(
                    "text",
                    FigureText.number(tick, value.decimals()),
                    "x",
                    "100%",
                    "dx",
                    -2.0,
                    "y",
                    y - 4,
                    "text-anchor",
                    "end",
                    "class",
                    "tick halo");
        }
    }

    /** Band and curve, in a box that takes the width it is given. */
    private void stretched() {
        svg.open(
                "svg",
                "viewBox",
                "0 0 1000 " + SvgWriter.number(HEIGHT),
                "preserveAspectRatio",
                "none",
                "width",
                "100%",
                "height",
                HEIGHT,
                "aria-hidden",
                "true");
        int last = shownSamples();
        StringBuilder band = new StringBuilder("M");
        for (int i = 0; i <= last; i++) {
            point(band, i, curve.high()[i], i == 0);
        }
        for (int i = last; i >= 0; i--) {
            point(band, i, curve.low()[i], false);
        }
        svg.leaf("path", "class", "band", "d", band.append('Z'));
        StringBuilder line = new StringBuilder("M");
        for (int i = 0; i <= last; i++) {
            point(line, i, curve.middle()[i], i == 0);
        }
        svg.leaf("path", "class", "curve", "d", line);
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

    private void bound(Curve.Bound bound, boolean besideAnother) {
        double y = value.y(bound.value());
        svg.leaf("line", "class", "limit", "x1", 0.0, "x2", "100%", "y1", y, "y2", y);
        svg.leaf(
                "rect",
                "x",
                0.0,
                "width",
                "100%",
                "y",
                bound.forbiddenBelow() ? y : y - 6,
                "height",
                6.0,
                "fill",
                "url(#limit-ticks)");
        boolean room = curve.id().equals(Curve.ROOM);
        String words = room
                ? "limit: the rim"
                : bound.words() + (bound.forbiddenBelow() ? " under " : " over ") + told(bound.value());
        // On the forbidden side where there is room, so that the curve passes on the other.
        boolean under = bound.forbiddenBelow() && !room && y < HEIGHT - 22;
        svg.words("text", words, "x", besideAnother ? 140.0 : 4.0, "y", under ? y + 18 : y - 9, "class", "halo");
    }

    /** When the limit is met: a bar from the 5th to the 95th of 100 draws, the middle a diamond. */
    private void crossing(Curve.Bound bound, Crossing crossing) {
        if (!(crossing.after().doubt() instanceof Doubt.Range range) || !(range.low() < time.seconds())) {
            return;
        }
        double y = value.y(bound.value());
        double from = time.position(range.low());
        double to = time.position(Math.min(time.seconds(), range.high()));
        svg.leaf("line", "class", "reach", "x1", percent(from), "x2", percent(to), "y1", y, "y2", y);
        svg.leaf("line", "class", "reach", "x1", percent(from), "x2", percent(from), "y1", y - 5, "y2", y + 5);
        if (range.high() <= time.seconds()) {
            svg.leaf("line", "class", "reach", "x1", percent(to), "x2", percent(to), "y1", y - 5, "y2", y + 5);
        }
        if (!(crossing.after().value() <= time.seconds())) {
            return;
        }
        double middle = time.position(crossing.after().value());
        svg.open("svg", "x", percent(middle), "y", y, "overflow", "visible");
        svg.leaf("path", "class", "met", "d", "M-6,0l6,-6 6,6 -6,6z").close();
        boolean left = to > 0.84;
        FigureText text = FigureText.of(crossing.after(), units);
        svg.open(
                "text",
                "class",
                "halo strong",
                "x",
                percent(left ? from : to),
                "dx",
                left ? -8.0 : 8.0,
                "y",
                left ? Math.min(HEIGHT - 4, y + 20) : Math.max(14, y - 7),
                "text-anchor",
                left ? "end" : "start");
        svg.text(text.value() + "\u00a0" + text.unit());
        svg.words("tspan", " " + text.doubt(), "class", "range");
        svg.close();
    }

    /** For the room in the sump, the moment the floor gets wet. */
    private void wet() {
        if (!curve.id().equals(Curve.ROOM)) {
            return;
        }
        for (int i = 0; i < curve.middle().length; i++) {
            if (curve.middle()[i] < 0) {
                boolean left = time.position(curve.time()[i]) > 0.6;
                svg.words(
                        "text",
                        "the floor is wet from "
                                + FigureText.of(Figure.exact(Measure.DURATION, curve.time()[i]), units)
                                        .line(),
                        "class",
                        "alarm halo",
                        "x",
                        percent(time.position(curve.time()[i])),
                        "dx",
                        left ? -8.0 : 8.0,
                        "y",
                        value.y(0) - 8,
                        "text-anchor",
                        left ? "end" : "start");
                return;
            }
        }
    }

    private String told(double shown) {
        String number = FigureText.number(
                shown,
                Math.abs(shown - Math.rint(shown)) < 1e-6 ? 0 : curve.unit().decimals());
        return number + "\u00a0" + curve.unit().symbol();
    }

    /** The chart's result in words. */
    private String told() {
        StringBuilder text = new StringBuilder(curve.title());
        int last = shownSamples();
        text.append(": from ").append(told(curve.middle()[0])).append(" to ").append(told(curve.middle()[last]));
        for (Curve.Bound bound : curve.bounds()) {
            Crossing met = bound.crossing();
            if (met != null) {
                text.append("; ").append(bound.words()).append(" at ").append(told(bound.value()));
                text.append(
                        Double.isInfinite(met.after().value())
                                ? " not reached"
                                : " after " + FigureText.of(met.after(), units).line());
            }
        }
        return text.append('.').toString();
    }

    private static String percent(double share) {
        return Math.round(share * 1e5) / 1e3 + "%";
    }
}
