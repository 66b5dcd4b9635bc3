package org.tidewright.husbandry.calendar;

import biweekly.Biweekly;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import biweekly.property.DateEnd;
import biweekly.property.DateStart;
import biweekly.property.Transparency;
import biweekly.util.DateTimeComponents;
import biweekly.util.ICalDate;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Date;
import java.util.List;

/** Writes entries of whole days. They take no time of a day: nobody is shown as busy. */
public final class CalendarFile {
    private static final String PRODUCT = "-//Tidewright//Tidewright//EN";
    private static final String HOST = "@tidewright.invalid";

    private CalendarFile() {}

    /**
     * The text of a calendar.
     *
     * @param name shown by programs that follow it
     * @param written the moment, from the caller's clock
     */
    public static String text(String name, List<DayEntry> entries, Instant written) {
        ICalendar calendar = new ICalendar();
        calendar.setProductId(PRODUCT);
        calendar.setName(name);
        for (DayEntry entry : entries) {
            VEvent event = new VEvent();
            event.setUid(entry.id() + HOST);
            event.setDateTimeStamp(Date.from(written));
            event.setDateStart(new DateStart(date(entry.from())));
            event.setDateEnd(new DateEnd(date(entry.until())));
            event.setSummary(entry.title());
            if (!entry.words().isEmpty()) {
                event.setDescription(entry.words());
            }
            event.setTransparency(Transparency.transparent());
            calendar.addEvent(event);
        }
        return Biweekly.write(calendar).go();
    }

    /** A day without a time or a zone: the parts are kept as they are. */
    private static ICalDate date(LocalDate day) {
        return new ICalDate(new DateTimeComponents(day.getYear(), day.getMonthValue(), day.getDayOfMonth()), false);
    }
}
