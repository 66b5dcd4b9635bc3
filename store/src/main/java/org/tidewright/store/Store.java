package org.tidewright.store;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import org.tidewright.husbandry.journal.BothLogs;
import org.tidewright.husbandry.journal.Journal;
import org.tidewright.husbandry.journal.Photos;
import org.tidewright.husbandry.journal.ProbeLog;
import org.tidewright.store.database.Database;
import org.tidewright.store.database.StoreFailed;
import org.tidewright.store.journal.SqlJournal;
import org.tidewright.store.photo.SqlPhotos;
import org.tidewright.store.probe.SqlProbeLog;

/**
 * One file, open. Its parts may be used by several threads at once, and the file by several programs of one machine. What
 * cannot be read or written is told by {@link StoreFailed}.
 */
public final class Store implements AutoCloseable {
    private final Database database;
    private final Journal journal;
    private final ProbeLog probes;
    private final BothLogs both;
    private final Photos photos;

    private Store(Database database, Clock clock) {
        this.database = database;
        journal = new SqlJournal(database, clock);
        probes = new SqlProbeLog(database);
        both = new SqlBothLogs(database, clock);
        photos = new SqlPhotos(database);
    }

    /**
     * Opens a file, makes a new one where there is none, and brings an older one to the tables of this version.
     *
     * @param file in a folder that exists, on a disk of this machine: a log and its index lie beside it while it is open
     * @param clock tells when lines are written
     */
    public static Store open(Path file, Clock clock) {
        return new Store(Database.open(file), clock);
    }

    public Journal journal() {
        return journal;
    }

    public ProbeLog probes() {
        return probes;
    }

    /** Both of them, for what is to stand in each or in none. */
    public BothLogs both() {
        return both;
    }

    public Photos photos() {
        return photos;
    }

    /**
     * Writes all that is kept into a new file, as it is at one moment, whoever writes meanwhile. The copy has its name only
     * once it has been read through.
     *
     * @throws IllegalArgumentException where there is a file of this name already
     */
    public void copyTo(Path target) {
        database.copyTo(target);
    }

    /** Reads the whole file through; returns what is wrong with it, nothing if it is sound. */
    public List<String> faults() {
        return database.faults();
    }

    /** Waits for those who still read or write. Whoever comes later is refused. */
    @Override
    public void close() {
        database.close();
    }
}
