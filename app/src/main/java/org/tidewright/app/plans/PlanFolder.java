package org.tidewright.app.plans;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A folder of systems, each a folder of revisions: {@code harbour-room/revision-0007.yaml}. The highest number stands.
 *
 * <p>A revision is written whole to a name of its own, forced to disk, and only then linked to its number, which must be
 * free: a pulled plug leaves either no new revision or a whole one, and of two writers one is told of the other.
 */
public final class PlanFolder {
    private static final Pattern ID = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");
    private static final Pattern REVISION = Pattern.compile("revision-(\\d{4,9})\\.yaml");
    private static final int LONGEST_ID = 60;

    private final Path root;

    /** A system's newest text. */
    public record Kept(String id, int revision, String text) {}

    public PlanFolder(Path root) {
        this.root = root;
    }

    public Path root() {
        return root;
    }

    /** The systems' ids, in order. */
    public List<String> ids() {
        if (!Files.isDirectory(root)) {
            return List.of();
        }
        try (Stream<Path> folders = Files.list(root)) {
            return folders.filter(Files::isDirectory)
                    .map(folder -> folder.getFileName().toString())
                    .filter(PlanFolder::isId)
                    .filter(id -> newestRevision(id) > 0)
                    .sorted()
                    .toList();
        } catch (IOException unreadable) {
            throw new UncheckedIOException("the folder " + root + " cannot be read", unreadable);
        }
    }

    /** A system as it stands; empty when there is none of that name. */
    public Optional<Kept> newest(String id) {
        int revision = isId(id) ? newestRevision(id) : 0;
        if (revision == 0) {
            return Optional.empty();
        }
        try {
            return Optional.of(new Kept(id, revision, Files.readString(file(id, revision))));
        } catch (IOException unreadable) {
            throw new UncheckedIOException("revision " + revision + " of " + id + " cannot be read", unreadable);
        }
    }

    /**
     * Keeps a text as the revision after the given one.
     *
     * @param basedOn the revision the writer began from; 0 for a new system
     * @return the new revision's number; empty when another revision came first
     */
    public Optional<Integer> keep(String id, int basedOn, String text) {
        if (!isId(id)) {
            throw new IllegalArgumentException("“" + id + "” is no name for a system's folder");
        }
        int next = basedOn + 1;
        if (newestRevision(id) != basedOn) {
            return Optional.empty();
        }
        try {
            Path folder = Files.createDirectories(root.resolve(id));
            Path whole = Files.createTempFile(folder, ".writing-", ".tmp");
            try {
                writeThrough(whole, text);
                // A hard link fails where the number is taken: the check and the act are one.
                Files.createLink(file(id, next), whole);
                forceFolder(folder);
            } finally {
                Files.deleteIfExists(whole);
            }
            return Optional.of(next);
        } catch (FileAlreadyExistsException taken) {
            return Optional.empty();
        } catch (IOException unwritable) {
            throw new UncheckedIOException("revision " + next + " of " + id + " cannot be written", unwritable);
        }
    }

    /** A folder name for a system: {@code Harbour room} becomes {@code harbour-room}. */
    public static String idFor(String name) {
        String id = name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-+|-+$", "");
        if (id.length() > LONGEST_ID) {
            id = id.substring(0, LONGEST_ID).replaceAll("-+$", "");
        }
        return id.isEmpty() ? "system" : id;
    }

    private static boolean isId(String text) {
        return text.length() <= LONGEST_ID && ID.matcher(text).matches();
    }

    private int newestRevision(String id) {
        Path folder = root.resolve(id);
        if (!Files.isDirectory(folder)) {
            return 0;
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> REVISION.matcher(file.getFileName().toString()))
                    .filter(Matcher::matches)
                    .mapToInt(matcher -> Integer.parseInt(matcher.group(1)))
                    .max()
                    .orElse(0);
        } catch (IOException unreadable) {
            throw new UncheckedIOException("the folder " + folder + " cannot be read", unreadable);
        }
    }

    private Path file(String id, int revision) {
        return root.resolve(id).resolve(String.format(Locale.ROOT, "revision-%04d.yaml", revision));
    }

    private static void writeThrough(Path file, String text) throws IOException {
        try (FileChannel channel =
                FileChannel.open(file, StandardOpenOption.WRITE, StandardOpenOption.TRUNCATE_EXISTING)) {
            ByteBuffer bytes = StandardCharsets.UTF_8.encode(text);
            while (bytes.hasRemaining()) {
                channel.write(bytes);
            }
            channel.force(true);
        }
    }

    /** Forces the folder's entry to disk where the system allows it; some do not open folders. */
    private static void forceFolder(Path folder) {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException notHere) {
            // The file itself is on disk; its entry follows when the system next writes its folders.
        }
    }
}
