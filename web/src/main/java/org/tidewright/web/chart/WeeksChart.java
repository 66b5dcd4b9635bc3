package org.tidewright.web.chart;

import static org.tidewright.web.chart.TraceChart.percent;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.FigureText;
import org.tidewright.twin.rehearsal.Band;
import org.tidewright.web.drawing.SvgWriter;

/** A quantity over weeks: where it starts, as it is run, with a change, and the band keepers hold it in. */
public final class WeeksChart {
    private static final double TOP = 18;
    private static final double TALL = 168;
    private static final double SMALL = 92;
    private static final double BAR = 7;
    private static final double FOOT = 36;

    /** Width of the box that stretches; its own unit, not pixels. */
    private static final double BOX = 1000;

    private static final int WEEK = 7;
    private static final double LINE = 15;

    /**
     * What is drawn.
     *
     * @param unit symbol
     * @param decimals most that make sense
     * @param low of the band; zero for none
     * @param high of the band
     * @param lastDay where the axis ends
     * @param small whether it matters less and is drawn lower
     * @param days rising from 0
     * @param changed null where nothing was changed
     * @param drawn in which nine of ten draws lie as it is run; null where none were made
     */
    public record Curves(
            String title,
            String unit,
            int decimals,
            double low,
            double high,
            double[] days,
            double[] asRun,
            double @Nullable [] changed,
            @Nullable Band drawn,
            double lastDay,
            boolean small) {
        /** Mean of the last week, as the table beside tells it. */
        private static double end(double[] values) {
            return Arrays.stream(values, Math.max(0, values.length - WEEK), values.length)
                    .average()
                    .orElse(Double.NaN);
        }
    }

    private final Curves curves;
    private final double top;
    private final double height;
    private final SvgWriter svg = new SvgWriter();

    private WeeksChart(Curves curves) {
        this.curves = curves;
        height = curves.small() ? SMALL : TALL;
        double most = Math.max(most(curves.asRun()), curves.changed() == null ? 0 : most(curves.changed()));
        if (curves.drawn() != null) {
            most = Math.max(most, Math.min(2 * most, most(curves.drawn().high())));
        }
        // A band far above all that happens would flatten the curves.
        double shown = curves.high() < 2.5 * most ? Math.max(most, curves.high()) : most;
        top = Math.max(1e-6, 1.12 * shown);
    }

    /** The chart as an SVG element without a width of its own. */
    public static String of(Curves curves) {
        return new WeeksChart(curves).drawn();
    }

    private static double most(double[] values) {
        double most = 0;
        for (double value : values) {
            most = Math.max(most, value);
        }
        return most;
    }

    private String drawn() {
        svg.open("svg")
                .has("class", "weeks-chart")
                .has("height", height + FOOT)
                .has("role", "img")
                .has("aria-label", told());
        band();
        levels();
        stretched();
        weeks();
        limit(curves.high(), false);
        if (curves.low() > 0) {
            limit(curves.low(), true);
        }
        names();
        svg.open("circle")
                .has("class", "reading")
                .has("cx", "0%")
                .has("cy", y(curves.asRun()[0]))
                .has("r", 4.5)
                .close();
        return svg.close().finished();
    }

    private void band() {
        double from = y(Math.min(top, curves.high()));
        svg.open("rect")
                .has("class", "target")
                .has("x", 0.0)
                .has("width", "100%")
                .has("y", from)
                .has("height", Math.max(0, y(curves.low()) - from))
                .close();
    }

    private void levels() {
        // Few lines where there is little height.
        double step = ValueAxis.step((curves.small() ? 2.5 : 1.25) * top);
        int decimals = Math.max(0, (int) -Math.floor(Math.log10(step) + 1e-9));
        for (int i = 0; i * step <= top; i++) {
            double value = i * step;
            svg.open("line")
                    .has("class", "grid")
                    .has("x1", 0.0)
                    .has("x2", "100%")
                    .has("y1", y(value))
                    .has("y2", y(value))
                    .close();
            svg.open("text")
                    .has("class", "tick")
                    .has("x", 0.0)
                    .has("dx", -8.0)
                    .has("y", y(value) + 4)
                    .has("text-anchor", "end")
                    .text(FigureText.number(value, decimals))
                    .close();
        }
    }

