package org.tidewright.store.database;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteConfig.SynchronousMode;
import org.sqlite.SQLiteConfig.TransactionMode;
import org.sqlite.SQLiteJDBCLoader;

/**
 * Connections to an SQLite file, and the settings they need.
 *
 * <p>A file is kept with a write-ahead log, so that reading and writing do not wait for each other, and every commit is
 * forced to the disk ({@code synchronous=FULL}): without that, a pulled plug takes the last writes along although they had
 * been acknowledged. Further programs on the same machine may use the file at the same time; one writes, the others wait.
 */
final class Sqlite {
    /** “TwSt”, by which our files know themselves; at byte 68 of a file. */
    static final int APPLICATION = 0x54775374;

    private static final int PATIENCE_MS = 10_000;
    private static final int MOST_TRIES = 500;

    /** The log is cut back to this after a large write. */
    private static final int LARGEST_LOG_BYTES = 64 << 20;

    private final Path file;

    Sqlite(Path file) {
        this.file = file;
    }

    Path file() {
        return file;
    }

    /**
     * Refuses a file that may only be read. SQLite would open it all the same, and leave a log beside it that may not be
     * written either once the file may.
     */
    void mustBeWritable() {
        if (Files.exists(file) && !Files.isWritable(file)) {
            throw new StoreFailed(StoreFailed.Reason.READ_ONLY, file, null, null);
        }
    }

    /** A connection whose transactions write: they wait for their turn when they begin. */
    Connection writer() throws SQLException {
        return connect(TransactionMode.IMMEDIATE);
    }

    /** A connection whose transactions see the file as it was when they began to read. */
    Connection reader() throws SQLException {
        Connection connection = upkeep();
        run(connection, "PRAGMA query_only = ON");
        return connection;
    }

    /** A connection for what concerns the file as a whole. */
    Connection upkeep() throws SQLException {
        return connect(TransactionMode.DEFERRED);
    }

    private Connection connect(TransactionMode mode) throws SQLException {
        load();
        SQLiteConfig config = new SQLiteConfig();
        config.setBusyTimeout(PATIENCE_MS);
        config.setTransactionMode(mode);
        config.setSynchronous(SynchronousMode.FULL);
        config.enforceForeignKeys(true);
        config.setJournalSizeLimit(LARGEST_LOG_BYTES);
        // As an address, so that a name may hold any character.
        Connection connection =
                config.createConnection("jdbc:sqlite:" + file.toAbsolutePath().toUri());
        try {
            run(connection, "PRAGMA cell_size_check = ON");
            run(connection, "PRAGMA trusted_schema = OFF");
            return connection;
        } catch (SQLException failure) {
            connection.close();
            throw failure;
        }
    }

    private void load() {
        try {
            SQLiteJDBCLoader.initialize();
        } catch (Exception unloadable) { // as it declares
            throw new StoreFailed(StoreFailed.Reason.UNLOADED, file, unloadable.getMessage(), unloadable);
        }
    }

    /** Takes a file into use: makes the tables of a new one, adds what an older one lacks, refuses what is not ours. */
    void prepare(Connection writer) throws SQLException {
        stepsOf(writer);
        startLog(writer);
        // One transaction: another program that opens the same new file waits, and then finds it made.
        writer.setAutoCommit(false);
        int steps = stepsOf(writer);
        if (steps < Schema.newest()) {
            for (String script : Schema.after(steps).toList()) {
                run(writer, script);
            }
            run(writer, "PRAGMA application_id = " + APPLICATION);
            run(writer, "PRAGMA user_version = " + Schema.newest());
        }
        writer.setAutoCommit(true);
    }

    /** SQLite does not wait here: of two who take the same new file into use, one is refused at once and tries again. */
    private void startLog(Connection writer) throws SQLException {
        for (int tries = 1; ; tries++) {
            try {
                String mode = text(writer, "PRAGMA journal_mode = WAL");
                if (!mode.equals("wal")) {
                    throw failed(StoreFailed.Reason.UNREACHABLE, "no write-ahead log is possible here, only " + mode);
                }
                return;
            } catch (SQLException failure) {
                if (Failures.reason(failure) != StoreFailed.Reason.BUSY || tries == MOST_TRIES) {
                    throw failure;
                }
                LockSupport.parkNanos(TimeUnit.MILLISECONDS.toNanos(PATIENCE_MS / MOST_TRIES));
            }
        }
    }

    /** How many steps of the schema the file has behind it. */
    private int stepsOf(Connection connection) throws SQLException {
        int application;
        int steps;
        boolean empty;
        // In one statement, so that all three are of one moment.
        try (Statement statement = connection.createStatement();
                ResultSet result = statement.executeQuery(
                        "SELECT application_id, user_version, (SELECT count(*) FROM sqlite_schema)"
                                + " FROM pragma_application_id, pragma_user_version")) {
            result.next();
            application = result.getInt(1);
            steps = result.getInt(2);
            empty = result.getInt(3) == 0;
        }
        boolean untouched = application == 0 && steps == 0 && empty;
        if (application != APPLICATION && !untouched) {
            throw failed(StoreFailed.Reason.FOREIGN, "its tables are another program's");
        }
        if (steps > Schema.newest()) {
            throw failed(
                    StoreFailed.Reason.NEWER,
                    "its tables are at step " + steps + ", this version knows " + Schema.newest());
        }
        return steps;
    }

    private StoreFailed failed(StoreFailed.Reason reason, String found) {
        return new StoreFailed(reason, file, found, null);
    }

    static void run(Connection connection, String statements) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            statement.executeUpdate(statements);
        }
    }

    private static String text(Connection connection, String query) throws SQLException {
        try (Statement statement = connection.createStatement();
                ResultSet result = statement.executeQuery(query)) {
            result.next();
            return result.getString(1);
        }
    }
}
