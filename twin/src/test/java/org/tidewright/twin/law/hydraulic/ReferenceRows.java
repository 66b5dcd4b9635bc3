package org.tidewright.twin.law.hydraulic;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;

/** The rows of a reference table of this topic, by column name. */
final class ReferenceRows {
    private ReferenceRows() {}

    static List<NamedCsvRecord> of(String file) {
        String path = "/reference/hydraulic/" + file;
        try (InputStream in = Objects.requireNonNull(ReferenceRows.class.getResourceAsStream(path), path);
                CsvReader<NamedCsvRecord> rows = CsvReader.builder()
                        .commentStrategy(CommentStrategy.SKIP)
                        .ofNamedCsvRecord(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            return rows.stream().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static double number(NamedCsvRecord row, String column) {
        return Double.parseDouble(row.getField(column));
    }

    static boolean has(NamedCsvRecord row, String column) {
        return !row.getField(column).isEmpty();
    }
}
