package org.tidewright.husbandry.livestock;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tidewright.plan.source.Basis;
import org.tidewright.seawater.carbonate.Alkalinity;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.testkit.ReferenceTable;

/**
 * Cases against which verdicts on livestock are judged, in two halves; what their words mean stands at the head of the
 * files.
 */
final class Panel {
    static final List<String> COLUMNS =
            words("case length_cm width_cm height_cm water_l age_months lid sand_cm rock_kg residents candidate"
                    + " candidate_eats alkalinity_sd_dkh expected families because source basis");
    static final List<String> LIDS = words("lid mesh open");
    static final List<String> FOODS = words("dry frozen algae live_pods many_small coral_food");
    static final List<String> VERDICTS = words("yes not_yet no");
    static final List<String> FAMILIES = words(
            "room growth predation_on_it predation_by_it aggression_from_residents aggression_to_residents own_kind"
                    + " group coral_eater clean_up_crew sting wandering hazard poison temperature jump sand feeding"
                    + " maturity stability after deadly oxygen load");
    static final List<Basis> BASES = List.of(Basis.PUBLISHED, Basis.COMMON_PRACTICE, Basis.FROM_MEMORY);

    private static final double LITRES = 1e-3;
    private static final double CENTIMETRES = 1e-2;
    private static final Pattern NAME = Pattern.compile("[a-z0-9]+(_[a-z0-9]+)*");
    private static final Pattern ANIMALS =
            Pattern.compile("([1-9]\\d*) ([A-Z][a-z]+ (?:[a-z]+|sp\\.))(?: (\\d+(?:\\.\\d+)?) cm)?");

    private Panel() {}

    /** So many of one kind; fish with their length, corals and other invertebrates without. */
    record Animals(int count, String name, @Unit("m") OptionalDouble length) {}

    /** A tank, who lives in it, a purchase, and what an experienced keeper would say to it. */
    record Case(
            String name,
            @Unit("m") double length,
            @Unit("m") double width,
            @Unit("m") double height,
            @Unit("m^3") double water,
            @Unit("month") double age,
            String lid,
            @Unit("m") double sand,
            @Unit("kg") double rock,
            List<Animals> residents,
            Animals candidate,
            List<String> foods,
            @Unit("mol/m^3") OptionalDouble alkalinityDeviation,
            String expected,
            List<String> families,
            String because,
            String source,
            Basis basis) {}

    /** The half that rules and their numbers may be tuned on. */
    static ReferenceTable tuning() {
        return ReferenceTable.read(Panel.class, "/livestock/panel.csv");
    }

    /** The half that is not looked at until the rules stand. */
    static ReferenceTable heldApart() {
        return ReferenceTable.read(Panel.class, "/livestock/panel-held-apart.csv");
    }

    static List<Case> cases(ReferenceTable table) {
        return table.rows().stream().map(Panel::read).toList();
    }

    /** Which half a case fell to: 0 for tuning, 1 held apart. */
    static int coin(String seed, String name) {
        try {
            byte[] hash =
                    MessageDigest.getInstance("SHA-256").digest((seed + " " + name).getBytes(StandardCharsets.UTF_8));
            return hash[0] & 1;
        } catch (NoSuchAlgorithmException absent) {
            throw new IllegalStateException("every Java has SHA-256", absent);
        }
    }

    private static Case read(ReferenceTable.Row row) {
        String name = row.text("case");
        if (!NAME.matcher(name).matches()) {
            throw fault(row.where("case"), name, "small letters, digits and single _");
        }
        return new Case(
                name,
                moreThanNothing(row, "length_cm") * CENTIMETRES,
                moreThanNothing(row, "width_cm") * CENTIMETRES,
                moreThanNothing(row, "height_cm") * CENTIMETRES,
                moreThanNothing(row, "water_l") * LITRES,
                moreThanNothing(row, "age_months"),
                word(row.where("lid"), row.text("lid"), LIDS),
                atLeastNothing(row, "sand_cm") * CENTIMETRES,
                atLeastNothing(row, "rock_kg"),
                list(row, "residents").stream()
                        .map(text -> animals(row.where("residents"), text))
                        .toList(),
                animals(row.where("candidate"), row.text("candidate")),
                list(row, "candidate_eats").stream()
                        .map(text -> word(row.where("candidate_eats"), text, FOODS))
                        .toList(),
                row.has("alkalinity_sd_dkh")
                        ? OptionalDouble.of(Alkalinity.fromGermanDegrees(atLeastNothing(row, "alkalinity_sd_dkh")))
                        : OptionalDouble.empty(),
                word(row.where("expected"), row.text("expected"), VERDICTS),
                list(row, "families").stream()
                        .map(text -> word(row.where("families"), text, FAMILIES))
                        .toList(),
                row.text("because"),
                row.text("source"),
                basis(row.where("basis"), row.text("basis")));
    }

    static Animals animals(String where, String text) {
        Matcher parts = ANIMALS.matcher(text);
        if (!parts.matches()) {
            throw fault(
                    where, text, "a count, a scientific name and for fish a length, as '2 Amphiprion ocellaris 6 cm'");
        }
        String length = parts.group(3);
        return new Animals(
                Integer.parseInt(parts.group(1)),
                parts.group(2),
                length == null ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(length) * CENTIMETRES));
    }

    static String word(String where, String text, List<String> legal) {
        if (!legal.contains(text)) {
            throw fault(where, text, "one of " + legal);
        }
        return text;
    }

    static Basis basis(String where, String text) {
        return BASES.stream()
                .filter(basis -> basis.words().equals(text))
                .findFirst()
                .orElseThrow(() -> fault(
                        where,
                        text,
                        "one of " + BASES.stream().map(Basis::words).toList()));
    }

    private static double moreThanNothing(ReferenceTable.Row row, String column) {
        double number = row.number(column);
        if (number <= 0) {
            throw fault(row.where(column), row.text(column), "more than 0");
        }
        return number;
    }

    private static double atLeastNothing(ReferenceTable.Row row, String column) {
        double number = row.number(column);
        if (number < 0) {
            throw fault(row.where(column), row.text(column), "0 or more");
        }
        return number;
    }

    private static List<String> list(ReferenceTable.Row row, String column) {
        return row.has(column) ? Arrays.asList(row.text(column).split("; ", -1)) : List.of();
    }

    private static List<String> words(String text) {
        return List.of(text.split(" ", -1));
    }

    private static IllegalArgumentException fault(String where, String found, String expected) {
        return new IllegalArgumentException(where + ": found '" + found + "', expected " + expected);
    }
}
