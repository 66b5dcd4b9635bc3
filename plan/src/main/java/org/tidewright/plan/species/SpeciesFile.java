package org.tidewright.plan.species;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import org.tidewright.plan.fault.Fault;
import org.tidewright.plan.fault.Spelling;

/**
 * A file of species, read over rows that are known already.
 *
 * @param species by scientific name in lower case, those beneath included
 * @param rows their cells by column
 * @param faults in the order of their places; where there are any, the species are not to be used
 */
record SpeciesFile<S extends Species>(
        Map<String, S> species, Map<String, Map<String, String>> rows, List<Fault> faults) {

    /** Nothing beneath. */
    static <S extends Species> SpeciesFile<S> none() {
        return new SpeciesFile<>(Map.of(), Map.of(), List.of());
    }

    /**
     * Reads a file. A row whose scientific name is known changes what it states of that species; another adds one.
     *
     * @param columns that the file may have
     * @param of a species from a row
     */
    static <S extends Species> SpeciesFile<S> read(
            String text,
            List<String> columns,
            SpeciesFile<S> beneath,
            Map<String, SpeciesSource> sources,
            Function<SpeciesRow, S> of) {
        Map<String, S> species = new LinkedHashMap<>(beneath.species());
        Map<String, Map<String, String>> rows = new LinkedHashMap<>(beneath.rows());
        List<Fault> faults = new ArrayList<>();
        Map<String, Long> seen = new LinkedHashMap<>();
        try (CsvReader<NamedCsvRecord> records =
                CsvReader.builder().commentStrategy(CommentStrategy.SKIP).ofNamedCsvRecord(text)) {
            header(firstLine(text), columns, faults);
            for (NamedCsvRecord record : records) {
                String name =
                        record.findField("scientific_name").orElse("").strip().toLowerCase(Locale.ROOT);
                SpeciesRow row = new SpeciesRow(record, rows.getOrDefault(name, Map.of()), sources, faults::add);
                Long before = seen.put(name, record.getStartingLineNumber());
                if (before != null) {
                    row.fault(
                            "scientific_name",
                            "“" + name + "” again",
                            "each species once",
                            "It stands in line " + before + ".");
                }
                species.put(name, of.apply(row));
                rows.put(name, row.cells());
            }
        } catch (CsvParseException broken) {
            faults.add(new Fault(1, 1, "", "text that is no CSV: " + broken.getMessage(), "rows of cells", ""));
        } catch (IOException cannotBe) {
            throw new UncheckedIOException(cannotBe);
        }
        faults.sort(Fault.BY_PLACE);
        return new SpeciesFile<>(species, rows, List.copyOf(faults));
    }

    private static List<String> firstLine(String text) throws IOException {
        try (CsvReader<CsvRecord> records =
                CsvReader.builder().commentStrategy(CommentStrategy.SKIP).ofCsvRecord(text)) {
            return records.stream().findFirst().map(CsvRecord::getFields).orElse(List.of());
        }
    }

    private static void header(List<String> header, List<String> columns, List<Fault> faults) {
        for (String column : header) {
            if (!columns.contains(column)) {
                faults.add(new Fault(
                        1,
                        header.indexOf(column) + 1,
                        "the header",
                        "“" + column + "”",
                        "a column of this file",
                        Spelling.suggestion(column, columns)));
            }
        }
        if (!header.contains("scientific_name")) {
            faults.add(new Fault(
                    1, 1, "the header", "no scientific_name", "that column", "It says which species a row is of."));
        }
    }
}
