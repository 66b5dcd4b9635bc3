package org.tidewright.web.chart;

import org.tidewright.web.drawing.SvgWriter;

/** The neatline under the scrubber: bars of ten seconds, the break, then bars of hours. */
public final class ScrubberScale {
    private static final double TOP = 22;
    private static final double HIGH = 7;

    private ScrubberScale() {}

    public static String of(TimeAxis time) {
        SvgWriter svg = new SvgWriter();
        svg.open("svg", "class", "scale", "height", 58.0, "aria-hidden", "true");
        int i = 0;
        for (TimeAxis.Bar bar : time.bars()) {
            svg.leaf(
                    "rect",
                    "class",
                    i++ % 2 == 0 ? "bar-ink" : "bar-paper",
                    "x",
                    percent(bar.from()),
                    "width",
                    percent(bar.to() - bar.from()),
                    "y",
                    TOP,
                    "height",
                    HIGH);
        }
        if (time.twoSpeeds()) {
            svg.open("svg", "x", percent(time.breakAt() + time.breakWidth() / 2), "y", TOP, "overflow", "visible");
            svg.leaf("path", "class", "seen", "d", "M-7,12L0,-5M0,12L7,-5").close();
        }
        for (TimeAxis.Label label : time.labels()) {
            svg.words(
                    "text",
                    label.words(),
                    "x",
                    percent(label.at()),
                    "y",
                    46.0,
                    "text-anchor",
                    label.anchor(),
                    "class",
                    label.wideOnly() ? "wide-only" : "scale");
        }
        return svg.close().finished();
    }

    private static String percent(double share) {
        return Math.round(share * 1e5) / 1e3 + "%";
    }
}
