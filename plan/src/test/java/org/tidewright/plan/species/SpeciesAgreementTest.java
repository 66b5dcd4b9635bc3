package org.tidewright.plan.species;

import static java.util.Comparator.comparingDouble;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.tidewright.plan.species.CatalogueTable.Row;
import org.tidewright.plan.species.SpeciesAgreement.Pair;
import org.tidewright.plan.species.SpeciesAgreement.Subject;
import org.tidewright.testkit.ReferenceTable;

/** How far the catalogue is from open data; {@code -Dspecies.write} writes the tables of its page anew. */
class SpeciesAgreementTest {
    private static final Path PAGE = Path.of("..", "docs", "science", "species.md");
    private static final double FAR = 0.5;
    private static final List<Pair> PAIRS = SpeciesAgreement.all();

    @Test
    void whatWasCopiedIsWhatStandsThere() {
        // Lengths and weights to the last digit; curves are rounded to a millimetre and a hundredth a year, extensions
        // to two
        // digits of both ends of a skewed spread.
        Map<Subject, Double> rounding = Map.of(
                Subject.MAX_LENGTH, 1e-9,
                Subject.WEIGHT, 1e-9,
                Subject.ASYMPTOTE, 0.008,
                Subject.GROWTH, 0.025,
                Subject.EXTENSION, 0.06,
                Subject.KIN_EXTENSION, 0.2);
        List<Pair> copied = PAIRS.stream().filter(Pair::copied).toList();
        assertThat(copied).hasSizeGreaterThan(200);
        assertThat(copied)
                .allSatisfy(pair -> assertThat(pair.apart()).isLessThanOrEqualTo(rounding.get(pair.subject())));
    }

    @Test
    void whatCouldHaveDisagreedAgreesAsFarAsThePageSays() {
        assertThat(share(Subject.USUAL_LENGTH, 0.25)).isGreaterThan(0.55);
        assertThat(share(Subject.USUAL_LENGTH, 0.5)).isGreaterThan(0.85);
        assertThat(share(Subject.KIN_EXTENSION, 0.5)).isGreaterThan(0.5);
        assertThat(share(Subject.REMEMBERED_EXTENSION, 0.5)).isGreaterThan(0.65);
        assertThat(share(Subject.GENUS_WEIGHT, 0.25)).isGreaterThan(0.7);
        assertThat(share(Subject.GENUS_WEIGHT, 0.5)).isGreaterThan(0.9);
        assertThat(share(Subject.FAMILY_WEIGHT, 0.25)).isGreaterThan(0.65);
        assertThat(share(Subject.FAMILY_WEIGHT, 0.5)).isGreaterThan(0.9);
    }

    @Test
    void theWeightOfAGenusOrFamilyIsTheMiddleOfItsSpecies() {
        Map<String, Subject> rules =
                Map.of("morais_2018_genus", Subject.GENUS_WEIGHT, "morais_2018_family", Subject.FAMILY_WEIGHT);
        for (Row fish : CatalogueTable.FISH.rows()) {
            Subject rule = rules.get(fish.text("weight_source"));
            if (rule != null) {
                assertThat(SpeciesAgreement.weightAtComparedLength(fish) / SpeciesAgreement.weightByKin(fish, rule))
                        .as(fish.toString())
                        .isCloseTo(1, within(0.002));
            }
        }
    }

    /** Stings were written from practice, the scores count who was digested: two ways to see one pecking order. */
    @Test
    void coralsThatWinMoreContestsStingHarder() {
        List<double[]> both = stings();
        assertThat(both).hasSizeGreaterThan(30);
        assertThat(rankCorrelation(both)).isGreaterThan(0.5);
    }

    @Test
    void thePageHasTheTablesThatAreComputed() throws IOException {
        Map<String, List<String>> tables =
                Map.of("agreement", agreement(), "far", far(), "stings", stingLine(), "sources", sources());
        if (System.getProperty("species.write") != null) {
            for (Map.Entry<String, List<String>> table : tables.entrySet()) {
                write(table.getKey(), table.getValue());
            }
        }
        String page = Files.readString(PAGE);
        assertThat(page.lines().limit(5))
                .anyMatch(line -> line.contains(String.format(
                        "%d fish and %d corals",
                        CatalogueTable.FISH.rows().size(),
                        CatalogueTable.INVERTEBRATES.rows().size())));
        tables.forEach((name, rows) -> assertThat(between(page, name))
                .as("table “%s”; -Dspecies.write writes it anew", name)
                .isEqualTo("\n" + String.join("\n", rows) + "\n"));
    }

    @Test
    void whatIsFurtherOffThanHalfIsExplainedOnThePage() throws IOException {
        List<String> explained = new ArrayList<>();
        Matcher line = Pattern.compile("^- \\*([A-Z][a-z]+ [a-z.]+)\\*, ([a-z ]+):", Pattern.MULTILINE)
                .matcher(Files.readString(PAGE));
        while (line.find()) {
            explained.add(line.group(1) + ", " + line.group(2));
        }
        assertThat(explained)
                .containsExactlyInAnyOrderElementsOf(farPairs().stream()
                        .map(pair -> pair.species() + ", " + pair.subject().brief)
                        .toList());
    }

    private static List<Pair> of(Subject subject, boolean copied) {
        return PAIRS.stream()
                .filter(pair -> pair.subject() == subject && pair.copied() == copied)
                .toList();
    }

    private static double share(Subject subject, double apart) {
        return share(of(subject, false), apart);
    }

