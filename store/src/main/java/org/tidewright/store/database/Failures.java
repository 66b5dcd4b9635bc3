package org.tidewright.store.database;

import java.nio.file.Path;
import java.sql.SQLDataException;
import java.sql.SQLException;
import org.jspecify.annotations.Nullable;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/** SQLite's failures, told to a keeper. */
final class Failures {
    /** The low byte of a result is the kind of failure, the rest which of that kind (https://sqlite.org/rescode.html). */
    private static final int KIND = 0xFF;

    private Failures() {}

    /** One that is our own mistake, as a wrong statement is, comes as it is. */
    static RuntimeException of(Path file, SQLException failure) {
        StoreFailed.@Nullable Reason reason = reason(failure);
        return reason == null
                ? new IllegalStateException(file + ": " + failure.getMessage(), failure)
                : new StoreFailed(reason, file, failure.getMessage(), failure);
    }

    static StoreFailed.@Nullable Reason reason(SQLException failure) {
        if (failure instanceof SQLDataException) {
            return StoreFailed.Reason.DAMAGED;
        }
        if (!(failure instanceof SQLiteException ofSqlite)) {
            return null;
        }
        return switch (SQLiteErrorCode.getErrorCode(ofSqlite.getResultCode().code & KIND)) {
            case SQLITE_FULL -> StoreFailed.Reason.FULL;
            case SQLITE_READONLY, SQLITE_PERM -> StoreFailed.Reason.READ_ONLY;
            case SQLITE_BUSY, SQLITE_LOCKED -> StoreFailed.Reason.BUSY;
            case SQLITE_NOTADB -> StoreFailed.Reason.FOREIGN;
            case SQLITE_CORRUPT, SQLITE_FORMAT -> StoreFailed.Reason.DAMAGED;
            case SQLITE_IOERR, SQLITE_CANTOPEN, SQLITE_PROTOCOL, SQLITE_NOLFS -> StoreFailed.Reason.UNREACHABLE;
            default -> null;
        };
    }
}
