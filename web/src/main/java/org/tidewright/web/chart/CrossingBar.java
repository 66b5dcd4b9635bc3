package org.tidewright.web.chart;

import org.tidewright.husbandry.advice.Doubt;
import org.tidewright.husbandry.rehearsal.Crossing;
import org.tidewright.web.drawing.SvgWriter;

/** When a limit is met, on a scale of time that reaches from a minute to days: each step is as many times longer. */
public final class CrossingBar {
    private static final double SHORTEST = 30;
    private static final double LONGEST = 8 * 86400;
    private static final double[] MARKS = {60, 3600, 6 * 3600, 86400};
    private static final String[] NAMES = {"1 min", "1 h", "6 h", "1 d"};

    private CrossingBar() {}

    /** The scale, for the head of the column. */
    public static String scale() {
        SvgWriter svg = new SvgWriter();
        svg.open("svg").has("class", "crossing-bar").has("height", 26.0).has("aria-hidden", "true");
        for (int i = 0; i < MARKS.length; i++) {
            svg.open("text")
                    .has("x", percent(MARKS[i]))
                    .has("y", 16.0)
                    .has("text-anchor", "middle")
                    .has("class", "tick")
                    .text(NAMES[i])
                    .close();
        }
        return svg.close().finished();
    }

    /** One crossing: from the 5th to the 95th of 100 draws, a stroke at the middle. */
    public static String of(Crossing crossing) {
        SvgWriter svg = new SvgWriter();
        svg.open("svg").has("class", "crossing-bar").has("height", 26.0).has("aria-hidden", "true");
        for (double mark : MARKS) {
            svg.open("line")
                    .has("class", "grid")
                    .has("x1", percent(mark))
                    .has("x2", percent(mark))
                    .has("y1", 0.0)
                    .has("y2", 26.0)
                    .close();
        }
        svg.open("line")
                .has("class", "grid")
                .has("x1", 0.0)
                .has("x2", "100%")
                .has("y1", 13.0)
                .has("y2", 13.0)
                .close();
        double middle = crossing.after().value();
        if (crossing.after().doubt() instanceof Doubt.Range range && range.low() < LONGEST) {
            svg.open("line")
                    .has("class", "reach-bar")
                    .has("x1", percent(range.low()))
                    .has("x2", percent(Math.min(LONGEST, range.high())))
                    .has("y1", 13.0)
                    .has("y2", 13.0)
                    .close();
        }
        if (middle < LONGEST) {
            svg.open("line")
                    .has("class", "reach-middle")
                    .has("x1", percent(middle))
                    .has("x2", percent(middle))
                    .has("y1", 4.0)
                    .has("y2", 22.0)
                    .close();
        }
        return svg.close().finished();
    }

    private static String percent(double seconds) {
        double held = Math.max(SHORTEST, Math.min(LONGEST, seconds));
        double share = Math.log(held / SHORTEST) / Math.log(LONGEST / SHORTEST);
        return Math.round(share * 1e5) / 1e3 + "%";
    }
}
