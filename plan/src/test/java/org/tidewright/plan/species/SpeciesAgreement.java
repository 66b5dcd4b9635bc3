package org.tidewright.plan.species;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.toList;
import static java.util.stream.Collectors.toMap;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.tidewright.plan.species.CatalogueTable.Row;
import org.tidewright.testkit.ReferenceTable;

/**
 * The catalogue set beside two open collections: growth curves of reef fish and traits of corals.
 *
 * <p>Where a fact was taken from the collection it is set beside, agreement proves the copying and no more; such pairs are kept
 * apart from those that could have disagreed.
 */
final class SpeciesAgreement {
    /** What is compared, in the order of the page. */
    enum Subject {
        MAX_LENGTH("greatest length", "greatest length of a fish, cm"),
        ASYMPTOTE("asymptote", "asymptote of its growth, cm"),
        GROWTH("rate", "rate of its growth, per year"),
        WEIGHT("weight", "weight at its usual length, g"),
        USUAL_LENGTH("usual length", "usual length in aquaria against the asymptote, cm"),
        EXTENSION("extension", "extension of a coral, mm a year"),
        KIN_EXTENSION("extension by genus", "extension against the middle of its genus, mm a year"),
        REMEMBERED_EXTENSION("extension remembered", "extension remembered before looking, mm a year"),
        GENUS_WEIGHT("weight by genus", "weight by genus of a species left out, g"),
        FAMILY_WEIGHT("weight by family", "weight by family of a species left out, g");

        final String brief;
        final String words;

        Subject(String brief, String words) {
            this.brief = brief;
            this.words = words;
        }

        /** Whether it judges a rule on species left out rather than a cell of the catalogue. */
        boolean judgesARule() {
            return this == REMEMBERED_EXTENSION || this == GENUS_WEIGHT || this == FAMILY_WEIGHT;
        }
    }

    /** Two values for one thing; {@code copied} where the first came from the collection that the second stands in. */
    record Pair(Subject subject, String species, double ours, double theirs, boolean copied) {
        /** How much more the larger is than the smaller, as a share of the smaller. */
        double apart() {
            return Math.max(ours / theirs, theirs / ours) - 1;
        }
    }

    /** Weight in g = a · (length in cm)^b. */
    private record Weight(double a, double b) {
        /** The length at which weights of different species are compared and their middle is taken. */
        static final double LENGTH = 15;

        double at(double length) {
            return a * Math.pow(length, b);
        }

        static Weight middleOf(List<Weight> species) {
            double b = median(species.stream().map(Weight::b).toList());
            double weight = median(species.stream().map(one -> one.at(LENGTH)).toList());
            return new Weight(weight / Math.pow(LENGTH, b), b);
        }
    }

    private static final String PLACE = "/reference/species/";
    private static final List<ReferenceTable.Row> FISH = rows("fish_species.csv");
    private static final Map<String, ReferenceTable.Row> FISH_BY_NAME = byName(FISH);
    private static final Map<String, List<ReferenceTable.Row>> CURVES =
            rows("fish_growth.csv").stream().collect(groupingBy(row -> row.text("species")));
    private static final List<ReferenceTable.Row> CORALS = rows("coral_growth.csv");
    private static final Map<String, ReferenceTable.Row> CORAL_BY_NAME = byName(CORALS);

    private SpeciesAgreement() {}

    static List<Pair> all() {
        return Stream.of(fish(), corals(), remembered(), leftOut(Subject.GENUS_WEIGHT), leftOut(Subject.FAMILY_WEIGHT))
                .flatMap(List::stream)
                .toList();
    }

    private static List<Pair> fish() {
        List<Pair> pairs = new ArrayList<>();
        for (Row fish : CatalogueTable.FISH.rows()) {
            ReferenceTable.@Nullable Row open = find(fish, FISH_BY_NAME);
            if (open == null) {
                continue;
            }
            double usual = fish.number("usual_length_cm");
            List<ReferenceTable.Row> curves = Objects.requireNonNull(CURVES.get(open.text("species")));
            double asymptote = median(numbers(curves, "asymptote_cm"));
            pairs.add(pair(fish, Subject.MAX_LENGTH, "max_length_cm", "length_source", open.number("max_length_cm")));
            pairs.add(pair(fish, Subject.ASYMPTOTE, "asymptote_cm", "growth_source", asymptote));
            double rate = median(numbers(curves, "growth_per_year"));
            pairs.add(pair(fish, Subject.GROWTH, "growth_per_year", "growth_source", rate));
            pairs.add(new Pair(
                    Subject.WEIGHT,
                    fish.name(),
                    fish.weight(usual),
                    weight(open).at(usual),
                    fish.text("weight_source").startsWith("morais")));
            pairs.add(new Pair(Subject.USUAL_LENGTH, fish.name(), usual, asymptote, false));
        }
        return pairs;
    }

    private static Pair pair(Row fish, Subject subject, String column, String source, double theirs) {
        boolean copied = fish.text(source).startsWith("morais");
        return new Pair(subject, fish.name(), fish.number(column), theirs, copied);
    }

