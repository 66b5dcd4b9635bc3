package org.tidewright.web.page;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A number as it was typed, and its unit, from beside it or from behind it.
 *
 * @param text as the field shows it
 * @param unit chosen beside it; of several, the one typed behind the number counts
 * @param read number and unit as one text, empty where nothing was typed
 * @param digits the number alone, with a decimal point; empty where nothing was typed or it cannot be read
 */
record TypedNumber(String text, String unit, String read, String digits) {
    private static final Pattern NUMBER = Pattern.compile("[-+]?(?:\\d+(?:\\.\\d*)?|\\.\\d+)(?:[eE][-+]?\\d+)?");
    private static final Pattern NUMBER_AND_UNIT = Pattern.compile("(" + NUMBER.pattern() + ")\\s*(\\D.*)");

    /** Some telephones offer a comma alone; with three digits behind it, it may as well part thousands. */
    private static final Pattern DECIMAL_COMMA = Pattern.compile("([-+]?\\d+),(\\d{1,2}|\\d{4,})(\\D.*)?");

    /**
     * Reads it.
     *
     * @param beside the unit asked for beside the number; null for none
     * @param usual the unit where none is asked for
     * @param spelt the name of the unit that is written so
     */
    static TypedNumber of(
            String text, @Nullable String beside, String usual, Function<String, Optional<String>> spelt) {
        String plain = text.strip().replace('\u2212', '-');
        Matcher comma = DECIMAL_COMMA.matcher(plain);
        if (comma.matches()) {
            String rest = comma.group(3) == null ? "" : comma.group(3);
            plain = comma.group(1) + "." + comma.group(2) + rest;
        }
        String unit = beside == null ? usual : known(beside, usual, spelt);
        if (plain.isEmpty()) {
            return new TypedNumber("", unit, "", "");
        }
        if (NUMBER.matcher(plain).matches()) {
            String given = beside == null ? "" : beside;
            // In a unit that nobody knows it is no number: the usual one would be a guess.
            String digits = given.isEmpty() || spelt.apply(given).isPresent() ? plain : "";
            return new TypedNumber(text.strip(), known(given, usual, spelt), (plain + " " + given).strip(), digits);
        }
        // A unit typed behind the number counts, and moves to its own place where it stands in the list.
        Matcher both = NUMBER_AND_UNIT.matcher(plain);
        if (both.matches()) {
            Optional<String> named = spelt.apply(both.group(2).strip().replaceFirst("^u(?=[mMgGaA])", "µ"));
            if (named.isPresent()) {
                return new TypedNumber(both.group(1), named.get(), plain, both.group(1));
            }
        }
        return new TypedNumber(text.strip(), known(beside == null ? "" : beside, usual, spelt), plain, "");
    }

    /** What it is; empty, too, where it is greater than any number. */
    OptionalDouble number() {
        double value = digits.isEmpty() ? Double.NaN : Double.parseDouble(digits);
        return Double.isFinite(value) ? OptionalDouble.of(value) : OptionalDouble.empty();
    }

    private static String known(String unit, String otherwise, Function<String, Optional<String>> spelt) {
        return spelt.apply(unit).orElse(otherwise);
    }
}
