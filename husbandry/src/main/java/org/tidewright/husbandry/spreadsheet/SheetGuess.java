package org.tidewright.husbandry.spreadsheet;

import java.io.IOException;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.IntPredicate;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** Guesses what stands where in a sheet, from its header and all its rows. */
final class SheetGuess {
    private final SheetSource source;
    private final Layout layout;
    private final TreeMap<Integer, String> labels = new TreeMap<>();
    private final List<ColumnStats> columns = new ArrayList<>();
    private final DecimalEvidence decimals = new DecimalEvidence();
    private final List<Finding> findings = new ArrayList<>();

    private SheetGuess(SheetSource source, Layout layout) {
        this.source = source;
        this.layout = layout;
    }

    static Proposal of(SheetSource source, ZoneId zone) throws IOException, UnusableSheet {
        SheetGuess guess = new SheetGuess(source, LayoutGuess.of(source));
        guess.lookThrough();
        return guess.proposal(zone);
    }

    private void lookThrough() throws IOException, UnusableSheet {
        SheetRows.each(source, layout.charset(), layout.separator(), row -> {
            for (int column = 1; column <= row.cells().size(); column++) {
                if (columns.size() < column) {
                    columns.add(new ColumnStats());
                }
                String cell = row.cell(column);
                if (row.line() >= layout.dataLine() && !CellNumber.isNothing(cell)) {
                    columns.get(column - 1).add(cell);
                    decimals.add(cell);
                } else if (row.line() >= layout.headerLine() && !cell.isEmpty()) {
                    labels.merge(column, cell, (above, below) -> above + " " + below);
                }
            }
            return true;
        });
    }

    private Proposal proposal(ZoneId zone) throws IOException, UnusableSheet {
        int date = dateColumn();
        Integer time = timeColumn(date);
        Guess<Optional<DateOrder>> order = stats(date).dates().order();
        DateOrder chosen = order.value().orElse(null);
        findings.add(new Finding("date-order", chosen == null ? "?" : chosen.words(), order.reason(), chosen != null));
        Guess<Optional<DecimalSign>> decimal = decimals.guess(layout.separator());
        DecimalSign sign = decimal.sure() ? decimal.value().orElse(null) : null;
        findings.add(new Finding("decimal", sign == null ? "?" : sign.name(), decimal.reason(), sign != null));
        Integer remark = first(column ->
                ColumnRole.isRemarkWord(label(column)) && stats(column).filled() > 0);
        Named named = new NamedGuess(source, layout, labels, columns, sign).of(date, time, findings);
        SortedMap<Integer, Measured> measured = new TreeMap<>();
        if (named == null) {
            measured = measured(
                    sign,
                    column -> column == date
                            || Integer.valueOf(column).equals(time)
                            || Integer.valueOf(column).equals(remark));
        }
        Times times = new Times(date, false, time, chosen, LocalTime.NOON, zone);
        Mapping mapping = new Mapping(layout, times, sign, measured, named, remark, rows(date), false);
        return new Proposal(mapping, labels, List.copyOf(findings));
    }

    private int dateColumn() throws UnusableSheet {
        Predicate<Integer> dates = column -> stats(column).areMostlyDates();
        Predicate<Integer> counted = column -> stats(column).areMostlyCountedDays();
        Predicate<Integer> headed = column -> ColumnRole.isDateWord(label(column));
        Predicate<Integer> halfDates =
                column -> headed.test(column) && stats(column).dates().dates() > 0;
        for (Predicate<Integer> kind : List.of(dates.and(headed), dates, counted.and(headed), counted, halfDates)) {
            Integer column = first(kind::test);
            if (column != null) {
                findings.add(new Finding(name(column), "date", "its cells are dates", true));
                return column;
            }
        }
        throw new UnusableSheet("no column holds dates; expected one with dates such as 2023-06-05 or 5 Jun 2023");
    }

    private @Nullable Integer timeColumn(int date) {
        if (2 * stats(date).datesWithTime() > stats(date).filled()) {
            return null;
        }
        Integer column = first(other -> other != date && ColumnRole.isTimeWord(label(other)) && isTime(other));
        if (column == null) {
            column = first(other -> other != date && stats(other).areMostlyTimes());
        }
        if (column == null) {
            boolean counted = stats(date).dates().counted() > 0;
            findings.add(new Finding(
                    "time-of-day", "12:00", counted ? "where the date has no time" : "no column tells the time", true));
        } else {
            findings.add(new Finding(name(column), "time of day", "its cells are times", true));
        }
        return column;
    }

    /** Times as a clock, or as a share of the day. */
    private boolean isTime(int column) {
        boolean shares = stats(column).numbers(DecimalSign.POINT).stream().allMatch(number -> number.value() < 1);
        return stats(column).areMostlyTimes() || (shares && stats(column).areMostlyNumbers());
    }

    private SortedMap<Integer, Measured> measured(@Nullable DecimalSign sign, IntPredicate taken) {
        DecimalSign decimal = sign == null ? DecimalSign.POINT : sign;
        SortedMap<Integer, Measured> measured = new TreeMap<>();
        for (int column = 1; column <= columns.size(); column++) {
            if (taken.test(column) || stats(column).filled() == 0) {
                continue;
            }
            Guess<Optional<Measured>> guess = stats(column).areMostlyNumbers()
                    ? MeasuredGuess.of(label(column), stats(column).numbers(decimal))
                    : new Guess<>(Optional.empty(), "most of its cells are no numbers", true);
            int number = column;
            guess.value().ifPresent(found -> measured.put(number, found));
            findings.add(new Finding(
                    name(column), guess.value().map(Mapping::told).orElse("left out"), guess.reason(), guess.sure()));
        }
        return measured;
    }

    /** Where a column names tanks and each date stands with several of them, the keeper must say which one is meant. */
    private RowChoice rows(int date) {
        Integer tanks = first(column -> {
            Map<String, Integer> texts = stats(column).texts();
            return column != date && ColumnRole.isTankWord(label(column)) && texts != null && texts.size() > 1;
        });
        if (tanks == null) {
            return RowChoice.ALL;
        }
        Map<String, Integer> texts = stats(tanks).texts();
        String names = texts == null ? "" : String.join(", ", texts.keySet());
        findings.add(new Finding("rows", "all", name(tanks) + " has " + names + ": take only one tank?", false));
        return new RowChoice(tanks, "", false);
    }

    private @Nullable Integer first(IntPredicate predicate) {
        return IntStream.rangeClosed(1, columns.size())
                .filter(predicate)
                .boxed()
                .findFirst()
                .orElse(null);
    }

    private ColumnStats stats(int column) {
        return columns.get(column - 1);
    }

    private String label(int column) {
        return labels.getOrDefault(column, "");
    }

    private String name(int column) {
        return label(column).isEmpty() ? "column " + column : "column " + column + " “" + label(column) + "”";
    }
}
