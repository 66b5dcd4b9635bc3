package org.tidewright.husbandry.spreadsheet;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Finds out whether a sheet has one value to a row beside its name, and what the names mean. */
final class NamedGuess {
    private static final int MOST_NAMES = 80;
    private static final int SAMPLE = 2000;
    private static final int LONGEST_NAME = 60;

    private final SheetSource source;
    private final Layout layout;
    private final Map<Integer, String> labels;
    private final List<ColumnStats> columns;
    private final DecimalSign decimal;

    NamedGuess(
            SheetSource source,
            Layout layout,
            Map<Integer, String> labels,
            List<ColumnStats> columns,
            @Nullable DecimalSign decimal) {
        this.source = source;
        this.layout = layout;
        this.labels = labels;
        this.columns = columns;
        this.decimal = decimal == null ? DecimalSign.POINT : decimal;
    }

    /** What a name's values are, and the first unit that stands beside it. */
    private static final class OfName {
        private final List<CellNumber> numbers = new ArrayList<>();
        private String unit = "";
    }

    /** Null where each column is a quantity of its own. */
    @Nullable
    Named of(int date, @Nullable Integer time, List<Finding> findings) throws IOException, UnusableSheet {
        Integer names = column(column -> namesQuantities(column, date, time));
        if (names == null) {
            return null;
        }
        Integer values = values(names, date, time);
        if (values == null) {
            return null;
        }
        Integer units = column(column -> column != names && column != date && areUnits(column));
        Map<String, OfName> byName = lookThrough(names, values, units);
        Map<String, Optional<Measured>> meanings = new LinkedHashMap<>();
        byName.forEach((name, found) -> {
            Guess<Optional<Measured>> guess = MeasuredGuess.of(name + " " + found.unit, found.numbers);
            meanings.put(name, guess.value());
            findings.add(new Finding(
                    "name “" + name + "”",
                    guess.value().map(Mapping::told).orElse("left out"),
                    guess.reason(),
                    guess.sure()));
        });
        return new Named(names, values, units, meanings);
    }

    private interface Test {
        boolean holds(int column);
    }

    private @Nullable Integer column(Test test) {
        for (int column = 1; column <= columns.size(); column++) {
            if (test.holds(column)) {
                return column;
            }
        }
        return null;
    }

    private boolean namesQuantities(int column, int date, @Nullable Integer time) {
        ColumnStats stats = columns.get(column - 1);
        Map<String, Integer> texts = stats.texts();
        if (column == date || Integer.valueOf(column).equals(time) || texts == null || stats.areMostlyNumbers()) {
            return false;
        }
        int naming = texts.entrySet().stream()
                .filter(text -> HeaderWords.of(text.getKey()).quantities().size() == 1
                        && !HeaderWords.of(text.getKey()).isUnit())
                .mapToInt(Map.Entry::getValue)
                .sum();
        return 10 * naming > 7 * stats.filled();
    }

    /** The column of numbers that names no quantity itself. */
    private @Nullable Integer values(int names, int date, @Nullable Integer time) {
        return column(column -> column != names
                && column != date
                && !Integer.valueOf(column).equals(time)
                && columns.get(column - 1).areMostlyNumbers()
                && HeaderWords.of(labels.getOrDefault(column, "")).quantities().isEmpty());
    }

    private boolean areUnits(int column) {
        Map<String, Integer> texts = columns.get(column - 1).texts();
        return texts != null
                && !texts.isEmpty()
                && texts.keySet().stream()
                                        .filter(text -> HeaderWords.of(text).isUnit())
                                        .count()
                                * 10
                        >= texts.size() * 7L;
    }

    private Map<String, OfName> lookThrough(int names, int values, @Nullable Integer units)
            throws IOException, UnusableSheet {
        Map<String, OfName> byName = new LinkedHashMap<>();
        Map<String, String> spelt = new LinkedHashMap<>();
        SheetRows.each(source, layout.charset(), layout.separator(), row -> {
            String name = row.cell(names);
            if (row.line() < layout.dataLine()
                    || CellNumber.isNothing(row.cell(values))
                    || name.length() > LONGEST_NAME) {
                return true;
            }
            if (spelt.size() >= MOST_NAMES && !spelt.containsKey(Named.key(name))) {
                return true;
            }
            OfName found =
                    byName.computeIfAbsent(spelt.computeIfAbsent(Named.key(name), key -> name), none -> new OfName());
            if (units != null && found.unit.isEmpty()) {
                found.unit = row.cell(units);
            }
            if (found.numbers.size() < SAMPLE) {
                CellNumber.ifReadable(row.cell(values), decimal).ifPresent(found.numbers::add);
            }
            return true;
        });
        return byName;
    }
}
