package org.tidewright.plan.schema;

import static java.util.stream.Collectors.joining;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.tidewright.plan.model.Entry;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.quantity.Amount;
import org.tidewright.plan.quantity.SiUnit;
import org.tidewright.plan.quantity.TextUnit;
import org.tidewright.plan.text.Keys;
import org.tidewright.plan.text.PlanReading;
import org.tidewright.plan.text.PlanText;

/** The page about the plan file says what the records say. */
class FormatPageTest {
    private static final Path PAGE = Path.of("..", "docs", "formats", "plan.md");

    /** Units the page may tell bounds in. */
    private static final List<String> TOLD_IN = List.of(
            "m",
            "cm",
            "mm",
            "m²",
            "cm²",
            "L",
            "m³",
            "kg",
            "g",
            "h",
            "d",
            "°C",
            "K",
            "W",
            "Wh",
            "W/K",
            "L/h",
            "L/d",
            "mL/d",
            "L/kg",
            "m/s",
            "cm/s",
            "/h",
            "g/L",
            "mg/L",
            "meq/L",
            "meq/L/d",
            "µmol/m²/s",
            "",
            "ppm");

    private final Map<Class<?>, Set<String>> blocks = new LinkedHashMap<>();
    private final Set<String> units = new LinkedHashSet<>();

    @Test
    void theTablesOfKeysAreThoseOfTheRecords() throws IOException {
        collect(Plan.class, "");
        String tables = blocks.entrySet().stream()
                .map(block -> table(block.getKey(), block.getValue()))
                .collect(joining("\n"));
        assertOnPage("keys", tables);
    }

    @Test
    void theTableOfUnitsIsThatOfTheReader() throws IOException {
        collect(Plan.class, "");
        String table = "| quantity | unit | also written | which is |\n|---|---|---|---|\n"
                + units.stream()
                        .map(SiUnit::of)
                        .flatMap(FormatPageTest::unitRows)
                        .collect(joining());
        assertOnPage("units", table);
    }

    @Test
    void theExampleOnThePageIsASoundPlan() throws IOException {
        String example = blocksOfYaml().get(0);
        assertThat(PlanText.read(example)).isInstanceOf(PlanReading.Sound.class);
    }

    @Test
    void theRegimeOnThePageFitsTheExample() throws IOException {
        String whole = String.join("\n", blocksOfYaml());
        assertThat(PlanText.read(whole)).isInstanceOfSatisfying(PlanReading.Sound.class, sound -> {
            assertThat(sound.plan().feeding()).hasSize(2);
            assertThat(sound.plan().dosing()).hasSize(2);
            assertThat(sound.plan().waterChanges()).hasSize(1);
        });
    }

    private static List<String> blocksOfYaml() throws IOException {
        return Pattern.compile("```yaml\n(.*?)```", Pattern.DOTALL)
                .matcher(Files.readString(PAGE))
                .results()
                .map(block -> block.group(1))
                .toList();
    }

    private static void assertOnPage(String name, String expected) throws IOException {
        String page = Files.readString(PAGE);
        String start = "<!-- " + name + ": generated -->\n";
        String end = "<!-- end of " + name + " -->";
        assertThat(page).contains(start, end);
        String found = page.substring(page.indexOf(start) + start.length(), page.indexOf(end));
        if (!found.equals(expected)) {
            throw new AssertionError(
                    PAGE + " is not up to date. Paste this between the marks of its " + name + ":\n" + expected + end);
        }
    }

    // ── keys ──

    private void collect(Class<?> block, String path) {
        blocks.computeIfAbsent(block, none -> new LinkedHashSet<>()).add(path);
        for (RecordComponent component : block.getRecordComponents()) {
            units.add(component.getAnnotation(Entry.class).unit());
            Class<?> held = held(component.getGenericType());
            if (isBlock(held)) {
                String key = Keys.ofComponent(component.getName());
                String deeper = (path.isEmpty() ? key : path + "." + key) + (isList(component) ? "[]" : "");
                collect(held, deeper);
            }
        }
        units.remove("");
    }

    private static String table(Class<?> block, Set<String> paths) {
        StringBuilder table = new StringBuilder("### " + title(block) + "\n\n");
        if (block != Plan.class) {
            String places = paths.stream().map(path -> "`" + path + "`").collect(joining(", "));
            table.append("Stands at ").append(places).append(".\n\n");
        }
        table.append("| key | value | must | meaning |\n|---|---|---|---|\n");
        for (RecordComponent component : block.getRecordComponents()) {
            Entry entry = component.getAnnotation(Entry.class);
            table.append("| `")
                    .append(Keys.ofComponent(component.getName()))
                    .append("` | ")
                    .append(value(component, entry))
                    .append(" | ")
                    .append(PlanSchema.isRequired(component, entry) ? "yes" : "no")
                    .append(" | ")
                    .append(entry.value())
                    .append(" |\n");
        }
        return table.toString();
    }

