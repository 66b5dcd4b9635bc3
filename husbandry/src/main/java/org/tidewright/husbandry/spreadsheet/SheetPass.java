package org.tidewright.husbandry.spreadsheet;

import static org.tidewright.husbandry.spreadsheet.BadCell.quoted;

import java.io.IOException;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.husbandry.spreadsheet.SheetRows.Row;
import org.tidewright.plan.fault.Fault;
import org.tidewright.plan.fault.Spelling;
import org.tidewright.plan.method.QuantityUnit;

/** Goes through a sheet under a mapping, once, and tells what it finds row by row. */
final class SheetPass {
    private final Mapping mapping;
    private final DecimalSign decimal;
    private final Sink sink;
    private final List<Series> series;
    private final Map<String, Series> byName = new HashMap<>();
    private String dateAbove = "";
    private int width;

    /** The numbers of one column, or those beside one name. */
    record Series(int index, String label, int column, Measured measured) {}

    /** One number, read. */
    record Found(int line, Series series, OffsetDateTime at, Event.Reading reading) {}

    /** Is told what a sheet holds. */
    interface Sink {
        void found(Found found);

        /** What a row says in words, after its numbers. */
        void remark(int line, OffsetDateTime at, String words);

        void comesTwice(int line, OffsetDateTime at);

        void bad(Fault fault);

        /** After each row of data. */
        void rowDone();
    }

    private SheetPass(Mapping mapping, List<Series> series, Sink sink) {
        this.mapping = mapping;
        this.decimal = mapping.decimal() == null ? DecimalSign.POINT : mapping.decimal();
        this.series = series;
        this.sink = sink;
        if (mapping.named() != null) {
            series.forEach(one -> byName.put(Named.key(one.label()), one));
        }
    }

    /** All series of a mapping, in its order. */
    static List<Series> series(Mapping mapping, Map<Integer, String> labels) {
        List<Series> series = new ArrayList<>();
        Named named = mapping.named();
        mapping.columns()
                .forEach((column, measured) -> series.add(
                        new Series(series.size(), labels.getOrDefault(column, "column " + column), column, measured)));
        if (named != null) {
            named.names()
                    .forEach((name, meaning) -> meaning.ifPresent(
                            measured -> series.add(new Series(series.size(), name, named.valueColumn(), measured))));
        }
        return series;
    }

    static void run(SheetSource source, Mapping mapping, List<Series> series, Sink sink)
            throws IOException, UnusableSheet {
        Layout layout = mapping.layout();
        SheetPass pass = new SheetPass(mapping, series, sink);
        SheetRows.each(source, layout.charset(), layout.separator(), row -> {
            if (row.line() >= layout.dataLine()) {
                pass.row(row);
                sink.rowDone();
            } else if (row.line() >= layout.headerLine()) {
                pass.width = Math.max(pass.width, row.cells().size());
            }
            return true;
        });
    }

    private record Cell(Series series, String text, int column) {}

    private void row(Row row) {
        Times times = mapping.times();
        String dateCell = row.cell(times.dateColumn());
        boolean undated = CellNumber.isNothing(dateCell);
        if (!undated) {
            dateAbove = dateCell;
        }
        if (!mapping.rows().takes(row) || isOpen(undated ? dateAbove : dateCell)) {
            return;
        }
        String remark = mapping.remarkColumn() == null ? "" : row.cell(mapping.remarkColumn());
        try {
            refuseMoreCells(row);
            List<Cell> cells = mapping.named() == null ? wide(row) : named(row, mapping.named());
            if (cells.isEmpty() && remark.isEmpty()) {
                return;
            }
            if (undated && !(times.carriedDown() && !dateAbove.isEmpty())) {
                throw new BadCell(
                        "no date",
                        "one in column " + times.dateColumn(),
                        times.carriedDown()
                                ? ""
                                : "Where an empty date means the one above, say that it is carried down.");
            }
            Moment moment = moment(row, undated ? dateAbove : dateCell, times);
            numbers(row, cells, moment);
            if (!remark.isEmpty()) {
                sink.remark(row.line(), moment.at(), remark);
            }
        } catch (BadCell bad) {
            sink.bad(fault(row, times.dateColumn(), "", bad));
        }
    }

    /** While the order of dates is asked for, a row under such a date says nothing. */
    private boolean isOpen(String dateCell) {
        return mapping.times().order() == null
                && DateShape.of(dateCell)
                        .filter(date -> date.kind() == DateShape.Kind.NUMBERS)
                        .isPresent();
    }

