package org.tidewright.web.chart;

import static org.tidewright.web.chart.ValueAxis.HEIGHT;

import java.util.List;
import org.tidewright.husbandry.advice.Doubt;
import org.tidewright.husbandry.advice.FigureText;
import org.tidewright.husbandry.rehearsal.Crossing;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.web.drawing.SvgWriter;

/** The limits of a trace: lines with ticks on their forbidden side, and when each is met. */
final class LimitMarks {
    private final SvgWriter svg;
    private final Curve curve;
    private final TimeAxis time;
    private final ValueAxis value;
    private final UnitSystem units;

    LimitMarks(SvgWriter svg, Curve curve, TimeAxis time, ValueAxis value, UnitSystem units) {
        this.svg = svg;
        this.curve = curve;
        this.time = time;
        this.value = value;
        this.units = units;
    }

    void draw() {
        List<Curve.Bound> shown = curve.bounds().stream()
                .filter(bound -> value.shows(bound.value()))
                .toList();
        for (Curve.Bound bound : shown) {
            bound(bound, Side.of(bound, shown, value));
        }
        for (Curve.Bound bound : shown) {
            if (bound.crossing() != null) {
                crossing(bound, bound.crossing(), Side.of(bound, shown, value));
            }
        }
    }

    /**
     * On which side of a limit's line its words stand.
     *
     * @param nameUnder whether its name stands under the line
     * @param timeUnder whether the time it is met at does
     */
    private record Side(boolean nameUnder, boolean timeUnder) {
        private static final double LINE = 34;

        /**
         * Alone, a limit has its name on the forbidden side and its time on the other, where the curve comes from; of two
         * close to each other, each keeps its words on its outer side.
         */
        static Side of(Curve.Bound bound, List<Curve.Bound> all, ValueAxis axis) {
            double y = axis.y(bound.value());
            boolean closeUnder = false;
            boolean closeOver = false;
            for (Curve.Bound other : all) {
                double apart = axis.y(other.value()) - y;
                closeUnder |= apart > 0 && apart < LINE;
                closeOver |= apart < 0 && apart > -LINE;
            }
            if (closeUnder != closeOver) {
                return new Side(closeOver, closeOver && y < HEIGHT - 20);
            }
            return new Side(bound.forbiddenBelow() && y < HEIGHT - 20, !bound.forbiddenBelow() && y < HEIGHT - 20);
        }
    }

    private void bound(Curve.Bound bound, Side side) {
        double y = value.y(bound.value());
        svg.open("line")
                .has("class", "limit")
                .has("x1", 0.0)
                .has("x2", "100%")
                .has("y1", y)
                .has("y2", y)
                .close();
        svg.open("rect")
                .has("x", 0.0)
                .has("width", "100%")
                .has("y", bound.forbiddenBelow() ? y : y - 6)
                .has("height", 6.0)
                .has("fill", "url(#limit-ticks)")
                .close();
        boolean room = curve.id().equals(Curve.ROOM);
        String words = room
                ? "limit: the rim"
                : bound.words() + (bound.forbiddenBelow() ? " under " : " over ") + curve.told(bound.value());
        boolean under = side.nameUnder() && !room;
        double clear = bound.forbiddenBelow() ? 18 : 14;
        double over = bound.forbiddenBelow() ? -5 : -9;
        double from = y + (under ? clear : over);
        boolean atEnd = curveMeets(from, 0, 0.14) && !curveMeets(from, 0.82, 1);
        if (atEnd) {
            svg.open("text")
                    .has("x", "100%")
                    .has("dx", -4.0)
                    .has("y", from)
                    .has("text-anchor", "end")
                    .has("class", "halo wide-only")
                    .text(words)
                    .close();
        }
        // A narrow screen has no room for it at the end beside the times.
        svg.open("text")
                .has("x", 4.0)
                .has("y", from)
                .has("class", atEnd ? "halo phone-only" : "halo")
                .text(words)
                .close();
    }

    /** Whether the curve runs through words on a line at this height, between two shares of the axis. */
    private boolean curveMeets(double line, double from, double to) {
        for (int i = 0; i < curve.time().length; i++) {
            double at = time.position(curve.time()[i]);
            double y = value.y(curve.middle()[i]);
            if (at >= from && at <= to && y > line - 14 && y < line + 4) {
                return true;
            }
        }
        return false;
    }

    /** When the limit is met: a bar from the 5th to the 95th of 100 draws, the middle a diamond. */
    private void crossing(Curve.Bound bound, Crossing crossing, Side side) {
        if (!(crossing.after().doubt() instanceof Doubt.Range range) || !(range.low() < time.seconds())) {
            return;
        }
        double y = value.y(bound.value());
        double from = time.position(range.low());
        double to = time.position(Math.min(time.seconds(), range.high()));
        svg.open("line")
                .has("class", "reach")
                .has("x1", TraceChart.percent(from))
                .has("x2", TraceChart.percent(to))
                .has("y1", y)
                .has("y2", y)
                .close();
        svg.open("line")
                .has("class", "reach")
                .has("x1", TraceChart.percent(from))
                .has("x2", TraceChart.percent(from))
                .has("y1", y - 5)
                .has("y2", y + 5)
                .close();
        if (range.high() <= time.seconds()) {
            svg.open("line")
                    .has("class", "reach")
                    .has("x1", TraceChart.percent(to))
                    .has("x2", TraceChart.percent(to))
                    .has("y1", y - 5)
                    .has("y2", y + 5)
                    .close();
        }
        if (!(crossing.after().value() <= time.seconds())) {
            return;
        }
        double middle = time.position(crossing.after().value());
        svg.open("svg").has("x", TraceChart.percent(middle)).has("y", y).has("overflow", "visible");
        svg.open("path")
                .has("class", "met")
                .has("d", "M-6,0l6,-6 6,6 -6,6z")
                .close()
                .close();
        boolean left = middle > 0.84;
        FigureText text = FigureText.of(crossing.after(), units);
        svg.open("text")
                .has("class", "halo strong")
                .has("x", TraceChart.percent(middle))
                .has("dx", left ? -8.0 : 8.0)
                .has("y", side.timeUnder() ? y + 19 : Math.max(12, y - 7))
                .has("text-anchor", left ? "end" : "start");
        svg.text(text.value() + "\u00a0" + text.unit());
        svg.open("tspan").has("class", "range").text(" " + text.doubt()).close();
        svg.close();
    }
}
