package org.tidewright.web.chart;

import static org.tidewright.web.chart.TraceChart.percent;

import org.tidewright.husbandry.advice.FigureText;
import org.tidewright.web.drawing.SvgWriter;

/** The curves of {@link AirCurves} over an axis of alkalinity, with the keeper's water as a point among them. */
public final class AirChart {
    private static final double TOP = 12;
    private static final double HEIGHT = 330;
    private static final double BAR = 7;
    private static final double ALL = HEIGHT + 46;

    /** Width of the box that stretches; its own unit, not pixels. */
    private static final double BOX = 1000;

    private static final double TICK = 0.2;
    private static final double LINE = 15;

    private final AirCurves curves;
    private final double low;
    private final double high;
    private final SvgWriter svg = new SvgWriter();

    private AirChart(AirCurves curves) {
        this.curves = curves;
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (AirCurves.Air air : curves.airs()) {
            least = Math.min(least, air.ph()[0]);
            most = Math.max(most, air.ph()[air.ph().length - 1]);
        }
        AirCurves.Mark own = curves.own();
        if (own != null) {
            least = Math.min(least, own.ph());
            most = Math.max(most, own.ph());
        }
        this.low = Math.floor(least / TICK - 0.1) * TICK;
        this.high = Math.ceil(most / TICK + 0.1) * TICK;
    }

    /** The chart as an SVG element without a width of its own. */
    public static String of(AirCurves curves) {
        return new AirChart(curves).drawn();
    }

    private String drawn() {
        svg.open("svg")
                .has("class", "air-chart")
                .has("height", ALL)
                .has("role", "img")
                .has("aria-label", curves.told());
        levels();
        stretched();
        bars();
        names();
        AirCurves.Mark own = curves.own();
        if (own != null) {
            own(own);
        }
        return svg.close().finished();
    }

    private void levels() {
        int ticks = (int) Math.round((high - low) / TICK);
        for (int i = 0; i <= ticks; i++) {
            double ph = low + i * TICK;
            svg.open("line")
                    .has("class", "grid")
                    .has("x1", 0.0)
                    .has("x2", "100%")
                    .has("y1", y(ph))
                    .has("y2", y(ph))
                    .close();
            svg.open("text")
                    .has("class", "tick")
                    .has("x", 0.0)
                    .has("dx", -8.0)
                    .has("y", y(ph) + 4)
                    .has("text-anchor", "end")
                    .text(FigureText.number(ph, 1))
                    .close();
        }
    }

    private void stretched() {
        svg.open("svg")
                .has("viewBox", "0 0 1000 " + SvgWriter.number(HEIGHT))
                .has("preserveAspectRatio", "none")
                .has("width", "100%")
                .has("height", HEIGHT)
                .has("aria-hidden", "true");
        for (AirCurves.Air air : curves.airs()) {
            StringBuilder path = new StringBuilder();
            for (int i = 0; i < air.ph().length; i++) {
                path.append(i == 0 ? 'M' : 'L')
                        .append(SvgWriter.number(BOX * share(curves.alkalinity()[i])))
                        .append(',')
                        .append(SvgWriter.number(y(air.ph()[i])));
            }
            svg.open("path")
                    .has("class", air.fresh() ? "air fresh" : "air")
                    .has("d", path.toString())
                    .close();
        }
        svg.close();
    }

    /** The neatline: a bar for each degree. */
    private void bars() {
        int degrees = (int) Math.round(curves.to() - curves.from());
        int every = degrees > 12 ? 4 : 2;
        for (int i = 0; i < degrees; i++) {
            svg.open("rect")
                    .has("class", i % 2 == 0 ? "bar-ink" : "bar-paper")
                    .has("x", percent((double) i / degrees))
                    .has("width", percent(1.0 / degrees))
                    .has("y", HEIGHT)
                    .has("height", BAR)
                    .close();
        }
        for (int i = 0; i <= degrees; i++) {
            double degree = curves.from() + i;
            if (degree % every == 0) {
                svg.open("text")
                        .has("class", "tick")
                        .has("x", percent((double) i / degrees))
                        .has("y", HEIGHT + BAR + 16)
                        .has("text-anchor", "middle")
                        .text(FigureText.number(degree, 0))
                        .close();
            }
        }
        svg.open("text")
                .has("x", "50%")
                .has("y", ALL - 5)
                .has("text-anchor", "middle")
                .text("alkalinity, dKH")
                .close();
    }

    /** Each curve's air at its right end, a line's height from the next. */
    private void names() {
        double free = 0;
        for (AirCurves.Air air : curves.airs()) {
            double at = Math.max(free, y(air.ph()[air.ph().length - 1]) + 4);
            svg.open("text")
                    .has("class", air.fresh() ? "strong" : "name")
                    .has("x", "100%")
                    .has("dx", 8.0)
                    .has("y", at)
                    .text(FigureText.number(air.ppm(), 0));
            if (air.fresh()) {
                svg.open("tspan").has("class", "wide-only").text(" fresh").close();
            }
            svg.close();
            free = at + LINE;
        }
    }

    private void own(AirCurves.Mark own) {
        double share = share(own.alkalinity());
        String x = percent(share);
        double y = y(own.ph());
        double fresh = y(own.freshPh());
        boolean apart = Math.abs(y - fresh) > LINE;
        if (apart) {
            svg.open("line")
                    .has("class", "way")
                    .has("x1", x)
                    .has("x2", x)
                    .has("y1", y)
                    .has("y2", fresh)
                    .close();
            svg.open("circle")
                    .has("class", "aim")
                    .has("cx", x)
                    .has("cy", fresh)
                    .has("r", 3.0)
                    .close();
        }
        svg.open("circle")
                .has("class", "own")
                .has("cx", x)
                .has("cy", y)
                .has("r", 5.0)
                .close();
        words(share, y, y < fresh, "your water " + FigureText.number(own.ph(), 2), "halo strong");
        if (apart) {
            words(share, fresh, false, "in fresh air " + FigureText.number(own.freshPh(), 2), "halo");
        }
    }

    /** Words beside a point. Every curve rises to the right: most room is under them there, and over them on the left. */
    private void words(double share, double y, boolean over, String words, String style) {
        boolean left = share > 0.6;
        svg.open("text")
                .has("class", style)
                .has("x", percent(share))
                .has("dx", left ? -9.0 : 9.0)
                .has("y", over || left ? y - 8 : y + 17)
                .has("text-anchor", left ? "end" : "start")
                .text(words)
                .close();
    }

    private double share(double alkalinity) {
        return (alkalinity - curves.from()) / (curves.to() - curves.from());
    }

    private double y(double ph) {
        return TOP + (HEIGHT - 2 * TOP) * (1 - (ph - low) / (high - low));
    }
}
