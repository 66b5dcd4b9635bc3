package org.tidewright.plan.species;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.tidewright.plan.species.CatalogueTable.Row;

/** What must hold in every row of corals and other invertebrates. */
class InvertebrateRowTest {
    static List<Row> invertebrates() {
        return CatalogueTable.INVERTEBRATES.rows();
    }

    @ParameterizedTest
    @MethodSource("invertebrates")
    void aRangeOfAnInvertebrateHasItsLowBelowItsHigh(Row row) {
        if (row.has("light_most_umol")) {
            assertThat(row.number("light_least_umol")).isLessThan(row.number("light_most_umol"));
            assertThat(row.number("light_most_umol")).isLessThanOrEqualTo(500);
        }
        assertThat(row.has("light_least_umol")).isEqualTo(row.has("light_most_umol"));
        assertThat(row.has("extension_low_mm_per_year")).isEqualTo(row.has("extension_high_mm_per_year"));
        if (row.has("extension_low_mm_per_year")) {
            assertThat(row.number("extension_low_mm_per_year"))
                    .isPositive()
                    .isLessThan(row.number("extension_high_mm_per_year"));
        }
        if (row.has("calcification_mg_per_cm2_d")) {
            assertThat(row.number("calcification_low_mg_per_cm2_d"))
                    .isPositive()
                    .isLessThanOrEqualTo(row.number("calcification_mg_per_cm2_d"));
            assertThat(row.number("calcification_mg_per_cm2_d"))
                    .isLessThanOrEqualTo(row.number("calcification_high_mg_per_cm2_d"));
        }
    }

    @ParameterizedTest
    @MethodSource("invertebrates")
    void aStonyCoralHasAFormAndPapers(Row row) {
        if (Set.of("sps", "lps").contains(row.text("group"))) {
            assertThat(row.has("form")).isTrue();
            assertThat(row.has("extension_low_mm_per_year")).isTrue();
            assertThat(row.text("trade")).contains("CITES_II");
        }
        assertThat(row.has("form") && !row.has("light_most_umol")).isFalse();
    }

    @ParameterizedTest
    @MethodSource("invertebrates")
    void whatKillsAPersonIsNeverOnPurpose(Row row) {
        if (row.list("hazard").contains("lethal")) {
            assertThat(row.text("difficulty_0to6")).isEqualTo("0");
        }
        if (row.text("group").equals("zoanthid") && row.genus().matches("Palythoa|Zoanthus")) {
            assertThat(row.list("hazard")).contains("palytoxin");
        }
    }
}