    private static Moment moment(Row row, String dateCell, Times times) throws BadCell {
        Integer column = times.timeColumn();
        if (column == null || CellNumber.isNothing(row.cell(column))) {
            return Moment.of(dateCell, null, times);
        }
        TimeShape time;
        try {
            time = Moment.timeOfDay(row.cell(column));
        } catch (BadCell bad) {
            throw bad.in(column);
        }
        return Moment.of(dateCell, time, times);
    }

    private void numbers(Row row, List<Cell> cells, Moment moment) {
        if (moment.comesTwice()) {
            sink.comesTwice(row.line(), moment.at());
        }
        for (Cell cell : cells) {
            try {
                Event.Reading reading = reading(row, cell);
                sink.found(new Found(row.line(), cell.series(), moment.at(), reading));
            } catch (BadCell bad) {
                sink.bad(fault(row, cell.column(), cell.series().label(), bad));
            }
        }
    }

    /** A row longer than its header is mostly one with decimal commas between commas. */
    private void refuseMoreCells(Row row) throws BadCell {
        for (int column = width + 1; column <= row.cells().size(); column++) {
            if (width > 0 && !row.cell(column).isEmpty()) {
                throw new BadCell(
                        row.cells().size() + " cells",
                        width + " or fewer, as in the header",
                        "Is there a separator inside a number or a text?");
            }
        }
    }

    private List<Cell> wide(Row row) {
        List<Cell> cells = new ArrayList<>();
        for (Series one : series) {
            String text = row.cell(one.column());
            if (!CellNumber.isNothing(text)) {
                cells.add(new Cell(one, text, one.column()));
            }
        }
        return cells;
    }

    private List<Cell> named(Row row, Named named) throws BadCell {
        String text = row.cell(named.valueColumn());
        if (CellNumber.isNothing(text)) {
            return List.of();
        }
        String name = Named.key(row.cell(named.nameColumn()));
        Series meant = byName.get(name);
        if (meant != null) {
            return List.of(new Cell(meant, text, named.valueColumn()));
        } else if (named.names().keySet().stream().map(Named::key).anyMatch(name::equals)) {
            return List.of();
        }
        throw new BadCell(
                quoted(name) + " in column " + named.nameColumn(),
                "one of the names of the mapping",
                Spelling.suggestion(name, named.names().keySet()));
    }

    private Event.Reading reading(Row row, Cell cell) throws BadCell {
        Measured measured = cell.series().measured();
        CellNumber number = CellNumber.read(cell.text(), decimal);
        QuantityUnit unit = unit(row, number, measured);
        try {
            return new Event.Reading(measured.quantity(), number.value(), unit, measured.method());
        } catch (IllegalArgumentException cannotBeMeant) {
            throw new BadCell(
                    quoted(cell.text()),
                    measured.quantity().words() + " that can be meant in "
                            + (unit.symbol().isEmpty() ? unit.key() : unit.symbol()),
                    ProbableCause.of(measured.quantity(), unit, number.digits()));
        }
    }

    /** The unit in the cell itself, that of the row, or that of the series. */
    private QuantityUnit unit(Row row, CellNumber number, Measured measured) throws BadCell {
        Named named = mapping.named();
        String written = number.unit().isEmpty() && named != null && named.unitColumn() != null
                ? row.cell(named.unitColumn())
                : number.unit();
        if (written.isEmpty() || CellNumber.isNothing(written)) {
            return measured.unit();
        }
        return unitWritten(written, measured)
                .orElseThrow(() -> new BadCell(
                        quoted(written) + " as the unit of "
                                + measured.quantity().words(),
                        "one of: "
                                + String.join(
                                        ", ",
                                        measured.quantity().units().stream()
                                                .map(unit -> unit.symbol().isEmpty() ? unit.key() : unit.symbol())
                                                .toList()),
                        ""));
    }

    /** “ppb” alone says nothing against µg/L PO4: a word that leaves open of what is told as the series has it. */
    private static Optional<QuantityUnit> unitWritten(String written, Measured measured) {
        String begins = switch (written.toLowerCase(Locale.ROOT)) {
            case "ppm", "mg/l" -> "mg/L";
            case "ppb", "ug/l", "µg/l", "μg/l" -> "µg/L";
            case "sg" -> "SG";
            default -> "no such beginning";
        };
        if (measured.unit().symbol().startsWith(begins)) {
            return Optional.of(measured.unit());
        }
        return measured.quantity()
                .unitSpelt(written)
                .or(() -> UnitWords.unit(measured.quantity(), HeaderWords.of(written))
                        .map(Guess::value));
    }

    private static Fault fault(Row row, int column, String label, BadCell bad) {
        int of = bad.column() == 0 ? column : bad.column();
        return new Fault(row.line(), of, label, bad.found(), bad.expected(), bad.mend());
    }
}
