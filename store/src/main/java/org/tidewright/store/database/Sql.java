package org.tidewright.store.database;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Statements within one transaction. Values go in as they are or not at all: what would come back as something else is
 * refused.
 */
public final class Sql {
    /** How many rows go to the database at once. */
    private static final int BATCH = 1000;

    private final Connection connection;

    Sql(Connection connection) {
        this.connection = connection;
    }

    /** Makes something of a row. */
    @FunctionalInterface
    public interface Reader<T> {
        T read(Row row) throws SQLException;
    }

    /** Takes rows one by one for as long as it wants more. */
    @FunctionalInterface
    public interface Taker {
        /** Returns whether it wants another. */
        boolean take(Row row) throws SQLException;
    }

    public <T> List<T> list(String query, Reader<T> reader, @Nullable Object... values) throws SQLException {
        List<T> found = new ArrayList<>();
        each(query, row -> found.add(reader.read(row)), values);
        return found;
    }

    public <T> Optional<T> first(String query, Reader<T> reader, @Nullable Object... values) throws SQLException {
        List<T> found = new ArrayList<>();
        each(query, row -> !found.add(reader.read(row)), values);
        return found.stream().findFirst();
    }

    public void each(String query, Taker taker, @Nullable Object... values) throws SQLException {
        try (PreparedStatement statement = connection.prepareStatement(query)) {
            bind(statement, values);
            try (ResultSet result = statement.executeQuery()) {
                Row row = new Row(result);
                boolean more = true;
                while (more && result.next()) {
                    more = taker.take(row);
                }
            }
        }
    }

    /** Returns how many rows it changed. */
    public int change(String statement, @Nullable Object... values) throws SQLException {
        try (PreparedStatement prepared = connection.prepareStatement(statement)) {
            bind(prepared, values);
            return prepared.executeUpdate();
        }
    }

    /** Runs a statement once for each row of values; returns how many rows each changed. */
    public int[] changeAll(String statement, List<@Nullable Object[]> rows) throws SQLException {
        int[] changed = new int[rows.size()];
        try (PreparedStatement prepared = connection.prepareStatement(statement)) {
            for (int from = 0; from < rows.size(); from += BATCH) {
                for (@Nullable Object[] row : rows.subList(from, Math.min(from + BATCH, rows.size()))) {
                    bind(prepared, row);
                    prepared.addBatch();
                }
                int[] counts = prepared.executeBatch();
                System.arraycopy(counts, 0, changed, from, counts.length);
            }
        }
        return changed;
    }

    private static void bind(PreparedStatement statement, @Nullable Object[] values) throws SQLException {
        for (int i = 0; i < values.length; i++) {
            statement.setObject(i + 1, Keepable.of(values[i]));
        }
    }
}
