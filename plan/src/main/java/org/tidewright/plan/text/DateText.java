package org.tidewright.plan.text;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Days in a plan, {@code 2026-11-01} (ISO 8601). */
public final class DateText {
    /** What a day looks like, as a regular expression that Java and ECMA 262 read alike. */
    public static final String PATTERN = "[0-9]{4}-[0-9]{2}-[0-9]{2}";

    /** What should have stood where a day was asked for. */
    static final String EXPECTED = "a day as year, month and day, such as 2026-11-01";

    private static final Pattern DAY = Pattern.compile(PATTERN);

    private DateText() {}

    static @Nullable LocalDate read(String text) {
        try {
            return DAY.matcher(text).matches() ? LocalDate.parse(text) : null;
        } catch (DateTimeException noSuchDay) {
            return null;
        }
    }
}
