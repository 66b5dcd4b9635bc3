package org.tidewright.husbandry.spreadsheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * A mapping as text, an entry to a line, for the command line and for keeping it with the sheet:
 *
 * <pre>
 * date: column 1
 * date-order: dmy
 * column 3: alkalinity, dkh, method syringe_titration
 * column 4: phosphate, p_ug_per_l ?      # a guess: take the question mark away where it is right
 * </pre>
 */
public final class MappingText {
    static final Map<String, Character> SEPARATORS = Map.of("comma", ',', "semicolon", ';', "tab", '\t');

    private MappingText() {}

    /** As text, without remarks. */
    public static String write(Mapping mapping) {
        return write(mapping, List.of());
    }

    static String write(Mapping mapping, List<Finding> findings) {
        List<String> lines = new ArrayList<>();
        if (!mapping.questions().isEmpty()) {
            lines.add(
                    "# An entry that ends in ? is a guess. Take the ? away where it is right, change it where it is not.");
        }
        lines.add("charset: " + mapping.layout().charset().name().toLowerCase(Locale.ROOT));
        lines.add("separator: "
                + SEPARATORS.entrySet().stream()
                        .filter(entry -> entry.getValue() == mapping.layout().separator())
                        .map(Map.Entry::getKey)
                        .findFirst()
                        .orElseThrow());
        lines.add("header: "
                + (mapping.layout().hasHeader() ? "line " + mapping.layout().headerLine() : "none"));
        lines.add("data: line " + mapping.layout().dataLine());
        times(mapping.times(), lines);
        lines.add("decimal: " + (mapping.decimal() == null ? "?" : lower(mapping.decimal())));
        mapping.columns().forEach((column, measured) -> lines.add("column " + column + ": " + measured(measured)));
        Named named = mapping.named();
        if (named != null) {
            lines.add("names: column " + named.nameColumn());
            lines.add("values: column " + named.valueColumn());
            if (named.unitColumn() != null) {
                lines.add("units: column " + named.unitColumn());
            }
            named.names()
                    .forEach((name, meaning) -> lines.add("name " + quoted(name) + ": "
                            + meaning.map(MappingText::measured).orElse("left out")));
        }
        if (mapping.remarkColumn() != null) {
            lines.add("remark: column " + mapping.remarkColumn());
        }
        lines.add("rows: " + rows(mapping.rows()));
        lines.add("bad-cells: " + (mapping.leaveBadCellsOut() ? "leave out" : "refuse"));
        for (Finding finding : findings) {
            lines.add(("# " + finding.subject() + ": " + finding.words() + ", because " + finding.reason())
                    .replaceAll("\\p{Cntrl}", " "));
        }
        return String.join("\n", lines) + "\n";
    }

    private static void times(Times times, List<String> lines) {
        lines.add("date: column " + times.dateColumn() + (times.carriedDown() ? ", carried down" : ""));
        if (times.timeColumn() != null) {
            lines.add("time: column " + times.timeColumn());
        }
        lines.add("date-order: " + (times.order() == null ? "?" : lower(times.order())));
        lines.add("time-of-day: " + times.timeOfDay());
        lines.add("zone: " + times.zone().getId());
    }

    private static String measured(Measured measured) {
        StringBuilder text = new StringBuilder();
        text.append(measured.quantity().key())
                .append(", ")
                .append(measured.unit().key());
        if (measured.method() != null) {
            text.append(", method ").append(measured.method());
        }
        if (!measured.place().equals(MeasuredGuess.TANK)) {
            text.append(", place ").append(quoted(measured.place()));
        }
        if (measured.kept() != Kept.BY_PACE) {
            text.append(", as ").append(lower(measured.kept()));
        }
        return text + (measured.sure() ? "" : " ?");
    }

    private static String rows(RowChoice rows) {
        if (!rows.sure()) {
            return "by column " + rows.column() + " ?";
        }
        return rows.column() == 0 ? "all" : "column " + rows.column() + " is " + quoted(rows.text());
    }

    private static String lower(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }

    private static String quoted(String text) {
        return '"'
                + text.replace("\\", "\\\\")
                        .replace("\"", "\\\"")
                        .replace("\n", "\\n")
                        .replace("\r", "\\r")
                + '"';
    }

    /** Reads a mapping back. */
    public static MappingReading read(String text) {
        return new MappingReader().read(text);
    }
}
