package org.tidewright.husbandry.spreadsheet;

import static org.tidewright.husbandry.spreadsheet.BadCell.quoted;

import java.nio.charset.Charset;
import java.time.DateTimeException;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.tidewright.plan.fault.Fault;
import org.tidewright.plan.fault.Spelling;

/** Reads what {@link MappingText} writes, or a keeper after it. */
final class MappingReader {
    static final String TEXT = "\"(?:[^\"\\\\]|\\\\.)*\"";
    private static final Pattern ENTRY = Pattern.compile("\\s*(?<key>column \\d{1,4}|name " + TEXT
            + "|[a-z-]+)\\s*:\\s*(?<value>(?:" + TEXT + "|[^\"#])*?)\\s*(?:#.*)?");
    private static final Pattern COLUMN = Pattern.compile("column (\\d{1,4})");
    private static final Pattern LINE = Pattern.compile("line (\\d{1,9})");
    private static final Pattern CHOSEN = Pattern.compile("column (\\d{1,4}) is (" + TEXT + ")");
    private static final Pattern BY_COLUMN = Pattern.compile("by column (\\d{1,4}) \\?");
    private static final Pattern ESCAPED = Pattern.compile("\\\\(.)", Pattern.DOTALL);
    private static final List<String> NEEDED =
            List.of("charset", "separator", "header", "data", "date", "date-order", "time-of-day", "zone", "decimal");
    private static final List<String> OTHER =
            List.of("time", "names", "values", "units", "remark", "rows", "bad-cells");
    private static final String A_COLUMN = "“column” and its number, such as column 3";

    private final List<Fault> faults = new ArrayList<>();
    private final Map<String, Entry> entries = new LinkedHashMap<>();

    private record Entry(int line, String key, String value) {}

