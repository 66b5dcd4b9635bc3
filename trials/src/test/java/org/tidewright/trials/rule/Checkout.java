package org.tidewright.trials.rule;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The folder this test runs in, as its authors see it: modules, sources, and files under version control. */
public final class Checkout {
    private Checkout() {}

    /** The top folder, whichever module the test was started in. */
    public static Path root() {
        Path here = Path.of("").toAbsolutePath();
        for (Path folder = here; folder != null; folder = folder.getParent()) {
            if (Files.isDirectory(folder.resolve(".mvn"))) {
                return folder;
            }
        }
        throw new IllegalStateException("no folder above " + here + " holds .mvn");
    }

    /** Folders of modules that have code of their own, not only tests. */
    static List<Path> modules() {
        try (Stream<Path> folders = Files.list(root())) {
            return folders.filter(folder -> Files.isDirectory(folder.resolve("src/main/java")))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** All Java sources below a folder, package-info included. */
    static List<Path> javaFiles(Path folder) {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(file -> file.toString().endsWith(".java"))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** All files under version control that exist. */
    static List<Path> trackedFiles() {
        try {
            Process git = new ProcessBuilder("git", "ls-files", "-z")
                    .directory(root().toFile())
                    .redirectError(ProcessBuilder.Redirect.INHERIT)
                    .start();
            String names = new String(git.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            if (git.waitFor() != 0) {
                throw new IllegalStateException("git ls-files failed in " + root());
            }
            return Stream.of(names.split("\0"))
                    .map(root()::resolve)
                    .filter(Files::isRegularFile)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    /** A path as people write it: from the top folder on, with forward slashes. */
    static String name(Path file) {
        return root().relativize(file.toAbsolutePath()).toString().replace('\\', '/');
    }

    static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(Checkout.name(file), e);
        }
    }
}
