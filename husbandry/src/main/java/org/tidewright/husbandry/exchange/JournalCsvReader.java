package org.tidewright.husbandry.exchange;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.journal.Kind;
import org.tidewright.husbandry.journal.ProbeLog.Probe;
import org.tidewright.husbandry.journal.ProbeLog.Value;
import org.tidewright.plan.fault.Spelling;
import org.tidewright.plan.method.WaterQuantity;

/** Reads what {@link JournalCsv} writes, a row at a time. Columns may stand in any order. */
final class JournalCsvReader {
    private static final List<String> FILES = Stream.concat(
                    Arrays.stream(Kind.values()).map(JournalFormat::file), Stream.of(JournalCsv.PROBES))
            .toList();

    private final JournalCsv.Source source;
    private final CopyReader.Listener listener;
    private final Faults faults;

    private @Nullable Probe probe;
    private Place blockPlace = new Place(1, 1, JournalCsv.PROBES);
    private List<Value> block = new ArrayList<>();
    private int version = JournalFormat.VERSION;

    JournalCsvReader(JournalCsv.Source source, CopyReader.Listener listener, Faults faults) {
        this.source = source;
        this.listener = listener;
        this.faults = faults;
    }

    void read() throws IOException {
        Map<String, String> rows = new LinkedHashMap<>();
        rows(JournalCsv.MANIFEST, JournalCsv.MANIFEST_COLUMNS, given -> manifest(given, rows));
        if (!faults.isEmpty()) {
            return;
        }
        List<Kind> kinds = Arrays.stream(Kind.values())
                .filter(kind -> JournalFormat.since(kind) <= version)
                .toList();
        for (String file : FILES) {
            boolean known = file.equals(JournalCsv.PROBES)
                    || kinds.stream().anyMatch(kind -> JournalFormat.file(kind).equals(file));
            if (known && !rows.containsKey(file)) {
                faults.add(new Place(1, 1, JournalCsv.MANIFEST)
                        .fault("no row for " + file, "one for each file, also for those without rows", ""));
            }
        }
        for (Kind kind : kinds) {
            String file = JournalFormat.file(kind);
            counted(file, rows.get(file), rows(file, JournalCsv.columns(kind), given -> line(kind, given)));
        }
        int values = rows(JournalCsv.PROBES, JournalCsv.PROBE_COLUMNS, this::value);
        handOn();
        counted(JournalCsv.PROBES, rows.get(JournalCsv.PROBES), values);
    }

    private void manifest(Given given, Map<String, String> rows) throws BadLine {
        if (!given.text("format").equals(JournalFormat.NAME)) {
            throw given.refusal("format", "“" + JournalFormat.NAME + "”", "");
        }
        version = given.whole("version");
        if (!JournalFormat.isRead(version)) {
            throw given.refusal(
                    "version",
                    "version 1 to " + JournalFormat.VERSION,
                    version > JournalFormat.VERSION
                            ? "A newer program wrote these files: read them with that one, or a later one."
                            : "");
        }
        String file =
                given.oneOf("file", name -> FILES.stream().filter(name::equals).findFirst(), FILES);
        String count = given.isAbsent("rows") ? "" : Integer.toString(given.whole("rows"));
        if (rows.put(file, count) != null) {
            throw given.refusal("file", "each file once", "");
        }
        listener.system(given.text("system"));
    }

    /** A file that was cut short at the end of a row shows only by the number of its rows. */
    private void counted(String file, @Nullable String told, int rows) {
        if (rows >= 0 && told != null && !told.isEmpty() && !told.equals(Integer.toString(rows))) {
            faults.add(new Place(1, 1, file)
                    .fault(
                            rows + " rows",
                            told + ", as " + JournalCsv.MANIFEST + " says",
                            "If rows were added or taken out on purpose, empty the cell “rows” there."));
        }
    }

    private void line(Kind kind, Given given) throws BadLine {
        int entry = given.whole(JournalCsv.ENTRY);
        listener.line(given.place(), entry, LineFields.read(kind, given));
    }

