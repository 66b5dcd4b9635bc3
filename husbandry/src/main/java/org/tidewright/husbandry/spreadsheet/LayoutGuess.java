package org.tidewright.husbandry.spreadsheet;

import java.io.IOException;
import java.nio.charset.Charset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.tidewright.husbandry.spreadsheet.SheetRows.Row;

/** Finds out how a file is laid out, from its beginning. */
final class LayoutGuess {
    private static final int ROWS = 300;

    /** A decimal comma splits cells as evenly as a separator does, so that the rarer signs are tried first. */
    private static final char[] SEPARATORS = {'\t', ';', ','};

    private static final double EVEN = 0.7;

    private LayoutGuess() {}

    static Layout of(SheetSource source) throws IOException, UnusableSheet {
        Charset charset = TextEncoding.of(source);
        char best = 0;
        double bestShare = 0;
        UnusableSheet broken = null;
        for (char separator : SEPARATORS) {
            try {
                double share = evenness(rows(source, charset, separator));
                if (share > bestShare && bestShare < EVEN) {
                    best = separator;
                    bestShare = share;
                }
            } catch (UnusableSheet notBySuch) {
                // Quotes that do not close before this sign speak against it.
                broken = notBySuch;
            }
        }
        if (best == 0) {
            throw broken != null
                    ? broken
                    : new UnusableSheet(
                            "no line has more than one cell; expected cells set apart by commas, semicolons or tabs");
        }
        return lines(charset, best, rows(source, charset, best));
    }

    private static List<Row> rows(SheetSource source, Charset charset, char separator)
            throws IOException, UnusableSheet {
        List<Row> rows = new ArrayList<>();
        SheetRows.each(source, charset, separator, row -> rows.add(row) && rows.size() < ROWS);
        return rows;
    }

    /** The share of rows that have as many cells as most, where that is more than one. */
    private static double evenness(List<Row> rows) {
        Map<Integer, Integer> bySize = new HashMap<>();
        rows.forEach(row -> bySize.merge(row.cells().size(), 1, Integer::sum));
        int most = bySize.entrySet().stream()
                .filter(entry -> entry.getKey() > 1)
                .mapToInt(Map.Entry::getValue)
                .max()
                .orElse(0);
        return rows.isEmpty() ? 0 : most / (double) rows.size();
    }

    /**
     * The header is the first row above the first sound row of data that has several cells and no numbers; below it a row of units
     * may stand. Whatever is below belongs to the data, also where it is broken.
     */
    private static Layout lines(Charset charset, char separator, List<Row> rows) {
        int data = 0;
        while (data < rows.size() && !isData(rows.get(data))) {
            data++;
        }
        int header = header(rows, data);
        if (header < 0) {
            int first = data < rows.size() ? rows.get(data).line() : 1;
            return new Layout(charset, separator, first, first);
        }
        int below = header + 1;
        if (below < data && isUnits(rows.get(below))) {
            below++;
        }
        int headerLine = rows.get(header).line();
        int dataLine = below < rows.size() ? rows.get(below).line() : headerLine + 1;
        return new Layout(charset, separator, headerLine, dataLine);
    }

    private static int header(List<Row> rows, int data) {
        int words = -1;
        for (int i = 0; i < data; i++) {
            Row row = rows.get(i);
            long filled = row.cells().stream().filter(cell -> !cell.isBlank()).count();
            boolean numbers = row.cells().stream().anyMatch(cell -> CellNumber.looksLikeOne(cell.strip()));
            if (filled >= 2 && !numbers) {
                if (known(row) > 0) {
                    return i;
                }
                words = words < 0 ? i : words;
            }
        }
        return words;
    }

    private static long known(Row row) {
        return row.cells().stream()
                .filter(cell -> !HeaderWords.of(cell).quantities().isEmpty() || ColumnRole.isDateWord(cell))
                .count();
    }

    private static boolean isUnits(Row row) {
        return row.cells().stream()
                .filter(cell -> !cell.isBlank())
                .allMatch(cell -> HeaderWords.of(cell).isUnit() || ColumnRole.isDateWord(cell));
    }

    /** A date and a number beside it. */
    private static boolean isData(Row row) {
        int dates = 0;
        int numbers = 0;
        for (int column = 1; column <= row.cells().size(); column++) {
            String cell = row.cell(column);
            if (DateShape.of(cell).isPresent() && dates == 0) {
                dates++;
            } else if (CellNumber.looksLikeOne(cell)) {
                numbers++;
            }
        }
        return dates > 0 && numbers > 0;
    }
}