    private void stretched() {
        svg.open("svg")
                .has("viewBox", "0 0 1000 " + SvgWriter.number(height))
                .has("preserveAspectRatio", "none")
                .has("width", "100%")
                .has("height", height)
                .has("aria-hidden", "true");
        if (curves.drawn() != null) {
            doubt(curves.drawn());
        }
        path(curves.changed() == null ? "curve" : "curve before", curves.asRun());
        if (curves.changed() != null) {
            path("curve", curves.changed());
        }
        svg.close();
    }

    private void doubt(Band drawn) {
        int shown = Math.min(drawn.low().length, curves.days().length);
        StringBuilder path = new StringBuilder();
        for (int i = 0; i < shown; i++) {
            point(path, i, drawn.high()[i]);
        }
        for (int i = shown - 1; i >= 0; i--) {
            point(path, i, drawn.low()[i]);
        }
        if (shown > 0) {
            svg.open("path")
                    .has("class", "doubt")
                    .has("d", path.append('Z').toString())
                    .close();
        }
    }

    private void point(StringBuilder path, int i, double value) {
        path.append(path.length() == 0 ? 'M' : 'L')
                .append(SvgWriter.number(BOX * curves.days()[i] / curves.lastDay()))
                .append(',')
                .append(SvgWriter.number(y(value)));
    }

    private void path(String classes, double[] values) {
        StringBuilder path = new StringBuilder();
        for (int i = 0; i < values.length; i++) {
            point(path, i, values[i]);
        }
        svg.open("path").has("class", classes).has("d", path.toString()).close();
    }

    /** The neatline: a bar for each week. */
    private void weeks() {
        int weeks = (int) Math.round(curves.lastDay() / WEEK);
        for (int i = 0; i < weeks; i++) {
            svg.open("rect")
                    .has("class", i % 2 == 0 ? "bar-ink" : "bar-paper")
                    .has("x", percent((double) i / weeks))
                    .has("width", percent(1.0 / weeks))
                    .has("y", height)
                    .has("height", BAR)
                    .close();
        }
        for (int i = 0; i <= weeks; i += 4) {
            svg.open("text")
                    .has("class", "tick")
                    .has("x", percent((double) i / weeks))
                    .has("y", height + BAR + LINE)
                    .has("text-anchor", i == 0 ? "start" : i == weeks ? "end" : "middle")
                    .text(i == 0 ? "now" : i == weeks ? i + " weeks" : Integer.toString(i))
                    .close();
        }
    }

    private void limit(double value, boolean forbiddenBelow) {
        if (value > top) {
            return;
        }
        double y = y(value);
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
                .has("y", forbiddenBelow ? y : y - 6)
                .has("height", 6.0)
                .has("fill", "url(#limit-ticks)")
                .close();
    }

    /** Each curve's name and end stand over its end, kept apart. */
    private void names() {
        double[] changed = curves.changed();
        double before = y(Curves.end(curves.asRun())) - 7;
        if (changed == null) {
            name(before, "", Curves.end(curves.asRun()), "strong halo");
            return;
        }
        double after = y(Curves.end(changed)) - 7;
        if (Math.abs(after - before) < LINE) {
            double middle = (after + before) / 2;
            boolean over = after <= before;
            after = middle + (over ? -LINE / 2 : LINE / 2);
            before = middle + (over ? LINE / 2 : -LINE / 2);
        }
        name(before, "as it is run ", Curves.end(curves.asRun()), "halo");
        name(after, "changed ", Curves.end(changed), "strong halo");
    }

    private void name(double y, String words, double value, String classes) {
        svg.open("text")
                .has("class", classes)
                .has("x", "100%")
                .has("dx", -4.0)
                .has("y", Math.max(12, Math.min(height - 4, y)))
                .has("text-anchor", "end")
                .text(words + told(value))
                .close();
    }

    private String told(double value) {
        return FigureText.number(value, curves.decimals()) + "\u00a0" + curves.unit();
    }

    private String told() {
        String words = curves.title() + " from " + told(curves.asRun()[0]) + " to " + told(Curves.end(curves.asRun()))
                + " in twelve weeks as it is run";
        double[] changed = curves.changed();
        return changed == null ? words + "." : words + ", to " + told(Curves.end(changed)) + " with the change.";
    }

    private double y(double value) {
        return TOP + (height - TOP) * (1 - Math.max(0, Math.min(top, value)) / top);
    }
}
