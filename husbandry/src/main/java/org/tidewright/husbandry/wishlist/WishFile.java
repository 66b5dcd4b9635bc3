package org.tidewright.husbandry.wishlist;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tidewright.plan.fault.Fault;
import org.tidewright.plan.fault.Spelling;
import org.tidewright.plan.species.Catalogue;
import org.tidewright.plan.species.FishSpecies;

/** A wish list as a CSV file, read and written: docs/formats/wishes.md. */
public final class WishFile {
    static final List<String> COLUMNS = List.of(
            "animal",
            "count",
            "length_cm",
            "price",
            "not_before",
            "note",
            "kept_on",
            "comes",
            "enters",
            "budget_per_month",
            "nothing_before");

    private WishFile() {}

    /**
     * What was read.
     *
     * @param list empty where there are faults
     * @param faults in the order of their places
     */
    public record Reading(WishList list, List<Fault> faults) {
        public Reading {
            faults = List.copyOf(faults);
        }
    }

    /** Reads a file; all faults are told at once. */
    public static Reading read(String text, Catalogue catalogue) {
        List<Fault> faults = new ArrayList<>();
        List<WishLine> lines = new ArrayList<>();
        Long budget = null;
        LocalDate nothingBefore = null;
        try (CsvReader<NamedCsvRecord> records =
                CsvReader.builder().commentStrategy(CommentStrategy.SKIP).ofNamedCsvRecord(text)) {
            header(firstRow(text), faults);
            for (NamedCsvRecord record : records) {
                WishRow row = new WishRow(record, catalogue, faults);
                WishLine line = row.line();
                if (line != null) {
                    lines.add(line);
                }
                budget = row.once("budget_per_month", budget, row.money("budget_per_month"));
                nothingBefore = row.once("nothing_before", nothingBefore, row.date("nothing_before"));
                if (lines.size() > WishList.MOST) {
                    row.fault("animal", "wish number " + lines.size(), "at most " + WishList.MOST, "");
                    break;
                }
            }
        } catch (CsvParseException broken) {
            faults.add(new Fault(1, 1, "", "text that is no CSV: " + broken.getMessage(), "rows of cells", ""));
        } catch (IOException cannotBe) {
            throw new UncheckedIOException(cannotBe);
        }
        faults.sort(Fault.BY_PLACE);
        return new Reading(faults.isEmpty() ? new WishList(lines, budget, nothingBefore) : WishList.EMPTY, faults);
    }

    private static List<String> firstRow(String text) throws IOException {
        try (CsvReader<CsvRecord> records =
                CsvReader.builder().commentStrategy(CommentStrategy.SKIP).ofCsvRecord(text)) {
            return records.stream().findFirst().map(CsvRecord::getFields).orElse(List.of());
        }
    }

    private static void header(List<String> header, List<Fault> faults) {
        for (int i = 0; i < header.size(); i++) {
            String column = header.get(i);
            if (!COLUMNS.contains(column)) {
                faults.add(new Fault(
                        1,
                        i + 1,
                        "the header",
                        "“" + column + "”",
                        "one of " + String.join(", ", COLUMNS),
                        Spelling.suggestion(column, COLUMNS)));
            }
        }
        if (!header.contains("animal")) {
            faults.add(new Fault(1, 1, "the header", "no animal", "that column", "It says who is wished for."));
        }
    }

    /** The file of a list. */
    public static String write(WishList list) {
        StringWriter text = new StringWriter();
        try (CsvWriter csv = CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(text)) {
            csv.writeRecord(COLUMNS);
            boolean first = true;
            for (WishLine line : list.lines()) {
                csv.writeRecord(cells(line, first ? list : WishList.EMPTY));
                first = false;
            }
            if (first && (list.budget() != null || list.nothingBefore() != null)) {
                csv.writeRecord(
                        List.of("", "", "", "", "", "", "", "", "", money(list.budget()), day(list.nothingBefore())));
            }
        } catch (IOException cannotBe) {
            throw new UncheckedIOException(cannotBe);
        }
        return text.toString();
    }

    private static List<String> cells(WishLine line, WishList whole) {
        WishLine.Kept kept = line.kept();
        return List.of(
                line.animals().species().name().scientific(),
                Integer.toString(line.animals().count()),
                line.animals().species() instanceof FishSpecies
                        ? WishRow.plain(100 * line.animals().length())
                        : "",
                money(line.price()),
                day(line.notBefore()),
                line.note(),
                kept == null ? "" : kept.on().toString(),
                kept == null ? "" : kept.comes().toString(),
                kept == null ? "" : kept.enters().toString(),
                money(whole.budget()),
                day(whole.nothingBefore()));
    }

    private static String money(@Nullable Long amount) {
        return amount == null ? "" : Money.text(amount);
    }

    private static String day(@Nullable LocalDate day) {
        return day == null ? "" : day.toString();
    }
}
