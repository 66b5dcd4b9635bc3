package org.tidewright.plan.species;

import static java.util.stream.Collectors.toSet;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.tidewright.plan.species.CatalogueTable.Row;

/** What must hold in every row of the catalogue, whatever its facts. */
class SpeciesConsistencyTest {
    static List<CatalogueTable> tables() {
        return List.of(CatalogueTable.FISH, CatalogueTable.INVERTEBRATES);
    }

    @Test
    void thereAreAnimalsEnoughToChooseFrom() {
        assertThat(CatalogueTable.FISH.rows()).hasSizeGreaterThanOrEqualTo(155);
        assertThat(CatalogueTable.INVERTEBRATES.rows()).hasSizeGreaterThanOrEqualTo(105);
    }

    @ParameterizedTest
    @MethodSource("tables")
    void rowsAreSortedByFamilyOrGroupAndThenByName(CatalogueTable table) {
        String kin = table.isFish() ? "family" : "group";
        assertThat(table.rows().stream()
                        .map(row -> row.text(kin) + " " + row.name())
                        .toList())
                .isSorted();
    }

    @ParameterizedTest
    @MethodSource("tables")
    void noWordIsOutsideItsVocabulary(CatalogueTable table) {
        Map<String, Set<String>> legal = table.isFish() ? CatalogueWords.FISH : CatalogueWords.INVERTEBRATES;
        for (Row row : table.rows()) {
            legal.forEach((column, words) -> {
                assertThat(row.list(column)).as("%s, %s", row, column).isSubsetOf(words);
                assertThat(row.list(column)).as("%s, %s", row, column).doesNotHaveDuplicates();
            });
        }
    }

    @ParameterizedTest
    @MethodSource("tables")
    void whatAColumnSaysOfItsScaleIsKept(CatalogueTable table) {
        for (String column : table.columns()) {
            int to = column.indexOf("to", column.lastIndexOf('_'));
            if (!column.matches(".*_\\dto\\d")) {
                continue;
            }
            int least = Character.digit(column.charAt(to - 1), 10);
            int most = Character.digit(column.charAt(to + 2), 10);
            for (Row row : table.rows()) {
                if (row.has(column)) {
                    assertThat(row.text(column)).as("%s, %s", row, column).matches("\\d");
                    assertThat(Integer.parseInt(row.text(column)))
                            .as("%s, %s", row, column)
                            .isBetween(least, most);
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("tables")
    void everySourceExistsAndEveryFactHasOne(CatalogueTable table) {
        Set<String> keys = CatalogueTable.SOURCES.rows().stream()
                .map(row -> row.text("key"))
                .collect(toSet());
        for (Row row : table.rows()) {
            boolean facts = false;
            for (String column : table.columns()) {
                if (column.endsWith("_source")) {
                    assertThat(row.has(column) || !facts)
                            .as("%s has facts before %s and no source", row, column)
                            .isTrue();
                    assertThat(keys.contains(row.text(column)) || !row.has(column))
                            .as("%s, %s = %s is no key of sources.csv", row, column, row.text(column))
                            .isTrue();
                    facts = false;
                } else if (table.columns().indexOf(column) >= 5 && !column.equals("notes")) {
                    facts |= row.has(column);
                }
            }
        }
    }

    @Test
    void everySourceIsUsedAndSaysWhatItRestsOn() {
        Set<String> used = Stream.of(CatalogueTable.FISH, CatalogueTable.INVERTEBRATES)
                .flatMap(table -> table.columns().stream()
                        .filter(column -> column.endsWith("_source"))
                        .flatMap(column -> table.rows().stream().map(row -> row.text(column))))
                .collect(toSet());
        for (Row source : CatalogueTable.SOURCES.rows()) {
            assertThat(used).contains(source.text("key"));
            assertThat(source.text("basis")).isIn("published", "common practice", "from memory", "computed");
            assertThat(source.text("confidence")).isIn("high", "fair", "low");
            assertThat(source.text("citation")).isNotBlank();
        }
        assertThat(CatalogueTable.SOURCES.rows().stream()
                        .map(row -> row.text("key"))
                        .toList())
                .doesNotHaveDuplicates();
    }

    @Test
    void aNameMeansOneAnimal() {
        Map<String, Row> owners = new HashMap<>();
        for (Row row : CatalogueTable.animals()) {
            for (String name : row.names()) {
                Row other = owners.put(name.toLowerCase(Locale.ROOT), row);
                assertThat(other).as("“%s” is %s", name, row).isNull();
            }
        }
    }

    @Test
    void whatShouldHaveThrivedBeforeExistsAndIsEasier() {
        Map<String, Row> animals = new HashMap<>();
        CatalogueTable.animals().forEach(row -> animals.put(row.name(), row));
        Set<String> families = CatalogueTable.FISH.rows().stream()
                .map(row -> row.text("family"))
                .collect(toSet());
        Set<String> groups = CatalogueTable.INVERTEBRATES.rows().stream()
                .map(row -> row.text("group"))
                .collect(toSet());
        for (Row row : CatalogueTable.animals()) {
            for (String before : row.list("after")) {
                Row easier = animals.get(before);
                if (easier == null) {
                    assertThat(families.contains(before) || groups.contains(before))
                            .as("%s comes after %s, which is in no file", row, before)
                            .isTrue();
                } else {
                    assertThat(easier.difficulty())
                            .as("%s comes after %s", row, before)
                            .isLessThan(row.difficulty());
                }
            }
        }
    }

    @Test
    void whatIsSurelyEatenIsNotAlsoPerhapsEaten() {
        for (Row row : CatalogueTable.animals()) {
            assertThat(row.list("eats")).as(row.toString()).noneMatch(row.list("may_eat")::contains);
        }
    }

    @Test
    void itIsKeptInWaterOfSomeRangeThatReefTanksOrColdTanksHave() {
        for (Row row : CatalogueTable.animals()) {
            double least = row.number("temperature_least_c");
            double most = row.number("temperature_most_c");
            // Below 15 °C live cold-water animals, of wider seasons, that are there to be refused.
            assertThat(least).as(row.toString()).isBetween(5.0, 25.0);
            assertThat(most - least).as(row.toString()).isBetween(3.0, least < 15 ? 12.0 : 7.0);
            assertThat(most).as(row.toString()).isLessThanOrEqualTo(28);
        }
    }

    @Test
    void whatIsDifficultAsksForAnAgedTankAndTheEasyDoNot() {
        for (Row row : CatalogueTable.animals()) {
            if (row.difficulty() >= 5) {
                assertThat(row.number("tank_age_least_months"))
                        .as(row.toString())
                        .isGreaterThanOrEqualTo(3);
            }
            if (row.difficulty() <= 2) {
                assertThat(row.list("after")).as(row.toString()).isEmpty();
            }
        }
    }
}
