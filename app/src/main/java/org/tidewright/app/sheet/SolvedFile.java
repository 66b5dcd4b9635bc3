package org.tidewright.app.sheet;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Where a solved file is put. It is written whole beside its place and moved there: what stood there stays until then. */
public final class SolvedFile {
    private SolvedFile() {}

    /**
     * Solves a file into another.
     *
     * @param source the file that is read
     * @param target the file that is written
     * @throws IOException where the target cannot be written; then it is as it was
     * @throws UnusableCsv where nothing can be computed; then the target is as it was
     */
    public static SheetCsv.Outcome write(SheetCsv csv, Path source, Path target) throws IOException, UnusableCsv {
        if (Files.exists(target) && Files.isSameFile(source, target)) {
            throw new IOException(target + " is both --in and --out; name another file for the result");
        }
        if (Files.isDirectory(target)) {
            throw new IOException(target + " is a folder; name a file in it");
        }
        if (Files.exists(target) && !Files.isRegularFile(target)) {
            // A device or a pipe: nothing stands there that could be kept, and nothing may take its place.
            return csv.solve(() -> Files.newBufferedWriter(target, StandardCharsets.UTF_8));
        }
        Path beside = target.resolveSibling(target.getFileName() + ".unfinished");
        try {
            SheetCsv.Outcome outcome = csv.solve(() -> Files.newBufferedWriter(beside, StandardCharsets.UTF_8));
            Files.move(beside, target, StandardCopyOption.REPLACE_EXISTING);
            return outcome;
        } finally {
            Files.deleteIfExists(beside);
        }
    }
}
