package org.tidewright.husbandry.exchange;

import static org.tidewright.husbandry.exchange.Scalar.Form.*;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.time.DateTimeException;
import java.time.Duration;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.tidewright.plan.fault.Spelling;

/** The named values of one entry, each read as what it should be or refused where it stands. */
final class Given {
    private static final Pattern SECONDS = Pattern.compile("\\d{1,19}(\\.\\d{1,9})?");
    private static final Pattern DIGITS = Pattern.compile("-?\\d+(\\.\\d+)?([eE][-+]?\\d+)?");
    private static final Set<String> NOT_FINITE = Set.of("NaN", "Infinity", "-Infinity");

    private final Place place;
    private final Map<String, Scalar> values;

    /** @param place of the entry as a whole */
    Given(Place place, Map<String, Scalar> values) {
        this.place = place;
        this.values = values;
    }

    Place place() {
        return place;
    }

    /** Refuses a name that is none, by its nearest. */
    void onlyKnow(Collection<String> names) throws BadLine {
        for (Map.Entry<String, Scalar> entry : values.entrySet()) {
            if (!names.contains(entry.getKey())) {
                throw new BadLine(entry.getValue()
                        .place()
                        .fault(
                                "the unknown name “" + entry.getKey() + "”",
                                "one of: " + String.join(", ", names),
                                Spelling.suggestion(entry.getKey(), names)));
            }
        }
    }

    boolean isAbsent(String name) {
        Scalar value = values.get(name);
        return value == null
                || value.form() == ABSENT
                || (value.form() == CELL && value.text().isEmpty());
    }

    String text(String name) throws BadLine {
        return text(name, "a text");
    }

    private String text(String name, String expected) throws BadLine {
        Scalar value = needed(name, expected, TEXT);
        return value.form() == CELL ? CsvGuard.bare(value.text()) : value.text();
    }

    String textOrEmpty(String name) throws BadLine {
        return isAbsent(name) ? "" : text(name);
    }

    @Nullable
    String textOrNull(String name) throws BadLine {
        return isAbsent(name) ? null : text(name);
    }

    double number(String name) throws BadLine {
        Scalar value = values.get(name);
        if (value != null && value.form() == TEXT && NOT_FINITE.contains(value.text())) {
            return Double.parseDouble(value.text());
        }
        Scalar number = needed(name, "a number such as 8.1", Scalar.Form.NUMBER);
        if (!DIGITS.matcher(number.text()).matches() && !NOT_FINITE.contains(number.text())) {
            throw refusal(name, "a number with a decimal point, such as 8.1", "");
        }
        double read = Double.parseDouble(number.text());
        if (Double.isInfinite(read) && !NOT_FINITE.contains(number.text())) {
            throw refusal(name, "a number no larger than any number can be", "");
        }
        return read;
    }

    @Nullable
    Double numberOrNull(String name) throws BadLine {
        return isAbsent(name) ? null : Double.valueOf(number(name));
    }

    int whole(String name) throws BadLine {
        String text = needed(name, "a whole number", Scalar.Form.NUMBER).text();
        try {
            return Integer.parseInt(text);
        } catch (NumberFormatException notWhole) {
            throw refusal(name, "a whole number up to " + Integer.MAX_VALUE, "");
        }
    }

    boolean flag(String name) throws BadLine {
        if (isAbsent(name)) {
            return false;
        }
        String text = needed(name, "true or false", FLAG).text();
        if (!text.equals("true") && !text.equals("false")) {
            throw refusal(name, "true or false", "");
        }
        return text.equals("true");
    }

    @Nullable
    Duration secondsOrNull(String name) throws BadLine {
        if (isAbsent(name)) {
            return null;
        }
        String text = needed(name, "seconds", Scalar.Form.NUMBER).text();
        if (SECONDS.matcher(text).matches()) {
            BigDecimal seconds = new BigDecimal(text);
            BigInteger whole = seconds.toBigInteger();
            if (whole.bitLength() < Long.SIZE) {
                BigDecimal rest = seconds.subtract(new BigDecimal(whole));
                return Duration.ofSeconds(
                        whole.longValue(), rest.movePointRight(9).longValue());
            }
        }
        throw refusal(name, "seconds in plain digits, such as 1800 or 90.5", "");
    }

    /** A time, an id: what its own reader takes. */
    <T> T parsed(String name, Function<String, T> reader, String expected) throws BadLine {
        String text = needed(name, expected, TEXT).text();
        try {
            return reader.apply(text);
        } catch (DateTimeException | IllegalArgumentException unreadable) {
            throw refusal(name, expected, "");
        }
    }

    <T> T oneOf(String name, Function<String, Optional<T>> find, List<String> keys) throws BadLine {
        String expected = "one of: " + String.join(", ", keys);
        String text = text(name, expected);
        Optional<T> found = find.apply(text);
        if (found.isEmpty()) {
            throw refusal(name, expected, Spelling.suggestion(text, keys));
        }
        return found.get();
    }

    /** What is said where a value is not what it should be. */
    BadLine refusal(String name, String expected, String mend) {
        Scalar value = values.get(name);
        return value == null
                ? new BadLine(place.fault("no “" + name + "”", expected, mend))
                : new BadLine(value.place().fault(value.shown(), expected, mend));
    }

    private Scalar needed(String name, String expected, Scalar.Form form) throws BadLine {
        Scalar value = values.get(name);
        if (value == null || isAbsent(name) || (value.form() != form && value.form() != CELL)) {
            throw refusal(name, expected, "");
        }
        return value;
    }
}
