package org.tidewright.trials.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What is under version control is small, and the same on every machine. */
class TrackedFilesTest {
    private static final long LARGEST_BYTES = 1_000_000;
    private static final Pattern PICTURE = Pattern.compile(".*\\.(png|jpg|jpeg|gif|webp|ico)");

    /** Folders of one person's machine. Put together here, so that this file does not find itself. */
    private static final Pattern MACHINE_PATH =
            Pattern.compile("(?<![\\w.~-])/(?:" + String.join("|", "work", "root", "home", "Users") + ")/");

    /** Addresses of package registries: which one is used is the machine's setting, not ours. */
    private static final Pattern REGISTRY = Pattern.compile(String.join(
            "|",
            "repo1?\\.maven\\.(?:apache\\.)?" + "org",
            "registry\\.npmjs\\." + "org",
            "pypi\\." + "org",
            "files\\.pythonhosted\\." + "org",
            "proxy\\.golang\\." + "org",
            "(?:index|static)\\.crates\\." + "io",
            "deb\\.debian\\." + "org"));

    @Test
    void noFileIsLargeUnlessItIsAPicture() {
        assertThat(Checkout.trackedFiles().stream()
                        .filter(file -> !PICTURE.matcher(file.toString()).matches())
                        .filter(file -> size(file) > LARGEST_BYTES)
                        .map(Checkout::name))
                .isEmpty();
    }

    @Test
    void noFileNamesAFolderOfOneMachine() {
        assertThat(places(MACHINE_PATH)).isEmpty();
    }

    @Test
    void noFileNamesARegistry() {
        assertThat(places(REGISTRY)).isEmpty();
    }

    private static List<String> places(Pattern forbidden) {
        List<String> places = new ArrayList<>();
        for (Path file : Checkout.trackedFiles()) {
            if (isText(file)) {
                List<String> lines = Checkout.text(file).lines().toList();
                for (int i = 0; i < lines.size(); i++) {
                    Matcher found = forbidden.matcher(lines.get(i));
                    if (found.find()) {
                        places.add(Checkout.name(file) + ":" + (i + 1) + " " + found.group());
                    }
                }
            }
        }
        return places;
    }

    /** Like git, takes a file with a zero byte near its start for binary. */
    private static boolean isText(Path file) {
        try (var in = Files.newInputStream(file, StandardOpenOption.READ)) {
            for (byte b : in.readNBytes(8000)) {
                if (b == 0) {
                    return false;
                }
            }
            return true;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static long size(Path file) {
        try {
            return Files.size(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
