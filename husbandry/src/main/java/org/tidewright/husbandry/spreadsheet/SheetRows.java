package org.tidewright.husbandry.spreadsheet;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PushbackReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.util.List;

/** The rows of a file, one after another. Rows without any text are passed over. */
final class SheetRows {
    /** A note of several paragraphs fits; a quote that is never closed does not. */
    private static final int MOST_LINES_OF_A_ROW = 200;

    private SheetRows() {}

    /**
     * One row.
     *
     * @param line where it begins, counted from 1
     */
    record Row(int line, List<String> cells) {
        /** Without the blanks around it; empty where the row ends before. */
        String cell(int column) {
            return column <= cells.size()
                    ? cells.get(column - 1).replace('\u00A0', ' ').strip()
                    : "";
        }

        boolean isBlank() {
            return cells.stream().allMatch(String::isBlank);
        }
    }

    /** Takes rows until it has enough. */
    interface Taker {
        boolean take(Row row) throws UnusableSheet;
    }

    static void each(SheetSource source, Charset charset, char separator, Taker taker)
            throws IOException, UnusableSheet {
        try (Reader text = withoutMark(new InputStreamReader(source.open(), charset));
                CsvReader<CsvRecord> records = CsvReader.builder()
                        .fieldSeparator(separator)
                        .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                        .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                        .ofCsvRecord(text)) {
            for (CsvRecord record : records) {
                refuseOpenQuote(record);
                Row row = new Row((int) record.getStartingLineNumber(), record.getFields());
                if (!row.isBlank() && !taker.take(row)) {
                    return;
                }
            }
        } catch (CsvParseException broken) {
            throw new UnusableSheet("this is no CSV: " + broken.getMessage());
        } catch (UncheckedIOException failed) {
            throw failed.getCause();
        }
    }

    private static void refuseOpenQuote(CsvRecord record) throws UnusableSheet {
        for (String cell : record.getFields()) {
            if (cell.length() > MOST_LINES_OF_A_ROW && cell.lines().count() > MOST_LINES_OF_A_ROW) {
                throw new UnusableSheet("line " + record.getStartingLineNumber()
                        + ": a quotation mark is opened and not closed within " + MOST_LINES_OF_A_ROW + " lines");
            }
        }
    }

    private static Reader withoutMark(Reader text) throws IOException {
        PushbackReader ahead = new PushbackReader(text);
        int first = ahead.read();
        if (first >= 0 && first != '\uFEFF') {
            ahead.unread(first);
        }
        return ahead;
    }
}
