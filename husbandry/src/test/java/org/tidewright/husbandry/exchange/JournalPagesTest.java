package org.tidewright.husbandry.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.journal.Kind;
import org.tidewright.plan.method.QuantityUnit;
import org.tidewright.plan.method.WaterQuantity;

/** The pages on the formats name all that stands in them. */
class JournalPagesTest {
    @Test
    void thePageOnJsonNamesEveryKindAndEachOfItsNames() throws IOException {
        String page = page("journal-json.md");
        for (Kind kind : Kind.values()) {
            assertThat(page).contains("`" + kind.key() + "`");
            assertThat(LineFields.names(kind))
                    .allSatisfy(name -> assertThat(page).contains("`" + name + "`"));
        }
    }

    @Test
    void thePageOnJsonNamesEveryQuantityAndUnit() throws IOException {
        String page = page("journal-json.md");
        for (WaterQuantity quantity : WaterQuantity.values()) {
            assertThat(page).contains("`" + quantity.key() + "`", "`" + JournalFormat.heldUnit(quantity) + "`");
            assertThat(quantity.units())
                    .extracting(QuantityUnit::key)
                    .allSatisfy(key -> assertThat(page).contains("`" + key + "`"));
        }
    }

    @Test
    void thePageOnCsvNamesEveryFileAndColumn() throws IOException {
        String page = page("journal-csv.md");
        for (Kind kind : Kind.values()) {
            assertThat(page).contains("`" + JournalFormat.file(kind) + "`");
        }
        assertThat(JournalCsv.PROBE_COLUMNS).allSatisfy(name -> assertThat(page).contains("`" + name + "`"));
        assertThat(JournalCsv.MANIFEST_COLUMNS)
                .allSatisfy(name -> assertThat(page).contains("`" + name + "`"));
    }

    private static String page(String name) throws IOException {
        return Files.readString(Path.of("..", "docs", "formats", name));
    }
}
