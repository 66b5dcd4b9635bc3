package org.tidewright.store.database;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.concurrent.Semaphore;
import java.util.concurrent.locks.ReentrantLock;
import org.jspecify.annotations.Nullable;

/** One file, read by several threads and written by one at a time. */
public final class Database implements AutoCloseable {
    /** How many read at the same time; more wait. */
    private static final int READERS = 4;

    private final Sqlite engine;
    private final ReentrantLock writing = new ReentrantLock(true);
    private final Semaphore reading = new Semaphore(READERS, true);
    private final Deque<Connection> idle = new ArrayDeque<>();
    private @Nullable Connection writer;
    private volatile boolean closed;

    private Database(Sqlite engine) {
        this.engine = engine;
    }

    /** What is to be done within one transaction. */
    @FunctionalInterface
    public interface Work<T> {
        T on(Sql sql) throws SQLException;
    }

    /**
     * Opens a file, or makes a new one.
     *
     * @throws StoreFailed where it cannot be used
     */
    public static Database open(Path file) {
        Database database = new Database(new Sqlite(file));
        try {
            database.engine.mustBeWritable();
            database.engine.prepare(database.connectedWriter());
            return database;
        } catch (SQLException failure) {
            database.discardWriter();
            throw Failures.of(file, failure);
        } catch (RuntimeException refused) {
            database.discardWriter();
            throw refused;
        }
    }

    /** Reads the file as it is at one moment. */
    public <T> T read(Work<T> work) {
        reading.acquireUninterruptibly();
        try {
            Connection connection = borrow();
            T result = within(connection, work, () -> close(connection));
            giveBack(connection);
            return result;
        } catch (SQLException failure) {
            throw Failures.of(engine.file(), failure);
        } finally {
            reading.release();
        }
    }

    /** Writes all or nothing; on the disk when it returns. */
    public <T> T write(Work<T> work) {
        if (writing.isHeldByCurrentThread()) {
            throw new IllegalStateException("a write cannot begin before the one around it has ended");
        }
        writing.lock();
        try {
            return within(connectedWriter(), work, this::discardWriter);
        } catch (SQLException failure) {
            throw Failures.of(engine.file(), failure);
        } finally {
            writing.unlock();
        }
    }

    /**
     * Works within one transaction. Whatever interrupts it, the connection is closed, which takes back what it began: after
     * some failures SQLite has ended the transaction by itself and after others it has not.
     */
    private static <T> T within(Connection connection, Work<T> work, Runnable discard) throws SQLException {
        boolean done = false;
        try {
            connection.setAutoCommit(false);
            T result = work.on(new Sql(connection));
            connection.setAutoCommit(true); // commits
            done = true;
            return result;
        } finally {
            if (!done) {
                discard.run();
            }
        }
    }

    /**
     * Writes all that is in the file into a new one, and reads that through.
     *
     * @throws IllegalArgumentException where there is a file of this name
     */
    public void copyTo(Path target) {
        mustBeOpen();
        Upkeep.copy(engine.file(), target);
    }

    /** Reads the whole file through; returns what is wrong with it, nothing if it is sound. */
    public List<String> faults() {
        mustBeOpen();
        try {
            return Upkeep.faults(engine.file());
        } catch (SQLException failure) {
            throw Failures.of(engine.file(), failure);
        }
    }

    /** Waits for those who read and write, and closes the file. */
    @Override
    public void close() {
        writing.lock();
        reading.acquireUninterruptibly(READERS);
        try {
            closed = true;
            idle.forEach(Database::close);
            idle.clear();
            discardWriter();
        } finally {
            reading.release(READERS);
            writing.unlock();
        }
    }

    private Connection connectedWriter() throws SQLException {
        mustBeOpen();
        Connection connection = writer;
        if (connection == null) {
            connection = engine.writer();
            writer = connection;
        }
        return connection;
    }

    private void discardWriter() {
        Connection connection = writer;
        writer = null;
        if (connection != null) {
            close(connection);
        }
    }

    private Connection borrow() throws SQLException {
        mustBeOpen();
        synchronized (idle) {
            Connection connection = idle.poll();
            if (connection != null) {
                return connection;
            }
        }
        return engine.reader();
    }

    private void giveBack(Connection connection) {
        synchronized (idle) {
            idle.push(connection);
        }
    }

    private void mustBeOpen() {
        if (closed) {
            throw new IllegalStateException(engine.file() + " is closed");
        }
    }

    /** What was to be kept is kept or was refused before; a connection that does not close changes nothing in that. */
    private static void close(Connection connection) {
        try {
            connection.close();
        } catch (SQLException unimportant) {
            // Said above.
        }
    }
}
