package org.tidewright.store.database;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;

/** Copies of a file that is in use, and the search for damage. */
final class Upkeep {
    private static final int MOST_FAULTS = 20;

    private Upkeep() {}

    /** A copy has its name only once it has been read through and is on the disk. */
    static void copy(Path file, Path target) {
        if (Files.exists(target)) {
            throw new IllegalArgumentException(target + " exists already: give the copy a name of its own");
        }
        Path unfinished = target.resolveSibling(target.getFileName() + ".unfinished");
        try {
            Files.deleteIfExists(unfinished);
            vacuum(file, unfinished);
            List<String> faults = faults(unfinished);
            if (!faults.isEmpty()) {
                throw new StoreFailed(StoreFailed.Reason.DAMAGED, file, "in its copy: " + faults.get(0), null);
            }
            force(unfinished);
            Files.move(unfinished, target, StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException failure) {
            throw new StoreFailed(StoreFailed.Reason.UNREACHABLE, target, failure.toString(), failure);
        } catch (SQLException failure) {
            throw Failures.of(Failures.reason(failure) == StoreFailed.Reason.DAMAGED ? file : target, failure);
        } finally {
            unfinished.toFile().delete();
        }
    }

    /** Writes what is in the file at one moment, closely packed. */
    private static void vacuum(Path file, Path target) throws SQLException {
        try (Connection connection = new Sqlite(file).upkeep();
                PreparedStatement statement = connection.prepareStatement("VACUUM INTO ?")) {
            statement.setString(1, target.toAbsolutePath().toString());
            statement.executeUpdate();
        }
    }

    private static void force(Path copy) throws IOException {
        try (FileChannel channel = FileChannel.open(copy, StandardOpenOption.WRITE)) {
            channel.force(true);
        }
    }

    /** Reads all of a file; returns what is wrong with it. */
    static List<String> faults(Path file) throws SQLException {
        List<String> faults = new ArrayList<>();
        try (Connection connection = new Sqlite(file).upkeep();
                Statement statement = connection.createStatement()) {
            try (ResultSet found = statement.executeQuery("PRAGMA integrity_check(" + MOST_FAULTS + ")")) {
                while (found.next()) {
                    faults.add(found.getString(1));
                }
            }
            try (ResultSet found = statement.executeQuery("PRAGMA foreign_key_check")) {
                while (found.next() && faults.size() < MOST_FAULTS) {
                    faults.add("row " + found.getLong(2) + " of " + found.getString(1) + " belongs to a row of "
                            + found.getString(3) + " that is not there");
                }
            }
        } catch (SQLException failure) {
            if (Failures.reason(failure) != StoreFailed.Reason.DAMAGED) {
                throw failure;
            }
            faults.add(String.valueOf(failure.getMessage()));
        }
        faults.remove("ok");
        return faults;
    }
}
