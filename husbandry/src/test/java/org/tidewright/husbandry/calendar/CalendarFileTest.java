package org.tidewright.husbandry.calendar;

import static org.assertj.core.api.Assertions.assertThat;

import biweekly.Biweekly;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import biweekly.util.DateTimeComponents;
import biweekly.util.ICalDate;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Date;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Calendars written and read back by the library, as another program would. */
class CalendarFileTest {
    private static final Instant WRITTEN = Instant.parse("2026-03-07T10:00:00Z");
    private static final LocalDate DAY = LocalDate.parse("2026-03-29");

    private static List<VEvent> read(List<DayEntry> entries) {
        String text = CalendarFile.text("Arrivals, Harbour room", entries, WRITTEN);
        ICalendar calendar = Biweekly.parse(text).first();
        assertThat(calendar.validate(biweekly.ICalVersion.V2_0).isEmpty()).isTrue();
        return calendar.getEvents();
    }

    /** The 29th is the night of summer time in Berlin. */
    @Test
    void anEntryOfADayBeginsOnItAndEndsBeforeTheNext() {
        VEvent event = read(List.of(DayEntry.on("harbour-room-x-comes", DAY, "Buy the x, and y", "Why; and when")))
                .get(0);
        assertThat(event.getUid().getValue()).isEqualTo("harbour-room-x-comes@tidewright.invalid");
        assertThat(event.getDateStart().getValue().hasTime()).isFalse();
        assertThat(day(event.getDateStart().getValue())).isEqualTo(DAY);
        assertThat(day(event.getDateEnd().getValue())).isEqualTo(DAY.plusDays(1));
        assertThat(event.getSummary().getValue()).isEqualTo("Buy the x, and y");
        assertThat(event.getDescription().getValue()).isEqualTo("Why; and when");
        assertThat(event.getDateTimeStamp().getValue()).isEqualTo(Date.from(WRITTEN));
    }

    @Test
    void theTextIsTheSameInEveryZone() {
        List<DayEntry> entries = List.of(new DayEntry("a", DAY, DAY.plusDays(3), "dry", ""));
        assertThat(CalendarFile.text("x", entries, WRITTEN))
                .contains("DTSTART;VALUE=DATE:20260329", "DTEND;VALUE=DATE:20260401");
    }

    private static LocalDate day(ICalDate date) {
        DateTimeComponents parts = date.getRawComponents();
        return LocalDate.of(parts.getYear(), parts.getMonth(), parts.getDate());
    }
}
