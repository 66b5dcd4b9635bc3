package org.tidewright.store.database;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SchemaTest {
    private static final Path PAGE = Path.of("..", "docs", "formats", "store.md");

    /** {@code | `table` | `column`, `column` | what |}, the table left out where it is that of the row above. */
    private static final Pattern ROW = Pattern.compile("\\|( `\\w+` | )\\| (`\\w+`(?:, `\\w+`)*) \\|.*");

    /** A script and its SHA-256 when it was first shipped. A change of tables is a further script, and a line here. */
    private static final Map<String, String> SHIPPED = Map.of(
            "V0001__journal.sql",
            "ba7815aa75afd2aa1817c4877b14b24265fd68b30a1fbe2adbd2b3a2a46d9a91",
            "V0002__probe_log.sql",
            "bc3f2f811b1a60c0c6a0f4a78f04986939138090a499d05071e0e002493266a4",
            "V0003__photos.sql",
            "9fa498765d025219cf51043e225a998074b803a940e884eb1929363b0d4439ac",
            "V0004__health.sql",
            "96da491e240f6b49d51fc8ccb4ffc7af19f17e4f1945e2979b1fda312082f340");

    @Test
    void aScriptThatWasShippedNeverChanges() throws Exception {
        Map<String, String> now = new LinkedHashMap<>();
        for (String script : Schema.SCRIPTS) {
            byte[] text = Schema.text(script).getBytes(StandardCharsets.UTF_8);
            now.put(
                    script,
                    HexFormat.of()
                            .formatHex(MessageDigest.getInstance("SHA-256").digest(text)));
        }
        assertThat(now).isEqualTo(SHIPPED);
    }

    @Test
    void scriptsAreNumberedInTheirOrder() {
        for (int i = 0; i < Schema.SCRIPTS.size(); i++) {
            assertThat(Schema.SCRIPTS.get(i))
                    .startsWith(String.format("V%04d__", i + 1))
                    .endsWith(".sql");
        }
    }

    @Test
    void everyTableAndColumnIsDescribedForThoseWhoReadTheFile(@TempDir Path folder) throws Exception {
        List<String> described = new ArrayList<>();
        String table = "";
        for (String line : Files.readAllLines(PAGE)) {
            Matcher row = ROW.matcher(line);
            if (row.matches()) {
                table = row.group(1).isBlank() ? table : row.group(1).strip();
                for (String column : row.group(2).split(",", -1)) {
                    described.add(table + " " + column.strip());
                }
            }
        }
        try (Database database = Database.open(folder.resolve("reef.db"))) {
            List<String> columns = database.read(sql -> sql.list(
                    "SELECT t.name AS of_table, c.name AS name FROM sqlite_schema t, pragma_table_info(t.name) c"
                            + " WHERE t.type = 'table'",
                    row -> "`" + row.text("of_table") + "` `" + row.text("name") + "`"));
            assertThat(columns).hasSizeGreaterThan(50);
            // The number of the line is said once for all the tables of kinds.
            assertThat(described)
                    .containsExactlyInAnyOrderElementsOf(columns.stream()
                            .filter(column -> column.startsWith("`line`") || !column.endsWith(" `line_no`"))
                            .toList());
        }
    }
}
