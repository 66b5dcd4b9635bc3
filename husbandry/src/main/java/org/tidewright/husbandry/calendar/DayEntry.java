package org.tidewright.husbandry.calendar;

import java.time.LocalDate;

/**
 * Something on a day, or from a day up to another.
 *
 * @param id stays the same when the day moves, so that a calendar moves it too
 * @param until the first day that is no longer of it
 */
public record DayEntry(String id, LocalDate from, LocalDate until, String title, String words) {
    /** On one day. */
    public static DayEntry on(String id, LocalDate day, String title, String words) {
        return new DayEntry(id, day, day.plusDays(1), title, words);
    }
}
