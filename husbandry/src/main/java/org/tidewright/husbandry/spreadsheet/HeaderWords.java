package org.tidewright.husbandry.spreadsheet;

import static org.tidewright.plan.method.WaterQuantity.*;

import java.text.Normalizer;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.tidewright.plan.method.WaterQuantity;

/**
 * What the words of a header say: a quantity, its unit, or that the column is about something else. The words are those of the
 * trade, in full, as formulas and as abbreviations.
 */
final class HeaderWords {
    private static final Pattern UNIT = Pattern.compile(
            "(?<![\\p{L}\\d])(mg|ug|meq|mmol|umol|ms|us|g|ml|l)\\s?(?:/|_per_|_|\\s?per\\s?|\\s|\\.)?\\s?(l|kg|cm|min|h|d)(?![\\p{L}\\d])");
    private static final Pattern WORD = Pattern.compile("[0-9]+(?:/[0-9]+|c)?|[\\p{L}°%‰]+[0-9]*(?:/\\p{L}+[0-9]*)?");

    private static final Map<String, WaterQuantity> WHOLE = byWord(Map.ofEntries(
            Map.entry(TEMPERATURE, "t"),
            Map.entry(SALINITY, "sal salt sg gravity psu cond conductivity"),
            Map.entry(ALKALINITY, "alk kh dkh ta"),
            Map.entry(CALCIUM, "ca ca2"),
            Map.entry(MAGNESIUM, "mg mg2"),
            Map.entry(PH, "ph"),
            Map.entry(NITRATE, "no3"),
            Map.entry(NITRITE, "no2"),
            Map.entry(AMMONIA, "nh3 nh4 tan"),
            Map.entry(PHOSPHATE, "po4 phos"),
            Map.entry(OXYGEN, "o2 do")));

    /** Beginnings of words, also as other languages have them. */
    private static final Map<String, WaterQuantity> BEGINNINGS = byWord(Map.ofEntries(
            Map.entry(TEMPERATURE, "temp"),
            Map.entry(SALINITY, "salin hydromet refracto"),
            Map.entry(ALKALINITY, "alkal karbonath"),
            Map.entry(CALCIUM, "calcium kalzium"),
            Map.entry(MAGNESIUM, "magnes"),
            Map.entry(NITRATE, "nitrat"),
            Map.entry(NITRITE, "nitrit"),
            Map.entry(AMMONIA, "ammon"),
            Map.entry(PHOSPHATE, "phosph"),
            Map.entry(OXYGEN, "oxygen sauerstoff")));

    /** Columns with these words tell of something else than a reading of the water. */
    private static final Set<String> ELSE =
            words("dose dosed dosing dosage doser added add ml target goal setpoint room air"
                    + " ambient outside flow change delta diff difference ratio battery volt v mv heater cost price rodi tds reactor"
                    + " effluent depth");

    /** Units that no reading of any quantity is written in here. */
    private static final Set<String> FOREIGN_UNITS =
            words("% perc percent sat umol/kg umol/l us/cm g/kg g/l l/min l/h ml/min ml/d");

    private static final Set<String> UNIT_WORDS = words(
            "ppm ppb ppt psu pss dkh kh meq meq/l mmol/l mval mg/l ug/l caco3 c f °c"
                    + " °f degc degf deg celsius fahrenheit ms/cm ms sg nbs nist total °dh °kh ‰ n p per as 25c 20c 25 20 25/25 20/20");

    private static final Set<String> NO_NAME = words("value values reading result measurement wert messwert");

    static Set<String> words(String spaced) {
        return Set.of(spaced.split(" ", -1));
    }

    private static Map<String, WaterQuantity> byWord(Map<WaterQuantity, String> spaced) {
        Map<String, WaterQuantity> byWord = new HashMap<>();
        spaced.forEach((quantity, all) -> words(all).forEach(word -> byWord.put(word, quantity)));
        return Map.copyOf(byWord);
    }

    private final Set<String> words;

    private HeaderWords(Set<String> words) {
        this.words = words;
    }

    static HeaderWords of(String header) {
        String plain = Normalizer.normalize(header.replace('º', '°').replace('˚', '°'), Normalizer.Form.NFKC)
                .toLowerCase(Locale.ROOT)
                .replace('μ', 'u');
        plain = UNIT.matcher(plain).replaceAll(" $1/$2 ").replace('_', ' ');
        Set<String> words = new LinkedHashSet<>();
        Matcher word = WORD.matcher(plain);
        while (word.find()) {
            words.add(word.group());
        }
        return new HeaderWords(words);
    }

    boolean has(String word) {
        return words.contains(word);
    }

    boolean hasAny(String... any) {
        return List.of(any).stream().anyMatch(words::contains);
    }

    /** Whether the header names nothing: it is empty, or says only that numbers stand below. */
    boolean nameNothing() {
        return NO_NAME.containsAll(words);
    }

    /** The word that says the column is about something else; null where there is none. */
    @Nullable
    String somethingElse() {
        return words.stream()
                .filter(word -> ELSE.contains(word) || FOREIGN_UNITS.contains(word))
                .findFirst()
                .orElse(null);
    }

    /** All quantities that are named; more than one where it is not clear which is meant. */
    Set<WaterQuantity> quantities() {
        Set<WaterQuantity> named = EnumSet.noneOf(WaterQuantity.class);
        for (String word : words) {
            for (String part :
                    word.contains("/") && !UNIT_WORDS.contains(word) ? word.split("/", -1) : new String[] {word}) {
                quantity(part).ifPresent(named::add);
            }
        }
        // "mg" is a mass where another quantity is named with it.
        if (named.size() > 1 && named.contains(MAGNESIUM) && !words.contains("magnesium")) {
            named.remove(MAGNESIUM);
        }
        return named;
    }

    private static Optional<WaterQuantity> quantity(String word) {
        WaterQuantity whole = WHOLE.get(word);
        return whole != null
                ? Optional.of(whole)
                : BEGINNINGS.entrySet().stream()
                        .filter(beginning -> word.startsWith(beginning.getKey()))
                        .map(Map.Entry::getValue)
                        .findFirst();
    }

    /** Whether all words are units, as in a second row of a header. */
    boolean isUnit() {
        return !words.isEmpty() && UNIT_WORDS.containsAll(words);
    }

    /** What is left when quantities and units are taken away: “surface”. */
    String rest() {
        StringBuilder rest = new StringBuilder();
        for (String word : words) {
            if (!UNIT_WORDS.contains(word)
                    && quantity(word).isEmpty()
                    && !NO_NAME.contains(word)
                    && !word.contains("/")) {
                rest.append(rest.isEmpty() ? "" : " ").append(word);
            }
        }
        return rest.toString();
    }
}
