package org.tidewright.husbandry.spreadsheet;

import static org.tidewright.husbandry.spreadsheet.BadCell.quoted;

import java.time.DateTimeException;
import java.time.Duration;
import java.time.ZoneOffset;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A time of day as it stands in a cell.
 *
 * @param sinceMidnight 24 h for the midnight that ends the day
 * @param offset from UTC; null where none is written
 */
record TimeShape(Duration sinceMidnight, @Nullable ZoneOffset offset) {
    private static final int LONGEST = 40;
    private static final Pattern CLOCK = Pattern.compile(
            "(?<h>\\d{1,2})(?:[:.hH](?<m>\\d{2})(?:[:.](?<s>\\d{2})(?:[.,](?<f>\\d{1,9}))?)?)?(?<mark>[hH])?"
                    + "\\s*(?<half>[aApP]\\.?\\s?[mM]\\.?)?\\s*(?<zone>Z|UTC|GMT|[+-]\\d{2}(?::?\\d{2})?)?");
    private static final Pattern TOGETHER = Pattern.compile("(?<h>\\d{2})(?<m>\\d{2})");
    private static final Pattern SHARE = Pattern.compile("0?[.,]\\d{1,15}");
    private static final Pattern EITHER = Pattern.compile("0\\.[0-5]\\d");
    private static final long DAY = 86_400;

    /** Whether a cell is a time with hours and minutes, or with a half of the day: a bare number is none. */
    static boolean looksLikeOne(String cell) {
        if (cell.length() > LONGEST || cell.chars().noneMatch(c -> c == ':' || Character.isLetter(c))) {
            return false;
        }
        Matcher clock = CLOCK.matcher(cell);
        return clock.matches() && (clock.group("half") != null || clock.group("m") != null);
    }

    static TimeShape read(String cell) throws BadCell {
        if (cell.length() <= LONGEST) {
            if (EITHER.matcher(cell).matches()) {
                throw new BadCell(
                        quoted(cell) + ", which may be minutes after midnight or a share of the day",
                        "a time of day such as 14:35 or 2:35 PM",
                        "");
            }
            Matcher clock = CLOCK.matcher(cell);
            if (clock.matches() && !SHARE.matcher(cell).matches()) {
                return ofClock(cell, clock);
            }
            Matcher together = TOGETHER.matcher(cell);
            if (together.matches()) {
                return new TimeShape(sum(cell, number(together, "h"), number(together, "m"), 0, 0), null);
            } else if (SHARE.matcher(cell).matches()) {
                double share = Double.parseDouble(cell.replace(',', '.'));
                return new TimeShape(Duration.ofSeconds(Math.round(share * DAY)), null);
            }
        }
        throw unreadable(cell);
    }

    private static TimeShape ofClock(String cell, Matcher clock) throws BadCell {
        int hour = number(clock, "h");
        String half = clock.group("half");
        if (half == null && clock.group("m") == null && clock.group("mark") == null) {
            throw unreadable(cell);
        }
        if (half != null) {
            if (hour < 1 || hour > 12) {
                throw unreadable(cell);
            }
            hour = hour % 12 + (half.toLowerCase(Locale.ROOT).startsWith("p") ? 12 : 0);
        }
        String fraction = clock.group("f");
        long nanos = fraction == null ? 0 : Long.parseLong((fraction + "000000000").substring(0, 9));
        Duration since = sum(cell, hour, number(clock, "m"), number(clock, "s"), nanos);
        return new TimeShape(since, offset(cell, clock.group("zone")));
    }

    private static @Nullable ZoneOffset offset(String cell, @Nullable String written) throws BadCell {
        if (written == null) {
            return null;
        } else if (!written.startsWith("+") && !written.startsWith("-")) {
            return ZoneOffset.UTC;
        }
        try {
            return ZoneOffset.of(written);
        } catch (DateTimeException none) {
            throw unreadable(cell);
        }
    }

    private static Duration sum(String cell, int hour, int minute, int second, long nanos) throws BadCell {
        Duration since =
                Duration.ofHours(hour).plusMinutes(minute).plusSeconds(second).plusNanos(nanos);
        if (minute > 59 || second > 59 || since.compareTo(Duration.ofDays(1)) > 0) {
            throw unreadable(cell);
        }
        return since;
    }

    private static int number(Matcher clock, String group) {
        String digits = clock.group(group);
        return digits == null ? 0 : Integer.parseInt(digits);
    }

    private static BadCell unreadable(String cell) {
        return new BadCell(quoted(cell), "a time of day such as 14:35 or 2:35 PM", "");
    }
}
