package org.tidewright.husbandry.quarantine;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.Measure;

/** Days in words and as figures. */
final class Days {
    private static final double DAY = 86_400;
    private static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern("EEEE d MMMM", Locale.ENGLISH);
    private static final DateTimeFormatter OF_YEAR = DateTimeFormatter.ofPattern("EEEE d MMMM yyyy", Locale.ENGLISH);

    private Days() {}

    /** A date, with its year where that is not this one. */
    static String date(LocalDate date, LocalDate today) {
        return (date.getYear() == today.getYear() ? DATE : OF_YEAR).format(date);
    }

    static String count(int days) {
        return days + (days == 1 ? " day" : " days");
    }

    static Figure span(double days) {
        return Figure.exact(Measure.DURATION, days * DAY);
    }

    static Figure span(double days, double low, double high) {
        return Figure.between(Measure.DURATION, days * DAY, low * DAY, high * DAY);
    }
}