    private static List<Pair> corals() {
        List<Pair> pairs = new ArrayList<>();
        for (Row coral : CatalogueTable.INVERTEBRATES.rows()) {
            if (!coral.has("extension_source")) {
                continue;
            }
            double ours = middle(coral.number("extension_low_mm_per_year"), coral.number("extension_high_mm_per_year"));
            boolean copied = coral.text("extension_source").startsWith("carturan");
            ReferenceTable.@Nullable Row open = find(coral, CORAL_BY_NAME);
            List<Double> genus = numbers(
                    CORALS.stream()
                            .filter(row -> row.text("species").startsWith(coral.genus() + " "))
                            .toList(),
                    "mean_mm_per_year");
            if (open != null) {
                pairs.add(new Pair(Subject.EXTENSION, coral.name(), ours, open.number("mean_mm_per_year"), copied));
            } else if (!genus.isEmpty()) {
                pairs.add(new Pair(Subject.KIN_EXTENSION, coral.name(), ours, median(genus), copied));
            }
        }
        return pairs;
    }

    private static List<Pair> remembered() {
        return rows("remembered_extension.csv").stream()
                .map(row -> new Pair(
                        Subject.REMEMBERED_EXTENSION,
                        row.text("species"),
                        middle(row.number("low_mm_per_year"), row.number("high_mm_per_year")),
                        Objects.requireNonNull(CORAL_BY_NAME.get(row.text("species")))
                                .number("mean_mm_per_year"),
                        false))
                .toList();
    }

    /** Each species in turn against the middle of the others of its genus or family, as if it were not known. */
    private static List<Pair> leftOut(Subject subject) {
        List<Pair> pairs = new ArrayList<>();
        kin(subject).values().stream()
                .filter(kin -> kin.size() > least(subject))
                .forEach(kin -> kin.forEach(species -> {
                    Weight rule = Weight.middleOf(kin.stream()
                            .filter(Predicate.not(species::equals))
                            .map(SpeciesAgreement::weight)
                            .toList());
                    pairs.add(new Pair(
                            subject,
                            species.text("species"),
                            rule.at(Weight.LENGTH),
                            weight(species).at(Weight.LENGTH),
                            false));
                }));
        return pairs;
    }

    /** The weight that the catalogue should have for a fish at 15 cm by its genus or family. */
    static double weightByKin(Row fish, Subject subject) {
        String key = subject == Subject.GENUS_WEIGHT ? fish.genus() : fish.text("family");
        return Weight.middleOf(Objects.requireNonNull(kin(subject).get(key)).stream()
                        .map(SpeciesAgreement::weight)
                        .toList())
                .at(Weight.LENGTH);
    }

    static double weightAtComparedLength(Row fish) {
        return fish.weight(Weight.LENGTH);
    }

    private static Map<String, List<ReferenceTable.Row>> kin(Subject subject) {
        List<String> families = CatalogueTable.FISH.rows().stream()
                .filter(fish -> fish.text("weight_source").equals("morais_2018_family"))
                .map(fish -> fish.text("family"))
                .toList();
        return FISH.stream()
                .filter(row -> subject == Subject.GENUS_WEIGHT || families.contains(row.text("family")))
                .collect(groupingBy(
                        row -> subject == Subject.GENUS_WEIGHT
                                ? row.text("species").split(" ", 2)[0]
                                : row.text("family"),
                        TreeMap::new,
                        toList()));
    }

    /** Fewer species than these are not taken for their genus or family. */
    private static int least(Subject subject) {
        return subject == Subject.GENUS_WEIGHT ? 2 : 5;
    }

    private static Weight weight(ReferenceTable.Row row) {
        return new Weight(row.number("weight_a_g"), row.number("weight_b"));
    }

    /** By its accepted name or one of its older ones; null where the collection does not have it. */
    static ReferenceTable.@Nullable Row find(Row animal, Map<String, ReferenceTable.Row> collection) {
        return animal.names().stream()
                .filter(collection::containsKey)
                .findFirst()
                .map(collection::get)
                .orElse(null);
    }

    static Map<String, ReferenceTable.Row> byName(List<ReferenceTable.Row> rows) {
        return rows.stream().collect(toMap(row -> row.text("species"), row -> row));
    }

    static List<ReferenceTable.Row> rows(String file) {
        return ReferenceTable.read(SpeciesAgreement.class, PLACE + file).rows();
    }

    private static List<Double> numbers(List<ReferenceTable.Row> rows, String column) {
        return rows.stream().map(row -> row.number(column)).toList();
    }

    private static double middle(double low, double high) {
        return (low + high) / 2;
    }

    private static double median(List<Double> numbers) {
        double[] sorted =
                numbers.stream().mapToDouble(Double::doubleValue).sorted().toArray();
        int half = sorted.length / 2;
        return sorted.length % 2 == 1
                ? sorted[half]
                : Arrays.stream(sorted, half - 1, half + 1).average().orElseThrow();
    }
}
