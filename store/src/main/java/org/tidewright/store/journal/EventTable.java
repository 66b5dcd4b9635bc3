package org.tidewright.store.journal;

import java.sql.SQLDataException;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.husbandry.journal.Kind;
import org.tidewright.store.database.Keepable;
import org.tidewright.store.database.Row;
import org.tidewright.store.database.Sql;

/** The table, named like its kind, that holds what is particular to events of one kind. */
class EventTable<E extends Event> {
    private final Kind kind;
    private final Class<E> type;
    private final List<String> columns;
    private final Function<E, List<@Nullable Object>> values;
    private final Sql.Reader<E> reader;

    /**
     * A table.
     *
     * @param columns beside the number of the line
     * @param values of the columns, in their order
     * @param reader makes the event of a row again
     */
    EventTable(
            Kind kind,
            Class<E> type,
            List<String> columns,
            Function<E, List<@Nullable Object>> values,
            Sql.Reader<E> reader) {
        this.kind = kind;
        this.type = type;
        this.columns = columns;
        this.values = values;
        this.reader = reader;
    }

    /** The events of one kind, by the numbers of their lines. */
    void insert(Sql sql, Map<Long, Event> events) throws SQLException {
        List<@Nullable Object[]> rows = new ArrayList<>();
        events.forEach((number, event) -> {
            List<@Nullable Object> row = new ArrayList<>();
            row.add(number);
            row.addAll(values.apply(type.cast(event)));
            rows.add(row.toArray());
        });
        sql.changeAll(
                "INSERT INTO " + kind.key() + " (line_no, " + String.join(", ", columns) + ") VALUES (?"
                        + ", ?".repeat(columns.size()) + ")",
                rows);
    }

    /** The events of the lines that are meant, by the numbers of the lines. */
    Map<Long, E> find(Sql sql, Condition condition) throws SQLException {
        Map<Long, E> found = new HashMap<>();
        sql.each(
                "SELECT event.* FROM line JOIN " + kind.key() + " event ON event.line_no = line.line_no WHERE "
                        + condition.sql(),
                row -> {
                    found.put(row.whole("line_no"), event(row));
                    return true;
                },
                condition.values().toArray());
        return found;
    }

    /** What is kept of an event: two of them are the same where this is. */
    List<@Nullable Object> content(Event event) {
        List<@Nullable Object> content = new ArrayList<>();
        values.apply(type.cast(event)).forEach(value -> content.add(Keepable.of(value)));
        return content;
    }

    private E event(Row row) throws SQLException {
        try {
            return reader.read(row);
        } catch (IllegalArgumentException impossible) {
            throw new SQLDataException(
                    "row " + row.whole("line_no") + " of " + kind.key() + ": " + impossible.getMessage(), impossible);
        }
    }

    static List<@Nullable Object> row(@Nullable Object... values) {
        return Collections.unmodifiableList(Arrays.asList(values));
    }
}
