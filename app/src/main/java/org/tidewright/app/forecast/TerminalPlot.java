package org.tidewright.app.forecast;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.forecast.ForecastReport;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.twin.forecast.Course;
import org.tidewright.twin.forecast.Quantity;
import org.tidewright.twin.rehearsal.Band;

/** A quantity over time in characters: the course as run dotted, the changed one drawn full, told apart without colour. */
public final class TerminalPlot {
    private static final int COLUMNS = 64;
    private static final int ROWS = 14;
    private static final double DAY = 86_400;
    private static final char AS_RUN = '·';
    private static final char CHANGED = '█';
    private static final char ALONE = '•';
    private static final char BAND = '░';

    private TerminalPlot() {}

    /** The plot, line by line, at most 80 columns wide. */
    public static List<String> lines(ForecastReport report, Quantity quantity, UnitSystem units) {
        Course changed = report.changed();
        double[] base = shown(report.asRun(), quantity, units);
        double @Nullable [] other = changed == null ? null : shown(changed, quantity, units);
        @Nullable
        Band band = report.doubt() == null ? null : report.doubt().told().of(quantity);
        double low = least(base, other);
        double high = most(base, other);
        if (band != null) {
            double[] lower = shown(band.low(), quantity, units);
            double[] upper = shown(band.high(), quantity, units);
            low = least(lower, new double[] {low});
            high = most(upper, new double[] {high});
        }
        double margin = high > low ? 0.05 * (high - low) : Math.max(1e-6, Math.abs(high) * 0.05);
        low -= margin;
        high += margin;
        char[][] field = new char[ROWS][COLUMNS];
        for (char[] row : field) {
            Arrays.fill(row, ' ');
        }
        int samples = base.length;
        if (band != null) {
            shade(field, shown(band.low(), quantity, units), shown(band.high(), quantity, units), samples, low, high);
        }
        draw(field, base, samples, low, high, other == null ? ALONE : AS_RUN);
        if (other != null) {
            draw(field, other, samples, low, high, CHANGED);
        }
        List<String> lines = new ArrayList<>();
        String unit = ForecastReport.unit(quantity, units);
        lines.add(quantity.words()
                + (unit.isEmpty() ? "" : ", " + unit)
                + (other == null ? "" : "   " + AS_RUN + " as run   " + CHANGED + " changed")
                + (band == null ? "" : "   " + BAND + " nine draws of ten"));
        for (int row = 0; row < ROWS; row++) {
            double value = high - (high - low) * (row + 0.5) / ROWS;
            String label = row % 3 == 1 ? String.format(Locale.ROOT, "%." + quantity.decimals() + "f", value) : "";
            lines.add(String.format(Locale.ROOT, "%10s │%s", label, new String(field[row]))
                    .stripTrailing());
        }
        lines.add(" ".repeat(11) + "└" + "─".repeat(COLUMNS));
        lines.add(days(report.asRun().time()));
        return lines;
    }

    private static String days(double[] time) {
        double last = time[time.length - 1] / DAY;
        int decimals = last < 10 ? 1 : 0;
        StringBuilder line = new StringBuilder(" ".repeat(12 + COLUMNS + 6));
        for (int i = 0; i <= 4; i++) {
            String label = i == 4
                    ? String.format(Locale.ROOT, "%." + decimals + "f days", last)
                    : String.format(Locale.ROOT, "%." + decimals + "f", last * i / 4);
            int place = 12 + COLUMNS * i / 4;
            int at = Math.min(place, line.length() - label.length());
            line.replace(at, at + label.length(), label);
        }
        return line.toString().stripTrailing();
    }

    private static void draw(char[][] field, double[] values, int samples, double low, double high, char mark) {
        for (int i = 0; i < values.length; i++) {
            int column = (int) ((long) i * (COLUMNS - 1) / Math.max(1, samples - 1));
            int row = (int) ((high - values[i]) / (high - low) * ROWS);
            field[Math.max(0, Math.min(ROWS - 1, row))][column] = mark;
        }
    }

    private static void shade(char[][] field, double[] lower, double[] upper, int samples, double low, double high) {
        for (int i = 0; i < lower.length; i++) {
            int column = (int) ((long) i * (COLUMNS - 1) / Math.max(1, samples - 1));
            int top = (int) ((high - upper[i]) / (high - low) * ROWS);
            int bottom = (int) ((high - lower[i]) / (high - low) * ROWS);
            for (int row = Math.max(0, top); row <= Math.min(ROWS - 1, bottom); row++) {
                field[row][column] = BAND;
            }
        }
    }

    private static double[] shown(Course course, Quantity quantity, UnitSystem units) {
        return shown(course.of(quantity), quantity, units);
    }

    private static double[] shown(double[] values, Quantity quantity, UnitSystem units) {
        return Arrays.stream(values)
                .map(value -> ForecastReport.shown(quantity, value, units))
                .toArray();
    }

    private static double least(double[] base, double @Nullable [] other) {
        double own = Arrays.stream(base).min().orElse(0);
        return other == null ? own : Math.min(own, Arrays.stream(other).min().orElse(own));
    }

    private static double most(double[] base, double @Nullable [] other) {
        double own = Arrays.stream(base).max().orElse(0);
        return other == null ? own : Math.max(own, Arrays.stream(other).max().orElse(own));
    }
}
