package org.tidewright.husbandry.spreadsheet;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * The parts of a date as it stands in a cell, before it is known which number is the day.
 *
 * @param first of three numbers; the year where it has four digits, the day where the month is named
 * @param yearDigits of the number that must be the year; 0 for a number of days
 * @param days days since 30 December 1899, for a spreadsheet's own count
 * @param time what stands behind the date, empty for nothing
 */
record DateShape(Kind kind, int first, int second, int third, int yearDigits, double days, String time) {
    enum Kind {
        YEAR_FIRST,
        NUMBERS,
        NAMED,
        COUNTED
    }

    private static final int LONGEST = 60;

    private static final String TIME = "(?:[T\\s,]\\s*(?<time>\\S.*))?";
    private static final String WEEKDAY = "(?:\\p{L}{2,10}\\.?,?\\s+)?";
    private static final String YEAR = "(?<y>\\d{4}|\\d{2})";
    private static final Pattern YEAR_FIRST =
            Pattern.compile("(?<y>\\d{4})([-/.])(?<m>\\d{1,2})\\2(?<d>\\d{1,2})\\.?" + TIME);
    private static final Pattern TOGETHER = Pattern.compile("(?<y>(?:19|20)\\d{2})(?<m>\\d{2})(?<d>\\d{2})" + TIME);
    private static final Pattern NUMBERS =
            Pattern.compile(WEEKDAY + "(?<a>\\d{1,2})([-/.])\\s?(?<b>\\d{1,2})\\2\\s?" + YEAR + "\\.?" + TIME);
    private static final Pattern DAY_MONTH_YEAR = Pattern.compile(WEEKDAY
            + "(?<d>\\d{1,2})(?:st|nd|rd|th|\\.)?[\\s/-]*(?:of\\s+)?(?<m>\\p{L}{3,12})\\.?[\\s,/-]*" + YEAR + TIME);
    private static final Pattern MONTH_DAY_YEAR = Pattern.compile(
            WEEKDAY + "(?<m>\\p{L}{3,12})\\.?[\\s-]*(?<d>\\d{1,2})(?:st|nd|rd|th)?[\\s,-]+" + YEAR + TIME);
    private static final Pattern YEAR_MONTH_DAY =
            Pattern.compile("(?<y>\\d{4})[\\s-]+(?<m>\\p{L}{3,12})\\.?[\\s-]+(?<d>\\d{1,2})" + TIME);
    private static final Pattern COUNTED = Pattern.compile("[2-7]\\d{4}(?:[.,]\\d{1,15})?");

    /** The names of the months in English, German, Dutch, French, Spanish and Italian; any beginning of three letters will do. */
    private static final List<String> MONTHS = List.of(
            "january januar jänner januari janvier enero gennaio",
            "february februar februari février fevrier febrero febbraio",
            "march märz mrz maart mars marzo",
            "april avril abril aprile",
            "may mai mei mayo maggio",
            "june juni juin junio giugno",
            "july juli juillet julio luglio",
            "august augustus août aout agosto",
            "september septembre septiembre setiembre settembre",
            "october oktober octobre octubre ottobre",
            "november novembre noviembre",
            "december dezember décembre decembre diciembre dicembre");

    /** The parts of a date; empty where the cell is none. */
    static Optional<DateShape> of(String cell) {
        if (cell.length() > LONGEST || cell.length() < 5 || !mayBeOne(cell)) {
            return Optional.empty();
        }
        return numbers(cell).or(() -> named(cell));
    }

    /** Nearly all cells of a sheet are plain numbers, which this tells quickly. */
    private static boolean mayBeOne(String cell) {
        int digits = 0;
        int marks = 0;
        boolean letters = false;
        for (int i = 0; i < cell.length(); i++) {
            char c = cell.charAt(i);
            digits += c >= '0' && c <= '9' ? 1 : 0;
            marks += c == '-' || c == '/' || c == '.' ? 1 : 0;
            letters |= Character.isLetter(c);
        }
        return digits >= 3 && (letters || marks >= 2 || digits >= 5);
    }

    private static Optional<DateShape> numbers(String cell) {
        for (Pattern pattern : new Pattern[] {YEAR_FIRST, TOGETHER}) {
            Matcher date = pattern.matcher(cell);
            if (date.matches()) {
                return Optional.of(
                        shape(Kind.YEAR_FIRST, number(date, "y"), number(date, "m"), number(date, "d"), 4, date));
            }
        }
        Matcher date = NUMBERS.matcher(cell);
        if (date.matches()) {
            int digits = date.group("y").length();
            return Optional.of(
                    shape(Kind.NUMBERS, number(date, "a"), number(date, "b"), number(date, "y"), digits, date));
        }
        if (COUNTED.matcher(cell).matches()) {
            return Optional.of(new DateShape(Kind.COUNTED, 0, 0, 0, 0, Double.parseDouble(cell.replace(',', '.')), ""));
        }
        return Optional.empty();
    }

    private static Optional<DateShape> named(String cell) {
        for (Pattern pattern : new Pattern[] {DAY_MONTH_YEAR, MONTH_DAY_YEAR, YEAR_MONTH_DAY}) {
            Matcher date = pattern.matcher(cell);
            if (date.matches()) {
                Integer month = month(date.group("m"));
                if (month != null) {
                    int digits = date.group("y").length();
                    return Optional.of(shape(Kind.NAMED, number(date, "d"), month, number(date, "y"), digits, date));
                }
            }
        }
        return Optional.empty();
    }

    /** The one month that a word begins; null where there is none or more than one. */
    private static @Nullable Integer month(String word) {
        String beginning = " " + word.toLowerCase(Locale.ROOT);
        Integer found = null;
        for (int i = 0; i < MONTHS.size(); i++) {
            if ((" " + MONTHS.get(i)).contains(beginning)) {
                if (found != null) {
                    return null;
                }
                found = i + 1;
            }
        }
        return found;
    }

    private static DateShape shape(Kind kind, int first, int second, int third, int digits, Matcher date) {
        String time = date.group("time");
        return new DateShape(kind, first, second, third, digits, 0, time == null ? "" : time.strip());
    }

    private static int number(Matcher date, String group) {
        return Integer.parseInt(date.group(group));
    }
}
