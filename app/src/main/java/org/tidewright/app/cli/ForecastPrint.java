package org.tidewright.app.cli;

import java.util.List;
import java.util.Locale;
import org.tidewright.husbandry.advice.FigureText;
import org.tidewright.husbandry.forecast.AssumedAir;
import org.tidewright.husbandry.forecast.AssumedGrowth;
import org.tidewright.husbandry.forecast.Explained;
import org.tidewright.husbandry.forecast.ForecastReport;
import org.tidewright.husbandry.forecast.LeverText;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.twin.forecast.Outlook;
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
        report.changes().forEach(change -> prose.line("Changed: " + ForecastReport.words(change, units)));
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
        AssumedAir.of(report.plan().room()).ifPresent(air -> {
            prose.paragraph(air);
            prose.blank();
        });
        AssumedGrowth.of(report).ifPresent(growth -> {
            prose.paragraph(growth);
            prose.blank();
        });
        if (report.doubt() != null) {
            doubt(prose, report.doubt(), units);
            return;
        }
        prose.paragraph(
                "These are the usual values of what is not known exactly: nutrients are known to a factor of about"
                        + " two, pH to about 0.1. What stands on which source is in docs/science/the-twin.md.");
        prose.blank();
    }

    private static void doubt(Prose prose, ForecastReport.Doubt doubt, UnitSystem units) {
        Outlook asRun = doubt.asRun();
        Outlook changed = doubt.changed();
        prose.paragraph(
                "The same for " + asRun.draws() + " draws of what is not known exactly: means of the last day, of 100"
                        + " draws 5 below, half, 5 above.");
        prose.blank();
        prose.line(String.format(
                Locale.ROOT,
                "%-28s %30s   %s",
                "",
                "as run",
                changed == null ? "" : String.format(Locale.ROOT, "%30s", "changed")));
        for (Quantity quantity : Quantity.values()) {
            if (quantity != Quantity.LIGHT) {
                prose.line(String.format(
                                Locale.ROOT,
                                "%-28s %s   %s %s",
                                quantity.words(),
                                range(asRun, quantity, units),
                                changed == null ? "" : range(changed, quantity, units),
                                ForecastReport.unit(quantity, units))
                        .stripTrailing());
            }
        }
        prose.blank();
        endedEarly(prose, asRun, "as run");
        if (changed != null) {
            endedEarly(prose, changed, "with the change");
        }
        prose.paragraph("What is drawn, and what is not, is in docs/science/the-twin.md.");
        prose.blank();
    }

    private static void endedEarly(Prose prose, Outlook outlook, String which) {
        if (outlook.endedEarly() > 0) {
            prose.paragraph(outlook.endedEarly() + " of the draws " + which
                    + " come to a state the twin knows no law for; bands end with the first of them.");
            prose.blank();
        }
    }

    private static String range(Outlook outlook, Quantity quantity, UnitSystem units) {
        Outlook.Range range = outlook.lastDay(quantity);
        return String.format(
                Locale.ROOT,
                "%10s %9s %9s",
                number(quantity, range.low(), units),
                number(quantity, range.middle(), units),
                number(quantity, range.high(), units));
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
