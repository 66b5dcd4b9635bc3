package org.tidewright.plan.text;

import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Times of day in a plan: hours and minutes, {@code 08:00}. */
public final class TimeText {
    /** What a time of day looks like, as a regular expression that Java and ECMA 262 read alike. */
    public static final String PATTERN = "([01]?[0-9]|2[0-3]):([0-5][0-9])";

    /** What should have stood where a time of day was asked for. */
    static final String EXPECTED = "a time of day from 00:00 to 23:59, such as 08:00 or 20:30";

    private static final Pattern TIME = Pattern.compile(PATTERN);
    private static final DateTimeFormatter WRITTEN = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

    private TimeText() {}

    static @Nullable LocalTime read(String text) {
        Matcher time = TIME.matcher(text);
        return time.matches() ? LocalTime.of(Integer.parseInt(time.group(1)), Integer.parseInt(time.group(2))) : null;
    }

    static String write(LocalTime time) {
        return WRITTEN.format(time);
    }
}
