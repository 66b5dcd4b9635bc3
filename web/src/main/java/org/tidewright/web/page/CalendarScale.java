package org.tidewright.web.page;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * How a scale of time is divided: by days, weeks, months, quarters or years, whichever gives bars that can be told apart.
 *
 * @param beginnings days on which a bar begins, within the scale
 * @param names of those days; empty for one that needs none
 */
record CalendarScale(List<LocalDate> beginnings, List<String> names) {
    private static final int MOST_BARS = 16;
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);
    private static final DateTimeFormatter MONTH = DateTimeFormatter.ofPattern("MMM", Locale.ENGLISH);

    /**
     * Of the days from one to another.
     *
     * @param to the last
     */
    static CalendarScale of(LocalDate from, LocalDate to) {
        long days = ChronoUnit.DAYS.between(from, to) + 1;
        if (days <= MOST_BARS) {
            return stepping(from.plusDays(1), to, ChronoUnit.DAYS, 1);
        } else if (days <= 7 * MOST_BARS) {
            return stepping(from.with(TemporalAdjusters.next(DayOfWeek.MONDAY)), to, ChronoUnit.WEEKS, 1);
        } else if (days <= 31 * MOST_BARS) {
            return stepping(from.plusMonths(1).withDayOfMonth(1), to, ChronoUnit.MONTHS, 1);
        } else if (days <= 92 * MOST_BARS) {
            LocalDate quarter =
                    from.plusMonths(3L - (from.getMonthValue() - 1) % 3).withDayOfMonth(1);
            return stepping(quarter, to, ChronoUnit.MONTHS, 3);
        }
        int years = (int) Math.ceil(days / (366.0 * MOST_BARS));
        return stepping(from.plusYears(1).withDayOfYear(1), to, ChronoUnit.YEARS, years);
    }

    private static CalendarScale stepping(LocalDate first, LocalDate to, ChronoUnit unit, int step) {
        List<LocalDate> beginnings = new ArrayList<>();
        List<String> names = new ArrayList<>();
        for (LocalDate day = first; !day.isAfter(to); day = day.plus(step, unit)) {
            beginnings.add(day);
            names.add(name(day, unit));
        }
        return new CalendarScale(beginnings, names);
    }

    private static String name(LocalDate day, ChronoUnit unit) {
        if (unit == ChronoUnit.DAYS || unit == ChronoUnit.WEEKS) {
            return DAY.format(day);
        }
        return day.getDayOfYear() == 1 ? Integer.toString(day.getYear()) : MONTH.format(day);
    }
}
