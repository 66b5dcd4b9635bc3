package org.tidewright.store.database;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/** The scripts that make the tables, in the order in which they are run; a file says how many of them it has had. */
final class Schema {
    static final String FOLDER = "/org/tidewright/store/schema/sqlite/";
    static final List<String> SCRIPTS =
            List.of("V0001__journal.sql", "V0002__probe_log.sql", "V0003__photos.sql", "V0004__health.sql");

    private Schema() {}

    /** How many steps a file of this version has behind it. */
    static int newest() {
        return SCRIPTS.size();
    }

    /** The scripts a file with so many steps behind it still needs. */
    static Stream<String> after(int steps) {
        return SCRIPTS.stream().skip(steps).map(Schema::text);
    }

    static String text(String script) {
        try (InputStream bytes =
                Objects.requireNonNull(Schema.class.getResourceAsStream(FOLDER + script), FOLDER + script)) {
            return new String(bytes.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(FOLDER + script + " cannot be read", unreadable);
        }
    }
}