    MappingReading read(String text) {
        List<String> lines = text.lines().toList();
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i);
            if (!line.isBlank() && !line.strip().startsWith("#")) {
                entry(i + 1, line);
            }
        }
        for (String needed : NEEDED) {
            if (!entries.containsKey(needed)) {
                fault(Math.max(1, lines.size()), "", "no entry “" + needed + "”", "one, as the proposal has it", "");
            }
        }
        Mapping mapping = faults.isEmpty() ? mapping() : null;
        return mapping == null || !faults.isEmpty()
                ? new MappingReading.Faulty(List.copyOf(faults))
                : new MappingReading.Read(mapping);
    }

    private void entry(int number, String line) {
        Matcher entry = ENTRY.matcher(line);
        if (line.length() > 2000 || !entry.matches()) {
            fault(number, "", quoted(line), "an entry such as date: column 1", "");
            return;
        }
        String key = entry.group("key");
        boolean known =
                NEEDED.contains(key) || OTHER.contains(key) || key.startsWith("column ") || key.startsWith("name ");
        List<String> all = new ArrayList<>(NEEDED);
        all.addAll(OTHER);
        if (!known) {
            fault(
                    number,
                    key,
                    "the unknown entry " + quoted(key),
                    "one of: " + String.join(", ", all),
                    Spelling.suggestion(key, all));
        } else if (entries.put(key, new Entry(number, key, entry.group("value"))) != null) {
            fault(number, key, quoted(key) + " a second time", "each entry once", "");
        }
    }

    private @Nullable Mapping mapping() {
        Layout layout = layout();
        Times times = times();
        DecimalSign decimal = constant("decimal", DecimalSign.values());
        SortedMap<Integer, Measured> columns = new TreeMap<>();
        Map<String, Optional<Measured>> names = new LinkedHashMap<>();
        entries.values().forEach(entry -> {
            Matcher column = COLUMN.matcher(entry.key());
            if (column.matches()) {
                measured(entry).ifPresent(found -> columns.put(Integer.parseInt(column.group(1)), found));
            } else if (entry.key().startsWith("name ")) {
                names.put(bare(entry.key().substring("name ".length())), measured(entry));
            }
        });
        RowChoice rows = rows();
        Entry badCells = entries.get("bad-cells");
        boolean leaveOut = badCells != null
                && oneOf(badCells, List.of("refuse", "leave out")).equals("leave out");
        Integer remark = entries.containsKey("remark") ? column("remark") : null;
        Named named = named(names);
        return layout == null || times == null
                ? null
                : new Mapping(layout, times, decimal, columns, named, remark, rows, leaveOut);
    }

    private @Nullable Layout layout() {
        Charset charset = parsed("charset", Charset::forName, "a character set such as utf-8");
        Character separator = MappingText.SEPARATORS.get(
                oneOf(entry("separator"), List.copyOf(new TreeMap<>(MappingText.SEPARATORS).keySet())));
        int data = line("data");
        int header = entry("header").value().equals("none") ? data : line("header");
        if (header > data) {
            fault(entry("header"), "a line above the data", "");
        }
        return charset == null || separator == null ? null : new Layout(charset, separator, header, data);
    }

    private @Nullable Times times() {
        String date = entry("date").value();
        boolean carried = date.endsWith(", carried down");
        int column = column(entry("date"), carried ? date.substring(0, date.indexOf(',')) : date);
        Integer time = entries.containsKey("time") ? column("time") : null;
        DateOrder order = constant("date-order", DateOrder.values());
        LocalTime timeOfDay = parsed("time-of-day", LocalTime::parse, "a time such as 12:00");
        ZoneId zone = parsed("zone", ZoneId::of, "a zone such as Europe/London");
        return timeOfDay == null || zone == null ? null : new Times(column, carried, time, order, timeOfDay, zone);
    }

    private @Nullable Named named(Map<String, Optional<Measured>> names) {
        if (names.isEmpty() && !entries.containsKey("names")) {
            return null;
        }
        for (String needed : List.of("names", "values")) {
            if (!entries.containsKey(needed)) {
                fault(1, "", "names, but no entry “" + needed + "”", A_COLUMN, "");
                return null;
            }
        }
        Integer units = entries.containsKey("units") ? column("units") : null;
        return new Named(column("names"), column("values"), units, names);
    }

    private RowChoice rows() {
        Entry entry = entries.get("rows");
        if (entry == null || entry.value().equals("all")) {
            return RowChoice.ALL;
        }
        Matcher chosen = CHOSEN.matcher(entry.value());
        Matcher open = BY_COLUMN.matcher(entry.value());
        if (chosen.matches()) {
            return new RowChoice(Integer.parseInt(chosen.group(1)), bare(chosen.group(2)), true);
        } else if (open.matches()) {
            return new RowChoice(Integer.parseInt(open.group(1)), "", false);
        }
        fault(entry, "all, or such as column 2 is \"left tank\"", "");
        return RowChoice.ALL;
    }

    private Optional<Measured> measured(Entry entry) {
        return new MeasuredReader(entry.line(), entry.key(), faults).read(entry.value());
    }

    private Entry entry(String key) {
        return entries.getOrDefault(key, new Entry(1, key, ""));
    }

    private int column(String key) {
        return column(entry(key), entry(key).value());
    }

    private int column(Entry entry, String value) {
        Matcher column = COLUMN.matcher(value);
        if (!column.matches() || column.group(1).matches("0+")) {
            fault(entry, A_COLUMN, "");
            return 1;
        }
        return Integer.parseInt(column.group(1));
    }

    private int line(String key) {
        Matcher line = LINE.matcher(entry(key).value());
        if (!line.matches() || line.group(1).matches("0+")) {
            fault(entry(key), "“line” and its number, such as line 2", "");
            return 1;
        }
        return Integer.parseInt(line.group(1));
    }

    /** Null for a question mark. */
    private <E extends Enum<E>> @Nullable E constant(String key, E[] constants) {
        if (entry(key).value().equals("?")) {
            return null;
        }
        List<String> names = Arrays.stream(constants)
                .map(constant -> constant.name().toLowerCase(Locale.ROOT))
                .toList();
        int index = names.indexOf(oneOf(entry(key), names));
        return index < 0 ? null : constants[index];
    }

    private String oneOf(Entry entry, List<String> names) {
        if (!names.contains(entry.value())) {
            fault(entry, "one of: " + String.join(", ", names), Spelling.suggestion(entry.value(), names));
        }
        return entry.value();
    }

    private <T> @Nullable T parsed(String key, Function<String, T> reader, String expected) {
        try {
            return reader.apply(entry(key).value());
        } catch (DateTimeException | IllegalArgumentException unreadable) {
            fault(entry(key), expected, "");
            return null;
        }
    }

    static String bare(String quoted) {
        return ESCAPED.matcher(quoted.substring(1, quoted.length() - 1))
                .replaceAll(escaped -> switch (escaped.group(1)) {
                    case "n" -> "\n";
                    case "r" -> "\r";
                    default -> Matcher.quoteReplacement(escaped.group(1));
                });
    }

    private void fault(Entry entry, String expected, String mend) {
        fault(entry.line(), entry.key(), quoted(entry.value()), expected, mend);
    }

    private void fault(int line, String where, String found, String expected, String mend) {
        faults.add(new Fault(line, 1, where, found, expected, mend));
    }
}
