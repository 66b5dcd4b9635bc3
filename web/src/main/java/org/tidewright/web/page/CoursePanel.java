package org.tidewright.web.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.FigureText;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.web.chart.CourseChart;
import org.tidewright.web.chart.CourseScale;

/**
 * A chart of two courses with its label and its table.
 *
 * @param name the title in lower case, for the middle of a sentence
 * @param value what stands large beside it
 * @param note what stands small under that
 * @param heads of the table's columns after the time
 */
public record CoursePanel(
        String id,
        String title,
        String name,
        Markup value,
        String note,
        Markup chart,
        List<String> heads,
        List<Row> rows) {
    /** A line of the table. */
    public record Row(String time, List<String> values) {}

    /** How a panel's times are told in its table. */
    interface Clock {
        String at(double seconds);
    }

    /**
     * Draws a chart and writes its table.
     *
     * @param every samples from one line of the table to the next
     */
    static CoursePanel of(
            CourseChart chart,
            CourseScale scale,
            UnitSystem units,
            String value,
            String note,
            String tried,
            @Nullable String beside,
            int every,
            Clock clock) {
        List<String> heads = new ArrayList<>();
        String symbol = chart.unit().isEmpty() ? "" : ", " + chart.unit();
        heads.add(tried + symbol);
        double[] other = chart.beside();
        if (other != null && beside != null) {
            heads.add(beside + symbol);
        }
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < chart.time().length; i += every) {
            List<String> values = new ArrayList<>();
            values.add(FigureText.number(chart.tried()[i], chart.decimals()));
            if (other != null && beside != null) {
                values.add(FigureText.number(other[i], chart.decimals()));
            }
            rows.add(new Row(clock.at(chart.time()[i]), values));
        }
        Markup shown = new Markup("<span class=\"sounding\">" + Markup.words(value) + "<span class=\"u\">"
                + Markup.words(chart.unit()) + "</span></span>");
        String title = chart.title();
        String name =
                title.startsWith("pH") ? title : title.substring(0, 1).toLowerCase(Locale.ROOT) + title.substring(1);
        return new CoursePanel(chart.id(), title, name, shown, note, new Markup(chart.svg(scale, units)), heads, rows);
    }
}
