package org.tidewright.web.chart;

import java.util.ArrayList;
import java.util.List;
import org.tidewright.web.drawing.SvgWriter;

/**
 * The neatline over charts of a course: a day by its hours, or weeks by their days.
 *
 * @param seconds length of the whole
 * @param bar seconds of a bar
 * @param numbers what is written, and where
 */
public record CourseScale(double seconds, double bar, List<TimeAxis.Label> numbers) {
    private static final double DAY = 86_400;
    private static final double TOP = 22;
    private static final double HIGH = 7;

    /** From midnight to midnight. */
    public static CourseScale ofDay() {
        List<TimeAxis.Label> numbers = new ArrayList<>();
        for (int hour = 0; hour <= 24; hour += 3) {
            String anchor = hour == 0 ? "start" : hour == 24 ? "end" : "middle";
            numbers.add(new TimeAxis.Label(hour / 24.0, hour + " h", anchor, hour % 6 != 0));
        }
        return new CourseScale(DAY, DAY / 24, numbers);
    }

    /** From a first day to a last. */
    public static CourseScale ofDays(int days) {
        List<TimeAxis.Label> numbers = new ArrayList<>();
        int step = days <= 30 ? 5 : 10;
        for (int day = 0; day < days - step / 2; day += step) {
            numbers.add(new TimeAxis.Label(
                    (double) day / days,
                    day == 0 ? "day 0" : Integer.toString(day),
                    day == 0 ? "start" : "middle",
                    day % (2 * step) != 0));
        }
        numbers.add(new TimeAxis.Label(1, "day " + days, "end", false));
        return new CourseScale(days * DAY, days > 80 ? 4 * DAY : 2 * DAY, numbers);
    }

    /** As an axis for limits and positions. */
    TimeAxis axis() {
        return new TimeAxis(seconds / 3600, false);
    }

    /** As an SVG element. */
    public String svg() {
        SvgWriter svg = new SvgWriter();
        svg.open("svg").has("class", "scale").has("height", 58.0).has("aria-hidden", "true");
        int i = 0;
        for (double from = 0; from < seconds - 1; from += bar) {
            double to = Math.min(seconds, from + bar);
            svg.open("rect")
                    .has("class", i++ % 2 == 0 ? "bar-ink" : "bar-paper")
                    .has("x", TraceChart.percent(from / seconds))
                    .has("width", TraceChart.percent((to - from) / seconds))
                    .has("y", TOP)
                    .has("height", HIGH)
                    .close();
        }
        for (TimeAxis.Label number : numbers) {
            svg.open("text")
                    .has("x", TraceChart.percent(number.at()))
                    .has("y", 46.0)
                    .has("text-anchor", number.anchor())
                    .has("class", number.wideOnly() ? "wide-only" : "scale")
                    .text(number.words())
                    .close();
        }
        return svg.close().finished();
    }
}
