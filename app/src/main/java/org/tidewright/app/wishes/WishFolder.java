package org.tidewright.app.wishes;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** The wish lists of a folder. A list is written whole to a name of its own, forced to disk, and then put in the old one's place. */
public final class WishFolder {
    private static final String SUFFIX = ".wishes.csv";

    private final Path root;

    public WishFolder(Path root) {
        this.root = root;
    }

    /** Where a system's list is kept, whether there is one or not. */
    public Path file(String system) {
        return root.resolve(system + SUFFIX);
    }

    /** A system's list as it stands; empty where there is none. Bytes that are no text in UTF-8 become signs that no list has. */
    public String text(String system) {
        try {
            return Files.exists(file(system))
                    ? new String(Files.readAllBytes(file(system)), StandardCharsets.UTF_8)
                    : "";
        } catch (IOException unreadable) {
            throw new UncheckedIOException(file(system) + " cannot be read", unreadable);
        }
    }

    /**
     * Keeps a list.
     *
     * @param before what the writer began from
     * @return false where the file says something else by now; then nothing was written
     */
    public synchronized boolean keep(String system, String before, String text) {
        if (!text(system).equals(before)) {
            return false;
        }
        try {
            Path whole = Files.createTempFile(root, ".writing-", ".tmp");
            try {
                write(whole, text);
                Files.move(whole, file(system), StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
            } finally {
                Files.deleteIfExists(whole);
            }
            return true;
        } catch (IOException unwritable) {
            throw new UncheckedIOException(file(system) + " cannot be written", unwritable);
        }
    }

    private static void write(Path file, String text) throws IOException {
        try (FileChannel channel =
                FileChannel.open(file, StandardOpenOption.WRITE, StandardOpenOption.TRUNCATE_EXISTING)) {
            ByteBuffer bytes = StandardCharsets.UTF_8.encode(text);
            while (bytes.hasRemaining()) {
                channel.write(bytes);
            }
            channel.force(true);
        }
    }
}
