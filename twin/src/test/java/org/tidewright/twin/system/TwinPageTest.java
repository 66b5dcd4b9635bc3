package org.tidewright.twin.system;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.Modifier;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.tidewright.twin.TestPlans;
import org.tidewright.twin.contract.Mechanism;
import org.tidewright.twin.contract.Parameter;

/**
 * The page about the complete twin knows every mechanism, and every number of one example that is not known exactly.
 */
class TwinPageTest {
    private static final Path PAGE = Path.of("..", "docs", "science", "the-twin.md");
    private static final Path SOURCES = Path.of("src", "main", "java");
    private static final Path MECHANISMS = SOURCES.resolve(Path.of("org", "tidewright", "twin", "mechanism"));
    private static final String START = "<!-- parameters: generated -->\n";
    private static final String END = "<!-- end of parameters -->";

    /** A row of the first table: the class, linked to its file, and what is said of it. */
    private static final Pattern ROW = Pattern.compile("^\\| \\[`(\\w+)`]\\((\\S+)\\) \\|(.*)\\|$", Pattern.MULTILINE);

    private static final int CELLS_BESIDE_THE_NAME = 7;

    // ── mechanisms ──

    @Test
    void everyMechanismHasItsRow() throws IOException {
        List<String> inTheCode = mechanisms().map(Class::getSimpleName).sorted().toList();
        assertThat(inTheCode).hasSizeGreaterThan(30);
        List<String> onThePage = ROW.matcher(Files.readString(PAGE))
                .results()
                .map(row -> row.group(1))
                .sorted()
                .toList();
        assertThat(onThePage).isEqualTo(inTheCode);
    }

    @Test
    void everyRowLeadsToItsClassAndLeavesNoCellEmpty() throws IOException {
        Matcher row = ROW.matcher(Files.readString(PAGE));
        while (row.find()) {
            assertThat(PAGE.resolveSibling(row.group(2))).exists().hasFileName(row.group(1) + ".java");
            String[] cells = row.group(3).split("(?<!\\\\)\\|", -1);
            assertThat(cells).as(row.group(1)).hasSize(CELLS_BESIDE_THE_NAME);
            assertThat(Arrays.stream(cells).map(String::strip)).as(row.group(1)).doesNotContain("");
        }
    }

    private static Stream<Class<?>> mechanisms() throws IOException {
        try (Stream<Path> files = Files.walk(MECHANISMS)) {
            return files
                    .filter(file -> file.toString().endsWith(".java") && !file.endsWith("package-info.java"))
                    .<Class<?>>map(TwinPageTest::classOf)
                    .filter(Mechanism.class::isAssignableFrom)
                    .filter(type -> !Modifier.isAbstract(type.getModifiers()))
                    .toList()
                    .stream();
        }
    }

    private static Class<?> classOf(Path file) {
        String name =
                SOURCES.relativize(file).toString().replace(file.getFileSystem().getSeparator(), ".");
        try {
            return Class.forName(name.substring(0, name.length() - ".java".length()));
        } catch (ClassNotFoundException missing) {
            throw new AssertionError(missing);
        }
    }

    // ── parameters ──

    /** With {@code -Dthe-twin.write} the table is written anew. */
    @Test
    void theTableOfParametersIsThatOfTheExamplesNetwork() throws IOException {
        String expected =
                table(SystemTwin.of(TestPlans.example("harbour-room")).network().parameters());
        String page = Files.readString(PAGE);
        assertThat(page).contains(START, END);
        int from = page.indexOf(START) + START.length();
        int to = page.indexOf(END);
        if (System.getProperty("the-twin.write") != null) {
            Files.writeString(PAGE, page.substring(0, from) + expected + page.substring(to));
        } else {
            assertThat(page.substring(from, to))
                    .as("table of parameters in " + PAGE + "; write it anew with -Dthe-twin.write")
                    .isEqualTo(expected);
        }
    }

    private static String table(List<Parameter> parameters) {
        StringBuilder table = new StringBuilder(
                "| parameter | unit | usual | low | high | basis | source |\n|---|---|---:|---:|---:|---|---|\n");
        for (Parameter parameter : parameters) {
            table.append("| ")
                    .append(String.join(
                            " | ",
                            parameter.name(),
                            parameter.unit(),
                            number(parameter.usual()),
                            number(parameter.low()),
                            number(parameter.high()),
                            parameter.basis().words(),
                            parameter.source()))
                    .append(" |\n");
        }
        return table.toString();
    }

    /** Three digits, with an exponent where there would be many zeros. */
    private static String number(double value) {
        BigDecimal rounded = new BigDecimal(value).round(new MathContext(3, RoundingMode.HALF_EVEN));
        if (rounded.signum() == 0) {
            return "0";
        }
        BigDecimal stripped = rounded.stripTrailingZeros();
        int exponent = stripped.precision() - stripped.scale() - 1;
        return exponent >= -3 && exponent <= 4
                ? stripped.toPlainString()
                : stripped.movePointLeft(exponent).toPlainString() + "e" + exponent;
    }
}
