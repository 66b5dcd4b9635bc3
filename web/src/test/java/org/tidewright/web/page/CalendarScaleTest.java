package org.tidewright.web.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;

class CalendarScaleTest {
    private static final LocalDate FROM = LocalDate.parse("2023-11-15");

    @Test
    void weeksBeginOnMondays() {
        CalendarScale scale = CalendarScale.of(FROM, FROM.plusDays(90));
        assertThat(scale.beginnings()).allMatch(day -> day.getDayOfWeek() == DayOfWeek.MONDAY);
        assertThat(scale.names()).startsWith("20 Nov");
    }

    @Test
    void monthsAndQuartersNameTheYearInJanuary() {
        assertThat(CalendarScale.of(FROM, FROM.plusDays(365)).names()).startsWith("Dec", "2024", "Feb");
        assertThat(CalendarScale.of(FROM, FROM.plusDays(1000)).names()).startsWith("2024", "Apr", "Jul", "Oct", "2025");
    }

    @Test
    void manyYearsAreNamedByTheYear() {
        assertThat(CalendarScale.of(FROM, FROM.plusYears(6)).names())
                .containsExactly("2024", "2025", "2026", "2027", "2028", "2029");
    }

    @Test
    void thereAreNeverMoreBarsThanCanBeToldApart() {
        for (int days = 0; days < 36_500; days += 1 + days / 50) {
            LocalDate to = FROM.plusDays(days);
            CalendarScale scale = CalendarScale.of(FROM, to);
            assertThat(scale.beginnings())
                    .as("%d days", days)
                    .hasSizeLessThanOrEqualTo(18)
                    .isSorted();
            assertThat(scale.beginnings()).as("%d days", days).allMatch(day -> day.isAfter(FROM) && !day.isAfter(to));
        }
    }
}
