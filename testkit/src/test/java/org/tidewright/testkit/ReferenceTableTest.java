package org.tidewright.testkit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReferenceTableTest {
    private static final ReferenceTable PLAIN = ReferenceTable.read(ReferenceTableTest.class, "/reference/plain.csv");

    @Test
    void keepsTheHeadingAndTheColumnsInTheirOrder() {
        assertThat(PLAIN.heading()).containsExactly("source: made up for the reader's own test", "tolerance: none");
        assertThat(PLAIN.columns()).containsExactly("name", "depth_m", "note");
        assertThat(PLAIN.rows()).hasSize(4);
    }

    @Test
    void givesCellsAsNumbersAndAsText() {
        assertThat(PLAIN.rows().get(0).number("depth_m")).isEqualTo(1.5);
        assertThat(PLAIN.rows().get(0).text("note")).isEqualTo("quoted, with a comma");
        assertThat(PLAIN.row("name", "third").number("depth_m")).isEqualTo(0.0025);
    }

    @Test
    void anEmptyCellIsAbsentAndRefusedAsANumber() {
        var second = PLAIN.row("name", "second");
        assertThat(second.has("depth_m")).isFalse();
        assertThatThrownBy(() -> second.number("depth_m"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("/reference/plain.csv, line 5, column depth_m: the cell is empty");
    }

    @Test
    void wordsAndInfinitiesAreNotNumbers() {
        assertThatThrownBy(() -> PLAIN.rows().get(2).number("note")).hasMessageContaining("'plain' is not a number");
        assertThatThrownBy(() -> PLAIN.rows().get(3).number("depth_m"))
                .hasMessageContaining("'Infinity' is not a finite number");
    }

    @Test
    void anUnknownColumnIsAnsweredWithTheKnownOnes() {
        assertThatThrownBy(() -> PLAIN.rows().get(0).number("depth"))
                .hasMessage("/reference/plain.csv: no column 'depth'; there are [depth_m, name, note]");
    }

    @Test
    void aRowIsFoundOnlyWhenItIsTheOnlyOne() {
        assertThatThrownBy(() -> PLAIN.row("note", "plain")).hasMessageContaining("2 rows with note = plain");
        assertThatThrownBy(() -> PLAIN.row("name", "fifth")).hasMessageContaining("0 rows with name = fifth");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    ragged.csv       | line 2: 3 cells under a header of 2 columns
                    twice.csv        | line 1: column name 'a' is blank or stands twice
                    empty.csv        | no rows
                    late_heading.csv | line 3: a # line below the header
                    missing.csv      | no reference file /reference/missing.csv
                    """)
    void refusesAFileWithAFaultAndSaysWhere(String file, String message) {
        assertThatThrownBy(() -> ReferenceTable.read(ReferenceTableTest.class, "/reference/" + file))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(message);
    }
}
