package org.tidewright.web.chart;

import org.tidewright.web.drawing.SvgWriter;

/** The neatline under the scrubber: bars of ten seconds, the break, then bars of hours. */
public final class ScrubberScale {
    private static final double TOP = 22;
    private static final double HIGH = 7;

    private ScrubberScale() {}

    public static String of(TimeAxis time) {
        SvgWriter svg = new SvgWriter();
        svg.open("svg").has("class", "scale").has("height", 58.0).has("aria-hidden", "true");
        int i = 0;
        for (TimeAxis.Bar bar : time.bars()) {
            svg.open("rect")
                    .has("class", i++ % 2 == 0 ? "bar-ink" : "bar-paper")
                    .has("x", percent(bar.from()))
                    .has("width", percent(bar.to() - bar.from()))
                    .has("y", TOP)
                    .has("height", HIGH)
                    .close();
        }
        if (time.twoSpeeds()) {
            svg.open("svg")
                    .has("x", percent(time.breakAt() + time.breakWidth() / 2))
                    .has("y", TOP)
                    .has("overflow", "visible");
            svg.open("path")
                    .has("class", "seen")
                    .has("d", "M-7,12L0,-5M0,12L7,-5")
                    .close()
                    .close();
        }
        for (TimeAxis.Label label : time.labels()) {
            svg.open("text")
                    .has("x", percent(label.at()))
                    .has("y", 46.0)
                    .has("text-anchor", label.anchor())
                    .has("class", label.wideOnly() ? "wide-only" : "scale")
                    .text(label.words())
                    .close();
        }
        return svg.close().finished();
    }

    private static String percent(double share) {
        return Math.round(share * 1e5) / 1e3 + "%";
    }
}
