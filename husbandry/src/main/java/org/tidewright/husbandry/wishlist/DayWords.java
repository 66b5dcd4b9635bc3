package org.tidewright.husbandry.wishlist;

import java.time.LocalDate;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Days and months in words. */
final class DayWords {
    private static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern("EEEE d MMMM", Locale.ENGLISH);
    private static final DateTimeFormatter OF_YEAR = DateTimeFormatter.ofPattern("EEEE d MMMM yyyy", Locale.ENGLISH);
    private static final DateTimeFormatter MONTH = DateTimeFormatter.ofPattern("MMMM", Locale.ENGLISH);
    private static final DateTimeFormatter MONTH_OF_YEAR = DateTimeFormatter.ofPattern("MMMM yyyy", Locale.ENGLISH);

    private DayWords() {}

    /** A date, with its year where that is not this one. */
    static String of(LocalDate date, LocalDate today) {
        return (date.getYear() == today.getYear() ? DATE : OF_YEAR).format(date);
    }

    static String of(YearMonth month, LocalDate today) {
        return (month.getYear() == today.getYear() ? MONTH : MONTH_OF_YEAR).format(month);
    }
}
