package org.tidewright.store.database;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/** The file could not do what was asked of it. What was being written is not kept, none of it. */
public final class StoreFailed extends RuntimeException {
    private static final long serialVersionUID = 1;

    /** What the matter is, and what a keeper can do about it. */
    public enum Reason {
        /** No room is left on the disk. */
        FULL("there is no room left to write. Nothing of this was kept: free some space, then do it again."),
        /** The file or its folder may not be written. */
        READ_ONLY(
                "it may not be written. Give the user this program runs as the right to write the file and its folder."),
        /** Another program does not let go of the file. */
        BUSY("another program keeps it busy. Nothing of this was kept: close the other one, then do it again."),
        /** It has steps that this version does not know. */
        NEWER("a newer version of Tidewright has written it. Use that version, or a copy from before it."),
        /** It belongs to something else. */
        FOREIGN("it is no file of Tidewright's. Give the name of another one, or of one that does not exist yet."),
        /** What it holds cannot be read, or makes no sense. */
        DAMAGED("it is damaged. Put it aside as it is, and take the newest copy that is whole in its place."),
        /** It cannot be opened, read or written as a file. */
        UNREACHABLE(
                "it cannot be reached. See whether its folder exists and may be written, and whether the disk is well."),
        /** SQLite, which is no Java, cannot be loaded. */
        UNLOADED(
                "SQLite cannot be started. It puts temporary files where programs may be run from: name a folder for them"
                        + " with -Dorg.sqlite.tmpdir=FOLDER.");

        private final String sentence;

        Reason(String sentence) {
            this.sentence = sentence;
        }
    }

    private final Reason reason;

    StoreFailed(Reason reason, Path file, @Nullable String found, @Nullable Throwable cause) {
        super(file + ": " + reason.sentence + (found == null ? "" : " (" + found + ")"), cause);
        this.reason = reason;
    }

    public Reason reason() {
        return reason;
    }
}
