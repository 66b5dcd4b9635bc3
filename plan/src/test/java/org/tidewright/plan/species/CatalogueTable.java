package org.tidewright.plan.species;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/** A file of the catalogue as it is written, cell by cell, so that what reads it into records is not needed to check it. */
record CatalogueTable(String file, List<Row> rows) {
    static final CatalogueTable FISH = read("fish.csv");
    static final CatalogueTable INVERTEBRATES = read("invertebrates.csv");
    static final CatalogueTable SOURCES = read("sources.csv");

    private static CatalogueTable read(String file) {
        String place = "/org/tidewright/plan/species/" + file;
        try (InputStream bytes = Objects.requireNonNull(CatalogueTable.class.getResourceAsStream(place), place);
                CsvReader<NamedCsvRecord> records =
                        CsvReader.builder().ofNamedCsvRecord(new InputStreamReader(bytes, StandardCharsets.UTF_8))) {
            List<Row> rows = new ArrayList<>();
            records.forEach(record -> rows.add(new Row(file, record)));
            return new CatalogueTable(file, List.copyOf(rows));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(place, unreadable);
        }
    }

    /** All animals, fish first. */
    static List<Row> animals() {
        return Stream.concat(FISH.rows().stream(), INVERTEBRATES.rows().stream())
                .toList();
    }

    boolean isFish() {
        return file.equals(FISH.file());
    }

    List<String> columns() {
        return rows.get(0).cells().getHeader();
    }

    @Override
    public String toString() {
        return file;
    }

    record Row(String file, NamedCsvRecord cells) {
        String name() {
            return text("scientific_name");
        }

        boolean isFish() {
            return file.equals(FISH.file());
        }

        String genus() {
            return name().split(" ", 2)[0];
        }

        /** Accepted and older names, scientific and common. */
        List<String> names() {
            return Stream.concat(Stream.of(name(), text("common_name")), list("synonyms").stream())
                    .toList();
        }

        String text(String column) {
            return cells.getField(column);
        }

        boolean has(String column) {
            return !text(column).isEmpty();
        }

        double number(String column) {
            return Double.parseDouble(text(column));
        }

        List<String> list(String column) {
            return has(column) ? List.of(text(column).split("; ")) : List.of();
        }

        int difficulty() {
            return Integer.parseInt(text(isFish() ? "difficulty_1to6" : "difficulty_0to6"));
        }

        /** Weight in g at a total length in cm. */
        double weight(double length) {
            return number("weight_a_g") * Math.pow(length, number("weight_b"));
        }

        @Override
        public String toString() {
            return file + ", line " + cells.getStartingLineNumber() + ", " + name();
        }
    }
}
