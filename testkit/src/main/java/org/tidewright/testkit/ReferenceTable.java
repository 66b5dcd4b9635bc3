package org.tidewright.testkit;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A CSV file of numbers that others have published or computed, read from the class path of a test.
 *
 * <p>UTF-8. Lines starting with {@code #} before the header are the heading: source, how taken, tolerance. The header
 * names the columns, units in the names. An empty cell is absent, which is not zero.
 */
public final class ReferenceTable {
    private final String file;
    private final List<String> heading;
    private final List<String> columns;
    private final List<Row> rows;

    private ReferenceTable(String file, List<String> heading, List<String> columns, List<Row> rows) {
        this.file = file;
        this.heading = List.copyOf(heading);
        this.columns = List.copyOf(columns);
        this.rows = List.copyOf(rows);
    }

    /**
     * Reads a table.
     *
     * @param near a class of the module that holds the file
     * @param resource path as for {@link Class#getResourceAsStream}, for example {@code "/reference/density/eos80.csv"}
     */
    public static ReferenceTable read(Class<?> near, String resource) {
        try (InputStream bytes = near.getResourceAsStream(resource)) {
            if (bytes == null) {
                throw new IllegalArgumentException("no reference file " + resource + " on the class path of "
                        + near.getName() + " (is it under src/test/resources?)");
            }
            return parse(resource, bytes);
        } catch (IOException failure) {
            throw new UncheckedIOException("cannot read " + resource, failure);
        }
    }

    private static ReferenceTable parse(String file, InputStream bytes) throws IOException {
        List<String> heading = new ArrayList<>();
        Map<String, Integer> places = new HashMap<>();
        List<String> columns = new ArrayList<>();
        List<Row> rows = new ArrayList<>();
        // The reader would refuse ragged lines itself, by record number; here they are refused by line number.
        try (CsvReader<CsvRecord> records = CsvReader.builder()
                .commentStrategy(CommentStrategy.READ)
                .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                .ofCsvRecord(new InputStreamReader(bytes, StandardCharsets.UTF_8))) {
            for (CsvRecord record : records) {
                long line = record.getStartingLineNumber();
                if (record.isComment()) {
                    if (!columns.isEmpty()) {
                        throw fault(file, line, "a # line below the header; the heading stands above it");
                    }
                    heading.add(record.getField(0).strip());
                } else if (columns.isEmpty()) {
                    columns.addAll(record.getFields());
                    for (String column : columns) {
                        if (column.isBlank() || places.putIfAbsent(column, places.size()) != null) {
                            throw fault(file, line, "column name '" + column + "' is blank or stands twice");
                        }
                    }
                } else if (record.getFieldCount() != columns.size()) {
                    throw fault(
                            file,
                            line,
                            record.getFieldCount() + " cells under a header of " + columns.size() + " columns");
                } else {
                    rows.add(new Row(file, heading, line, places, record.getFields()));
                }
            }
        } catch (CsvParseException broken) {
            throw new IllegalArgumentException(file + ": " + broken.getMessage(), broken);
        }
        if (rows.isEmpty()) {
            throw new IllegalArgumentException(file + ": no rows; a test over it could not fail");
        }
        return new ReferenceTable(file, heading, columns, rows);
    }

    private static IllegalArgumentException fault(String file, long line, String what) {
        return new IllegalArgumentException(file + ", line " + line + ": " + what);
    }

    /** The path the table was read from. */
    public String file() {
        return file;
    }

    /** The lines above the header without their {@code #}. */
    public List<String> heading() {
        return heading;
    }

    /** Column names in the order of the file. */
    public List<String> columns() {
        return columns;
    }

    /** Every row in the order of the file; there is at least one. */
    public List<Row> rows() {
        return rows;
    }

    /** The one row whose cell in {@code column} reads {@code text}. */
    public Row row(String column, String text) {
        List<Row> found =
                rows.stream().filter(row -> text.equals(row.cell(column))).toList();
        if (found.size() != 1) {
            throw new IllegalArgumentException(
                    file + ": " + found.size() + " rows with " + column + " = " + text + ", expected one");
        }
        return found.get(0);
    }

    @Override
    public String toString() {
        return file;
    }

    /** One line of a table; knows where it stands. */
    public static final class Row {
        private final String file;
        private final List<String> heading;
        private final long line;
        private final Map<String, Integer> places;
        private final List<String> cells;

        private Row(String file, List<String> heading, long line, Map<String, Integer> places, List<String> cells) {
            this.file = file;
            this.heading = heading;
            this.line = line;
            this.places = Collections.unmodifiableMap(places);
            this.cells = List.copyOf(cells);
        }

        /** Path of the table it stands in. */
        String file() {
            return file;
        }

        /** What the table's heading says after a word: {@code source}, {@code taken}; empty where it does not. */
        String heading(String word) {
            return heading.stream()
                    .filter(text -> text.startsWith(word + ":"))
                    .map(text -> text.substring(word.length() + 1).strip())
                    .findFirst()
                    .orElse("");
        }

        /** Whether the cell holds anything. */
        public boolean has(String column) {
            return cell(column) != null;
        }

        /** The cell as written; refused when absent. */
        public String text(String column) {
            String cell = cell(column);
            if (cell == null) {
                throw new IllegalArgumentException(where(column) + ": the cell is empty");
            }
            return cell;
        }

        /** The cell as a finite number; refused when absent or anything else. */
        public double number(String column) {
            String text = text(column);
            double number;
            try {
                number = Double.parseDouble(text);
            } catch (NumberFormatException notANumber) {
                throw new IllegalArgumentException(where(column) + ": '" + text + "' is not a number", notANumber);
            }
            if (!Double.isFinite(number)) {
                throw new IllegalArgumentException(where(column) + ": '" + text + "' is not a finite number");
            }
            return number;
        }

        /** File, line and column, for messages. */
        public String where(String column) {
            return file + ", line " + line + ", column " + column;
        }

        @Override
        public String toString() {
            return file + ", line " + line + ": " + String.join(",", cells);
        }

        private @Nullable String cell(String column) {
            Integer place = places.get(column);
            if (place == null) {
                throw new IllegalArgumentException(file + ": no column '" + column + "'; there are "
                        + places.keySet().stream().sorted().toList());
            }
            String cell = cells.get(place);
            return cell.isBlank() ? null : cell;
        }
    }
}