    private static String value(RecordComponent component, Entry entry) {
        Class<?> held = held(component.getGenericType());
        if (component.getType() == Map.class) {
            return "how many of each: " + words(held);
        }
        if (isList(component)) {
            String what = isBlock(held) ? link(held) : held == LocalTime.class ? "times of day" : "names";
            return "list of " + number(Math.max(0, entry.least())) + " to " + number(entry.most()) + ": " + what;
        }
        if (isBlock(held)) {
            return link(held);
        }
        if (held.isEnum()) {
            return words(held);
        }
        if (held == int.class) {
            return "whole number, " + range(entry.least(), entry.most(), "");
        }
        if (held == LocalTime.class) {
            return "time of day";
        } else if (held == LocalDate.class) {
            return "day";
        }
        return held == Amount.class ? amount(entry) : "text";
    }

    private static String amount(Entry entry) {
        SiUnit si = SiUnit.of(entry.unit());
        List<TextUnit> candidates = TOLD_IN.stream()
                .map(symbol -> TextUnit.spelt(symbol).orElseThrow())
                .filter(unit -> unit.isCompatibleWith(si))
                .filter(unit -> !si.text().equals("K") || unit.symbol().equals("K"))
                .toList();
        TextUnit told = candidates.stream()
                .min(Comparator.comparingDouble(unit -> digits(entry, unit, si)))
                .orElseThrow();
        return si.quantity() + ", "
                + range(told.fromSi(entry.least(), si), told.fromSi(entry.most(), si), told.symbol());
    }

    /** Digits before and after the point, beyond the usual three before it, that the bounds take in a unit. */
    private static double digits(Entry entry, TextUnit unit, SiUnit si) {
        double most = Math.abs(unit.fromSi(Double.isInfinite(entry.most()) ? 1 : entry.most(), si));
        double least = entry.least() == 0 ? most : Math.abs(unit.fromSi(entry.least(), si));
        return Math.max(0, Math.log10(most) - 2) + Math.max(0, -Math.log10(least));
    }

    private static String range(double least, double most, String unit) {
        String withUnit = unit.isEmpty() ? "" : " " + unit;
        if (least == most) {
            return number(least) + withUnit;
        }
        return Double.isInfinite(most)
                ? number(least) + withUnit + " or more"
                : number(least) + " to " + number(most) + withUnit;
    }

    private static String number(double value) {
        return new BigDecimal(value, new MathContext(10)).stripTrailingZeros().toPlainString();
    }

    private static String words(Class<?> choices) {
        return Stream.of(choices.getEnumConstants())
                .map(word -> "`" + Keys.ofChoice((Enum<?>) word) + "`")
                .collect(joining(", "));
    }

    private static String link(Class<?> block) {
        return "[" + title(block).toLowerCase(Locale.ROOT) + "](#"
                + title(block).toLowerCase(Locale.ROOT).replace(' ', '-') + ")";
    }

    /** {@code PipeLine} is titled "Pipe line". */
    private static String title(Class<?> block) {
        String words = Keys.ofComponent(block.getSimpleName()).substring(1).replace('_', ' ');
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    private static boolean isList(RecordComponent component) {
        return component.getType() == List.class;
    }

    private static boolean isBlock(Class<?> type) {
        return type.isRecord() && type != Amount.class;
    }

    /** What a list holds, what a map counts, else the type itself. */
    private static Class<?> held(Type type) {
        return type instanceof ParameterizedType generic
                ? (Class<?>) generic.getActualTypeArguments()[0]
                : (Class<?>) type;
    }

    // ── units ──

    private static Stream<String> unitRows(SiUnit si) {
        List<String> rows = new ArrayList<>();
        for (TextUnit unit : si.spellings()) {
            String others = unit.otherSpellings().stream()
                    .map(spelling -> "`" + spelling + "`")
                    .collect(joining(", "));
            String symbol = unit.symbol().isEmpty() ? "none" : "`" + unit.symbol() + "`";
            rows.add("| " + si.quantity() + " | " + symbol + " | " + others + " | " + meaning(unit, si) + " |\n");
        }
        return rows.stream();
    }

    private static String meaning(TextUnit unit, SiUnit si) {
        int told = si.text().equals("degC") ? 68 : 1;
        String target = si.text().equals("1")
                ? ""
                : " " + si.text().replace("^2", "²").replace("^3", "³").replace("degC", "°C");
        String left = told + (unit.symbol().isEmpty() ? "" : " " + unit.symbol());
        return left + " = " + number(unit.toSi(told, si)) + target;
    }
}
