package org.tidewright.husbandry.spreadsheet;

import java.io.IOException;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;
import org.tidewright.husbandry.spreadsheet.SheetPass.Series;

/** A keeper's own spreadsheet, saved as CSV. */
public final class Spreadsheet {
    private final SheetSource source;

    public Spreadsheet(SheetSource source) {
        this.source = source;
    }

    /**
     * Looks the sheet through and guesses what stands where.
     *
     * @param zone of the keeper's clock
     * @throws UnusableSheet where no guess can be made at all
     */
    public Proposal proposal(ZoneId zone) throws IOException, UnusableSheet {
        return SheetGuess.of(source, zone);
    }

    /** The first rows of data, cell by cell, so that a keeper sees what a column holds. */
    public List<List<String>> firstRows(Layout layout, int most) throws IOException, UnusableSheet {
        List<List<String>> first = new ArrayList<>();
        SheetRows.each(source, layout.charset(), layout.separator(), row -> {
            if (row.line() >= layout.dataLine()) {
                first.add(IntStream.rangeClosed(1, row.cells().size())
                        .mapToObj(row::cell)
                        .toList());
            }
            return first.size() < most;
        });
        return first;
    }

    /** The different texts of a column, case apart, in the order of the sheet. */
    public List<String> texts(Layout layout, int column, int most) throws IOException, UnusableSheet {
        Map<String, String> texts = new LinkedHashMap<>();
        SheetRows.each(source, layout.charset(), layout.separator(), row -> {
            String cell = row.cell(column);
            if (row.line() >= layout.dataLine() && !cell.isEmpty()) {
                texts.putIfAbsent(cell.toLowerCase(Locale.ROOT), cell);
            }
            return texts.size() < most;
        });
        return List.copyOf(texts.values());
    }

    /**
     * What the sheet would give under a mapping. Drafts are shown as they would be for this system.
     *
     * @throws UnusableSheet where the sheet cannot be read under this mapping
     */
    public Preview preview(Mapping mapping, String system) throws IOException, UnusableSheet {
        List<Series> series = SheetPass.series(mapping, labels(mapping.layout()));
        SheetCheck check = new SheetCheck(mapping, series, new SheetCheck.Rows(rows -> {}));
        SheetPass.run(source, mapping, series, check);
        return check.preview(system);
    }

    /**
     * Takes the sheet in, all or nothing. It is read twice: the first time nothing is made of it.
     *
     * @param progress told now and then how many rows are done, each counted twice
     */
    public Taking drafts(Mapping mapping, String system, IntConsumer progress) throws IOException, UnusableSheet {
        List<Series> series = SheetPass.series(mapping, labels(mapping.layout()));
        SheetCheck.Rows rows = new SheetCheck.Rows(progress);
        SheetCheck check = new SheetCheck(mapping, series, rows);
        SheetPass.run(source, mapping, series, check);
        List<String> questions = new ArrayList<>(mapping.questions());
        questions.addAll(check.questionsAboutProbes());
        if (!questions.isEmpty() || (check.badCount() > 0 && !mapping.leaveBadCellsOut())) {
            return new Taking.Refused(questions, check.bad(), check.badCount());
        }
        SheetTake take = new SheetTake(system, check.probes(), rows);
        SheetPass.run(source, mapping, series, take);
        return take.taken(check);
    }

    private Map<Integer, String> labels(Layout layout) throws IOException, UnusableSheet {
        Map<Integer, String> labels = new HashMap<>();
        SheetRows.each(source, layout.charset(), layout.separator(), row -> {
            if (row.line() >= layout.dataLine()) {
                return false;
            }
            if (row.line() >= layout.headerLine()) {
                for (int column = 1; column <= row.cells().size(); column++) {
                    String cell = row.cell(column);
                    if (!cell.isEmpty()) {
                        labels.merge(column, cell, (above, below) -> above + " " + below);
                    }
                }
            }
            return true;
        });
        return labels;
    }
}
