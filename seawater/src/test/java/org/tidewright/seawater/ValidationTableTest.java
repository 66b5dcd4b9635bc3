package org.tidewright.seawater;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.tidewright.testkit.Validation;
import org.tidewright.testkit.Validation.Worst;

/**
 * The table of worst deviations in VALIDATION.md is what the reference tests of this run found. It comes last of all test
 * classes. {@code mvn test -pl testkit,seawater -Dvalidation.write} writes the table anew.
 */
@Order(Integer.MAX_VALUE)
class ValidationTableTest {
    private static final Path FILE = Path.of("VALIDATION.md");
    private static final String BEFORE = "<!-- table: made by ValidationTableTest -->\n";
    private static final String AFTER = "<!-- end of table -->\n";

    /** Below it rounding decides, which differs between processors and Java versions. */
    private static final double ROUNDING = 1e-11;

    private static final Pattern LINE = Pattern.compile(
            "\\| `(?<function>[^`]+)` \\| `(?<column>[^`]+)` \\| (?<points>\\d+) \\| (?<error>\\S+) \\| (?<tolerance>.*) \\|");

    @Test
    void tellsWhatThisRunFound() throws IOException {
        List<Worst> found = Validation.worst();
        assertThat(found)
                .as("deviations found; this test makes sense after all reference tests")
                .hasSizeGreaterThan(100);
        String text = Files.readString(FILE);
        int start = text.indexOf(BEFORE) + BEFORE.length();
        int end = text.indexOf(AFTER);
        if (System.getProperty("validation.write") != null) {
            Files.write(
                    FILE,
                    (text.substring(0, start) + table(found) + text.substring(end)).getBytes(StandardCharsets.UTF_8));
            return;
        }
        Map<String, Matcher> told = lines(text.substring(start, end));
        List<String> expected = new ArrayList<>();
        for (Worst worst : found) {
            String key = key(worst);
            expected.add(key);
            Matcher line = told.get(key);
            assertThat(line)
                    .as("line of VALIDATION.md for " + key + "; write it anew with -Dvalidation.write")
                    .isNotNull();
            if (line == null) {
                continue;
            }
            assertThat(line.group("tolerance")).as("tolerance of " + key).isEqualTo(tolerance(worst));
            double toldError = number(line.group("error"));
            assertThat(worst.error())
                    .as("error of " + key + ", told as " + toldError)
                    .isLessThanOrEqualTo(Math.max(1.2 * toldError, ROUNDING));
            assertThat(toldError)
                    .as("told error of " + key + ", now " + worst.error())
                    .isLessThanOrEqualTo(Math.max(1.2 * worst.error(), ROUNDING));
        }
        assertThat(told.keySet()).as("lines of VALIDATION.md").containsExactlyInAnyOrderElementsOf(expected);
    }

    private static String table(List<Worst> found) {
        Map<String, List<Worst>> byFile = new LinkedHashMap<>();
        for (Worst worst : found) {
            byFile.computeIfAbsent(worst.file(), file -> new ArrayList<>()).add(worst);
        }
        StringBuilder text = new StringBuilder();
        byFile.forEach((file, worst) -> {
            text.append("\n### ").append(name(file)).append("\n\n");
            text.append("Source: ").append(worst.get(0).source().replaceAll("\\s*key: .*", ""));
            text.append(". Taken: ").append(worst.get(0).taken()).append(".\n\n");
            text.append("| function | column | points | worst deviation | allowed |\n|---|---|---|---|---|\n");
            for (Worst each : worst) {
                text.append(String.format(
                        Locale.ROOT,
                        "| `%s` | `%s` | %d | %s | %s |\n",
                        each.function(),
                        each.column(),
                        each.points(),
                        told(each.error()),
                        tolerance(each)));
            }
        });
        return text.append('\n').toString();
    }

    /** {@code /reference/density/eos80.csv} is {@code density/eos80}. */
    private static String name(String file) {
        return file.replaceFirst("^/reference/", "").replaceFirst("\\.csv$", "");
    }

    private static String key(Worst worst) {
        return name(worst.file()) + " " + worst.function() + " " + worst.column()
                + (worst.relative() ? " relative" : "");
    }

    private static String tolerance(Worst worst) {
        return String.format(Locale.ROOT, "%.3g", worst.tolerance()) + (worst.relative() ? " relative" : "");
    }

    private static String told(double error) {
        return error < 1e-13 ? "<1e-13" : String.format(Locale.ROOT, "%.1e", error);
    }

    private static double number(String told) {
        return Double.parseDouble(told.replace("<", ""));
    }

    private static Map<String, Matcher> lines(String table) {
        Map<String, Matcher> lines = new LinkedHashMap<>();
        String file = "";
        for (String text : table.lines().toList()) {
            if (text.startsWith("### ")) {
                file = text.substring(4);
            }
            Matcher line = LINE.matcher(text);
            if (line.matches()) {
                String relative = line.group("tolerance").endsWith(" relative") ? " relative" : "";
                lines.put(file + " " + line.group("function") + " " + line.group("column") + relative, line);
            }
        }
        return lines;
    }
}