    private void value(Given given) throws BadLine {
        WaterQuantity quantity = EventFields.quantity(given);
        String unit = JournalFormat.heldUnit(quantity);
        if (!given.text("unit").equals(unit)) {
            throw given.refusal("unit", unit + ", in which values of this quantity are kept", "");
        }
        Instant at = given.parsed("at", Instant::parse, "a time such as 2026-03-01T07:30:12Z");
        Probe of = new Probe(quantity, given.text("method"), given.text("place"));
        if (!of.equals(probe) || block.size() == CopyReader.BLOCK) {
            handOn();
            probe = of;
            blockPlace = given.place();
        }
        block.add(new Value(at, given.number("value")));
    }

    private void handOn() {
        if (probe != null && !block.isEmpty()) {
            listener.values(blockPlace, probe, block);
        }
        block = new ArrayList<>();
    }

    private interface Row {
        void read(Given given) throws BadLine;
    }

    /** How many rows a file has below its header; -1 where it cannot be read so far. */
    private int rows(String file, List<String> columns, Row row) throws IOException {
        Place start = new Place(1, 1, file);
        try (InputStream in = source.open(file)) {
            if (in == null) {
                faults.add(start.fault("no such file", "all files that were written together", ""));
                return -1;
            }
            return rows(file, columns, row, in);
        } catch (CharacterCodingException noUtf8) {
            faults.add(
                    start.fault("bytes that are no UTF-8", "text in UTF-8", "Was it saved anew by another program?"));
        } catch (CsvParseException noCsv) {
            faults.add(start.fault("what is no CSV (" + noCsv.getMessage() + ")", "comma-separated values", ""));
        } catch (BadLine unusable) {
            faults.add(unusable.fault());
        }
        return -1;
    }

    private int rows(String file, List<String> columns, Row row, InputStream in) throws IOException, BadLine {
        int count = -1;
        List<String> header = List.of();
        try (CsvReader<CsvRecord> records = CsvReader.builder()
                .detectBomHeader(false)
                .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                .ofCsvRecord(new InputStreamReader(in, StandardCharsets.UTF_8.newDecoder()))) {
            for (CsvRecord record : records) {
                if (++count == 0) {
                    header = header(file, columns, record);
                } else {
                    try {
                        row.read(given(file, header, record));
                    } catch (BadLine bad) {
                        faults.add(bad.fault());
                    }
                }
            }
        } catch (UncheckedIOException failed) {
            throw failed.getCause();
        }
        if (count < 0) {
            throw new BadLine(new Place(1, 1, file).fault("nothing", "a header: " + String.join(",", columns), ""));
        }
        return count;
    }

    private static List<String> header(String file, List<String> columns, CsvRecord record) throws BadLine {
        List<String> header = new ArrayList<>(record.getFields());
        if (header.get(0).startsWith("\uFEFF")) {
            header.set(0, header.get(0).substring(1));
        }
        Place place = new Place(line(record), 1, file);
        for (String column : columns) {
            if (!header.contains(column)) {
                throw new BadLine(place.fault(
                        "no column “" + column + "”",
                        "the columns " + String.join(",", columns),
                        Spelling.suggestion(column, header)));
            }
        }
        for (int i = 0; i < header.size(); i++) {
            Place cell = new Place(line(record), i + 1, file);
            if (!columns.contains(header.get(i))) {
                throw new BadLine(cell.fault(
                        "the unknown column “" + header.get(i) + "”",
                        "only: " + String.join(",", columns),
                        Spelling.suggestion(header.get(i), columns)));
            } else if (header.indexOf(header.get(i)) < i) {
                throw new BadLine(cell.fault("the column “" + header.get(i) + "” twice", "each column once", ""));
            }
        }
        return header;
    }

    private static Given given(String file, List<String> header, CsvRecord record) throws BadLine {
        Place place = new Place(line(record), 1, file);
        if (record.getFieldCount() != header.size()) {
            throw new BadLine(place.fault(record.getFieldCount() + " cells", header.size() + ", as in the header", ""));
        }
        Map<String, Scalar> values = new HashMap<>();
        for (int i = 0; i < header.size(); i++) {
            Place cell = new Place(line(record), i + 1, file + ", " + header.get(i));
            values.put(header.get(i), new Scalar(Scalar.Form.CELL, record.getField(i), cell));
        }
        return new Given(place, values);
    }

    private static int line(CsvRecord record) {
        return (int) Math.min(Integer.MAX_VALUE, record.getStartingLineNumber());
    }
}