    private static double share(List<Pair> pairs, double apart) {
        return pairs.stream().filter(pair -> pair.apart() <= apart).count() / (double) pairs.size();
    }

    private static List<Pair> farPairs() {
        return PAIRS.stream()
                .filter(pair -> !pair.subject().judgesARule() && pair.apart() > FAR)
                .toList();
    }

    private static List<String> agreement() {
        List<String> rows = new ArrayList<>();
        rows.add("| what | where ours is from | pairs | within 10 %, % | 25 %, % | 50 %, % | furthest |");
        rows.add("|---|---|---:|---:|---:|---:|---|");
        for (Subject subject : Subject.values()) {
            for (boolean copied : new boolean[] {true, false}) {
                List<Pair> pairs = of(subject, copied);
                if (!pairs.isEmpty()) {
                    rows.add(row(subject, copied, pairs));
                }
            }
        }
        return rows;
    }

    private static String row(Subject subject, boolean copied, List<Pair> pairs) {
        Pair furthest = pairs.stream().max(comparingDouble(Pair::apart)).orElseThrow();
        String origin = copied ? "the same data" : subject.judgesARule() ? "a rule" : "elsewhere";
        return String.format(
                Locale.ROOT,
                "| %s | %s | %d | %.0f | %.0f | %.0f | %s |",
                subject.words,
                origin,
                pairs.size(),
                100 * share(pairs, 0.1),
                100 * share(pairs, 0.25),
                100 * share(pairs, 0.5),
                copied && furthest.apart() < 1e-9
                        ? ""
                        : String.format(Locale.ROOT, "*%s*, %.0f %%", furthest.species(), 100 * furthest.apart()));
    }

    private static List<String> sources() {
        List<String> rows = new ArrayList<>();
        rows.add("| source | basis | trust | fish | invertebrates |");
        rows.add("|---|---|---|---:|---:|");
        for (Row source : CatalogueTable.SOURCES.rows()) {
            rows.add(String.format(
                    Locale.ROOT,
                    "| `%s` | %s | %s | %s | %s |",
                    source.text("key"),
                    source.text("basis"),
                    source.text("confidence"),
                    uses(CatalogueTable.FISH, source.text("key")),
                    uses(CatalogueTable.INVERTEBRATES, source.text("key"))));
        }
        return rows;
    }

    private static String uses(CatalogueTable table, String key) {
        List<String> columns = table.columns().stream()
                .filter(column -> column.endsWith("_source"))
                .toList();
        long uses = table.rows().stream()
                .filter(row ->
                        columns.stream().anyMatch(column -> row.text(column).equals(key)))
                .count();
        return uses == 0 ? "" : Long.toString(uses);
    }

    private static List<String> far() {
        List<String> rows = new ArrayList<>();
        rows.add("| species | what | ours | theirs | apart, % |");
        rows.add("|---|---|---:|---:|---:|");
        for (Pair pair : farPairs()) {
            rows.add(String.format(
                    Locale.ROOT,
                    "| *%s* | %s | %.3g | %.3g | %.0f |",
                    pair.species(),
                    pair.subject().words,
                    pair.ours(),
                    pair.theirs(),
                    100 * pair.apart()));
        }
        return rows;
    }

    private static List<String> stingLine() {
        List<double[]> both = stings();
        return List.of(String.format(
                Locale.ROOT,
                "%d corals; rank correlation between our sting and the score %.2f.",
                both.size(),
                rankCorrelation(both)));
    }

    private static List<double[]> stings() {
        Map<String, ReferenceTable.Row> scores =
                SpeciesAgreement.byName(SpeciesAgreement.rows("coral_aggressiveness.csv"));
        List<double[]> both = new ArrayList<>();
        for (Row coral : CatalogueTable.INVERTEBRATES.rows()) {
            ReferenceTable.@Nullable Row score = SpeciesAgreement.find(coral, scores);
            if (score != null) {
                both.add(new double[] {coral.number("sting_0to3"), score.number("aggressiveness")});
            }
        }
        return both;
    }

    /** Spearman's, ties at their middle rank. */
    private static double rankCorrelation(List<double[]> pairs) {
        double middle = (pairs.size() - 1) / 2.0;
        double both = 0;
        double first = 0;
        double second = 0;
        for (double[] pair : pairs) {
            double x = rank(pairs, 0, pair[0]) - middle;
            double y = rank(pairs, 1, pair[1]) - middle;
            both += x * y;
            first += x * x;
            second += y * y;
        }
        return both / Math.sqrt(first * second);
    }

    private static double rank(List<double[]> pairs, int which, double value) {
        long below = pairs.stream().filter(pair -> pair[which] < value).count();
        long equal = pairs.stream().filter(pair -> pair[which] == value).count();
        return below + (equal - 1) / 2.0;
    }

    private static void write(String name, List<String> rows) throws IOException {
        String page = Files.readString(PAGE);
        Files.writeString(
                PAGE,
                page.substring(0, start(page, name)) + "\n" + String.join("\n", rows) + "\n"
                        + page.substring(end(page, name)));
    }

    private static String between(String page, String name) {
        return page.substring(start(page, name), end(page, name));
    }

    private static int start(String page, String name) {
        String mark = "<!-- " + name + ": generated -->\n";
        int at = page.indexOf(mark);
        assertThat(at).as("“" + mark + "” on the page").isNotNegative();
        return at + mark.length();
    }

    private static int end(String page, String name) {
        int at = page.indexOf("<!-- end of " + name + " -->");
        assertThat(at).as("the end of " + name + " on the page").isGreaterThanOrEqualTo(start(page, name));
        return at;
    }
}
