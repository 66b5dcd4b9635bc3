package org.tidewright.trials.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A stranger in a folder finds out what lives there. */
class PackageSignpostTest {
    private static final int LEAST_LINES = 3;
    private static final Pattern COMMENT = Pattern.compile("/\\*\\*(.*?)\\*/", Pattern.DOTALL);

    @Test
    void everyPackageSaysWhatLivesInIt() {
        new FrozenList("packages-without-signpost.txt")
                .check(packages()
                        .filter(folder -> linesAbout(folder) < LEAST_LINES)
                        .map(folder -> new Offence(
                                folder.resolve("package-info.java"), 1, "says less than " + LEAST_LINES + " lines"))
                        .toList());
    }

    @Test
    void everyPackageIsOpenedToTheNullCheck() {
        assertThat(packages()
                        .filter(folder -> !signpost(folder).contains("@NullMarked"))
                        .map(Checkout::name))
                .as("packages whose package-info.java lacks @NullMarked")
                .isEmpty();
    }

    private static Stream<Path> packages() {
        List<Path> folders = Checkout.modules().stream()
                .flatMap(module -> Checkout.javaFiles(module.resolve("src/main/java")).stream())
                .map(file -> Objects.requireNonNull(file.getParent()))
                .distinct()
                .toList();
        assertThat(folders).as("packages found").isNotEmpty();
        return folders.stream();
    }

    private static long linesAbout(Path folder) {
        Matcher comment = COMMENT.matcher(signpost(folder));
        return comment.find()
                ? comment.group(1)
                        .lines()
                        .map(line -> line.replaceFirst("^\\s*\\*", "").strip())
                        .filter(line -> !line.isEmpty() && !line.startsWith("@"))
                        .count()
                : 0;
    }

    private static String signpost(Path folder) {
        Path file = folder.resolve("package-info.java");
        return Files.exists(file) ? Checkout.text(file) : "";
    }
}
