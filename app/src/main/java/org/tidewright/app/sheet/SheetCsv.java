package org.tidewright.app.sheet;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.Writer;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.sheet.SheetColumn;
import org.tidewright.husbandry.sheet.WaterSheet;
import org.tidewright.seawater.carbonate.BoronRatio;

/**
 * Adds to a CSV file every column that can be computed from those it has. The file is read twice, the first time to see
 * which columns stand in which rows, so that files of any length pass through little memory.
 */
public final class SheetCsv {
    private static final Pattern NUMBER = Pattern.compile("[-+]?(\\d+(\\.\\d*)?|\\.\\d+)([eE][-+]?\\d+)?");

    private final Path file;
    private final String called;
    private final BoronRatio boron;
    private final Consumer<String> badRow;

    /**
     * A file to solve.
     *
     * @param called its name in messages
     * @param boron whose ratio of boron to salinity
     * @param badRow told, in words, of each row that was left as it is
     */
    public SheetCsv(Path file, String called, BoronRatio boron, Consumer<String> badRow) {
        this.file = file;
        this.called = called;
        this.boron = boron;
        this.badRow = badRow;
    }

    /** What became of a file. */
    public record Outcome(long rows, long badRows) {}

    /** Opens what the result goes to, once the file is known to be usable. */
    public interface Target {
        Writer open() throws IOException;
    }

    /**
     * Writes the file with its added columns. Cells, comments and their order stay; line ends become LF, the encoding
     * UTF-8.
     *
     * @throws UnusableCsv where nothing can be computed; then the target has not been opened
     */
    public Outcome solve(Target target) throws IOException, UnusableCsv {
        try {
            Set<SheetColumn> added = added();
            try (Writer out = target.open()) {
                return write(out, added);
            }
        } catch (CsvParseException broken) {
            throw new UnusableCsv(called + " is no CSV: " + broken.getMessage());
        }
    }

    /** Every column that some row lets be computed. */
    private Set<SheetColumn> added() throws IOException, UnusableCsv {
        SheetHeader header = null;
        Set<Set<SheetColumn>> kinds = new HashSet<>();
        try (CsvReader<CsvRecord> records = reader()) {
            for (CsvRecord row : records) {
                if (row.isComment()) {
                    continue;
                }
                if (header == null) {
                    header = SheetHeader.of(row.getFields(), place(row));
                } else if (row.getFieldCount() == header.size()) {
                    kinds.add(given(header, row));
                }
            }
        }
        if (header == null) {
            throw new UnusableCsv(called + ": found no header; expected a first line with the names of the columns");
        }
        EnumSet<SheetColumn> added = EnumSet.noneOf(SheetColumn.class);
        for (Set<SheetColumn> kind : kinds) {
            added.addAll(SheetHeader.computable(kind));
        }
        if (added.isEmpty() && !kinds.isEmpty()) {
            throw new UnusableCsv(called + ": nothing can be computed from "
                    + header.places().keySet().stream().map(SheetColumn::key).toList()
                    + " alone; add temperature_c and practical_salinity or conductivity_ms_cm");
        }
        header.with(added, called);
        return added;
    }

    private Outcome write(Writer out, Set<SheetColumn> added) throws IOException, UnusableCsv {
        SheetHeader header = null;
        long rows = 0;
        long bad = 0;
        try (CsvReader<CsvRecord> records = reader();
                CsvWriter writer =
                        CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(out)) {
            for (CsvRecord row : records) {
                if (row.isComment()) {
                    writer.writeComment(row.getField(0));
                } else if (header == null) {
                    header = SheetHeader.of(row.getFields(), place(row));
                    writer.writeRecord(header.with(added, called));
                } else {
                    rows++;
                    List<String> cells = new ArrayList<>(row.getFields());
                    Map<SheetColumn, Double> computed = computed(header, row);
                    if (computed == null) {
                        bad++;
                    }
                    while (cells.size() < header.size()) {
                        cells.add("");
                    }
                    for (SheetColumn column : added) {
                        Double value = computed == null ? null : computed.get(column);
                        cells.add(value == null ? "" : value.toString());
                    }
                    writer.writeRecord(cells);
                }
            }
        }
        return new Outcome(rows, bad);
    }

    /** The computed numbers of a row, or null after it has been told what is wrong with it. */
    private @Nullable Map<SheetColumn, Double> computed(SheetHeader header, CsvRecord row) {
        try {
            if (row.getFieldCount() != header.size()) {
                throw new IllegalArgumentException(
                        "found " + row.getFieldCount() + " cells; expected " + header.size() + " as in the header");
            }
            Map<SheetColumn, Double> given = new EnumMap<>(SheetColumn.class);
            header.places().forEach((column, place) -> {
                String cell = row.getField(place).strip();
                if (!cell.isEmpty()) {
                    given.put(column, number(column, cell));
                }
            });
            return WaterSheet.of(given, boron, null).computed();
        } catch (IllegalArgumentException refused) {
            badRow.accept(place(row) + ": " + refused.getMessage());
            return null;
        }
    }

    private static double number(SheetColumn column, String cell) {
        if (!NUMBER.matcher(cell).matches()) {
            throw new IllegalArgumentException(column.key() + ": found “" + cell + "”; expected a number such as 25.1");
        }
        return Double.parseDouble(cell);
    }

    private static Set<SheetColumn> given(SheetHeader header, CsvRecord row) {
        EnumSet<SheetColumn> given = EnumSet.noneOf(SheetColumn.class);
        header.places().forEach((column, place) -> {
            if (!row.getField(place).isBlank()) {
                given.add(column);
            }
        });
        return given;
    }

    private String place(CsvRecord row) {
        return called + ":" + row.getStartingLineNumber();
    }

    private CsvReader<CsvRecord> reader() throws IOException {
        return CsvReader.builder()
                .commentStrategy(CommentStrategy.READ)
                .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                .detectBomHeader(true)
                .ofCsvRecord(file);
    }
}
