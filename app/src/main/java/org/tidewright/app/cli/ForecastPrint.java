package org.tidewright.app.cli;

import java.util.List;
import java.util.Locale;
import org.tidewright.husbandry.advice.FigureText;
import org.tidewright.husbandry.forecast.Explained;
import org.tidewright.husbandry.forecast.ForecastReport;
import org.tidewright.husbandry.forecast.LeverText;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.twin.forecast.Quantity;
import org.tidewright.twin.system.Lever;
import org.tidewright.twin.system.Levers;
import org.tidewright.twin.system.SystemTwin;

/** A forecast on a terminal. */
final class ForecastPrint {
    private ForecastPrint() {}

    /** The sentence, the table, where bounds are left. */
    static void whole(Prose prose, ForecastReport report, UnitSystem units) {
        prose.line(report.plan().name() + ", the next " + ForecastReport.days(report.days()));
        prose.blank();
        prose.paragraph(report.lead(units));
        prose.blank();
        report.changes().forEach(change -> prose.line("Changed: " + ForecastReport.words(change)));
        boolean changed = report.changed() != null;
        prose.line(String.format(
                Locale.ROOT,
                "%-28s %10s %10s %10s %10s   %s",
                "",
                "at first",
                "as run",
                changed ? "changed" : "",
                changed ? "difference" : "",
                "least to most"));
        for (ForecastReport.Line line : report.lines()) {
            if (line.quantity() != Quantity.LIGHT) {
                prose.line(row(line, units, changed));
            }
        }
        prose.blank();
        prose.paragraph("At first is midnight of the first day; the others are means of the last day.");
        prose.blank();
        for (ForecastReport.Warning warning : report.warnings()) {
            Quantity quantity = warning.band().quantity();
            prose.paragraph(
                    "– ",
                    "  ",
                    "Day " + FigureText.number(warning.day(), 1) + ": " + quantity.words() + " passes "
                            + ForecastReport.told(quantity, warning.bound(), units) + " and comes to "
                            + ForecastReport.told(quantity, warning.value(), units)
                            + (changed && warning.asRunToo() ? ", without the change too" : "") + " ("
                            + warning.band().reason() + ").");
        }
        if (!report.warnings().isEmpty()) {
            prose.blank();
        }
        prose.paragraph(
                "These are the usual values of what is not known exactly: nutrients are known to a factor of about"
                        + " two, pH to about 0.1. What stands on which source is in docs/science/the-twin.md.");
        prose.blank();
    }

    private static String row(ForecastReport.Line line, UnitSystem units, boolean changed) {
        Quantity quantity = line.quantity();
        String unit = ForecastReport.unit(quantity, units);
        return String.format(
                Locale.ROOT,
                "%-28s %10s %10s %10s %10s   %s to %s %s",
                quantity.words(),
                number(quantity, line.start(), units),
                number(quantity, line.asRun(), units),
                changed ? number(quantity, line.changed(), units) : "",
                changed
                        ? FigureText.number(
                                ForecastReport.shown(quantity, line.changed(), units)
                                        - ForecastReport.shown(quantity, line.asRun(), units),
                                quantity.decimals())
                        : "",
                number(quantity, line.least(), units),
                number(quantity, line.most(), units),
                unit);
    }

    private static String number(Quantity quantity, double value, UnitSystem units) {
        return FigureText.number(ForecastReport.shown(quantity, value, units), quantity.decimals());
    }

    /** What brought and took a quantity over the whole time. */
    static void account(Prose prose, ForecastReport report, SystemTwin twin, Quantity quantity) {
        List<Explained.Line> lines = Explained.of(report, twin, quantity);
        if (lines.isEmpty()) {
            prose.paragraph(
                    "There is no account of " + quantity.words() + ": it follows from others. Ask for one that is"
                            + " moved, such as nitrate, phosphate, alkalinity, calcium or oxygen.");
            return;
        }
        String unit = quantity.unit();
        prose.line(String.format(
                Locale.ROOT,
                "%-34s %14s %14s",
                "What moved " + quantity.words() + ", " + unit,
                "as run",
                report.changed() == null ? "" : "changed"));
        for (Explained.Line line : lines) {
            prose.line(String.format(
                    Locale.ROOT,
                    "%-34s %14s %14s",
                    line.cause(),
                    FigureText.number(line.asRun(), quantity.decimals() + 1),
                    report.changed() == null ? "" : FigureText.number(line.changed(), quantity.decimals() + 1)));
        }
        prose.blank();
    }

    /** What can be changed. */
    static void levers(Prose prose, Levers levers) {
        prose.line(String.format(Locale.ROOT, "%-30s %-26s %s", "Lever", "is moved to", "what it is"));
        for (Lever lever : levers.all()) {
            String values = switch (lever.kind()) {
                case FACTOR -> "+50 %, -30 %, 150 %";
                case AMOUNT -> "an amount in " + LeverText.unit(lever);
                case SWITCH -> "on, off";
                case FLOAT_SWITCH -> "on, stuck off, stuck on";
            };
            prose.line(String.format(Locale.ROOT, "%-30s %-26s %s", lever.name(), values, lever.meaning()));
        }
    }
}
