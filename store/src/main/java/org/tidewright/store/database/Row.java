package org.tidewright.store.database;

import java.sql.ResultSet;
import java.sql.SQLException;
import org.jspecify.annotations.Nullable;
import org.tidewright.seawater.unit.Unit;

/** One row of a result, its columns by name. */
public final class Row {
    private final ResultSet result;

    Row(ResultSet result) {
        this.result = result;
    }

    public String text(String column) throws SQLException {
        return result.getString(column);
    }

    public @Nullable String textOrNone(String column) throws SQLException {
        return result.getString(column);
    }

    public @Unit("*") double number(String column) throws SQLException {
        return result.getDouble(column);
    }

    public @Nullable @Unit("*") Double numberOrNone(String column) throws SQLException {
        double number = result.getDouble(column);
        return result.wasNull() ? null : number;
    }

    public long whole(String column) throws SQLException {
        return result.getLong(column);
    }

    public @Nullable Long wholeOrNone(String column) throws SQLException {
        long whole = result.getLong(column);
        return result.wasNull() ? null : whole;
    }

    public boolean flag(String column) throws SQLException {
        return result.getInt(column) != 0;
    }

    public byte[] bytes(String column) throws SQLException {
        return result.getBytes(column);
    }
}
