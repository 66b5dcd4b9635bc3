package org.tidewright.husbandry.exchange;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.journal.Kind;
import org.tidewright.husbandry.journal.Line;
import org.tidewright.husbandry.journal.ProbeLog.Probe;

/** Everything kept of a system but its photos, as CSV files: docs/formats/journal-csv.md. */
public final class JournalCsv {
    static final String MANIFEST = "manifest.csv";
    static final String PROBES = "probes.csv";
    static final List<String> MANIFEST_COLUMNS = List.of("format", "version", "system", "file", "rows");
    static final List<String> PROBE_COLUMNS = List.of("quantity", "method", "place", "at", "value", "unit");
    static final String ENTRY = "entry";

    /** Where files are made, one after the other; each is closed before the next is asked for. */
    public interface Target {
        OutputStream create(String file) throws IOException;
    }

    /** Where files are found; each is read twice. */
    public interface Source {
        /** A file by its name; null where there is none. */
        @Nullable
        InputStream open(String file) throws IOException;
    }

    private JournalCsv() {}

    /** Writes all files, also those without rows; the manifest comes last, since it says how many rows there are. */
    public static void write(KeptSystem from, Target target) throws IOException {
        Map<String, Integer> rows = new LinkedHashMap<>();
        List<Line> lines = from.journal().everything(from.name());
        for (Kind kind : Kind.values()) {
            rows.put(JournalFormat.file(kind), lines(kind, lines, target));
        }
        rows.put(PROBES, probes(from, target));
        try (CsvWriter csv = writer(target.create(MANIFEST))) {
            csv.writeRecord(MANIFEST_COLUMNS);
            rows.forEach((file, count) -> csv.writeRecord(
                    JournalFormat.NAME,
                    Integer.toString(JournalFormat.VERSION),
                    cell(from.name()),
                    file,
                    Integer.toString(count)));
        }
    }

    /** Reads files back, all or nothing. */
    public static Restoring restore(Source source, KeptSystem into) throws IOException {
        return CopyRestore.restore((listener, faults) -> new JournalCsvReader(source, listener, faults).read(), into);
    }

    static List<String> columns(Kind kind) {
        List<String> columns = new ArrayList<>(List.of(ENTRY));
        columns.addAll(LineFields.names(kind));
        return columns;
    }

    private static int lines(Kind kind, List<Line> lines, Target target) throws IOException {
        int rows = 0;
        try (CsvWriter csv = writer(target.create(JournalFormat.file(kind)))) {
            csv.writeRecord(columns(kind));
            for (int i = 0; i < lines.size(); i++) {
                if (Kind.of(lines.get(i).event()) == kind) {
                    List<@Nullable String> cells = new ArrayList<>(List.of(Integer.toString(i + 1)));
                    LineFields.values(lines.get(i)).values().forEach(value -> cells.add(cell(value)));
                    csv.writeRecord(cells);
                    rows++;
                }
            }
        }
        return rows;
    }

    private static int probes(KeptSystem from, Target target) throws IOException {
        AtomicInteger rows = new AtomicInteger();
        try (CsvWriter csv = writer(target.create(PROBES))) {
            csv.writeRecord(PROBE_COLUMNS);
            for (Probe probe : from.probes().probes(from.name())) {
                String unit = JournalFormat.heldUnit(probe.quantity());
                ProbeBlocks.each(
                        from,
                        probe,
                        block -> block.forEach(value -> {
                            csv.writeRecord(
                                    probe.quantity().key(),
                                    cell(probe.method()),
                                    cell(probe.place()),
                                    value.at().toString(),
                                    JournalFormat.number(value.value()),
                                    unit);
                            rows.incrementAndGet();
                        }));
            }
        }
        return rows.get();
    }

    private static @Nullable String cell(@Nullable Object value) {
        if (value instanceof String text) {
            return CsvGuard.cell(JournalFormat.wellFormed(text));
        } else if (value instanceof Double number) {
            return JournalFormat.number(number);
        } else if (value instanceof BigDecimal number) {
            return number.toPlainString();
        }
        return value == null ? null : value.toString();
    }

    private static CsvWriter writer(OutputStream out) {
        return CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(out, StandardCharsets.UTF_8);
    }
}
