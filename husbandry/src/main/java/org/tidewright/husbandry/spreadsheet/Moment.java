package org.tidewright.husbandry.spreadsheet;

import static org.tidewright.husbandry.spreadsheet.BadCell.quoted;

import java.time.DateTimeException;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.Year;
import java.time.ZoneOffset;
import java.time.zone.ZoneOffsetTransition;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * When something was measured.
 *
 * @param comesTwice whether the clock showed this time twice that day; the first is taken
 */
record Moment(OffsetDateTime at, boolean comesTwice) {
    /** Day 1 of a spreadsheet is 1 January 1900, and it counts a 29 February of that year: ECMA-376 part 1, 18.17.4.1. */
    private static final LocalDate DAY_ZERO = LocalDate.of(1899, 12, 30);

    /** Nobody kept a reef before, and a typed year such as 3023 is a slip. */
    private static final int FIRST_YEAR = 1950;

    private static final int LAST_YEAR = 2099;
    private static final long SECONDS_PER_DAY = 86_400;

    /**
     * Puts date and time of a row together.
     *
     * @param own time of day in a column of its own; null where the row has none
     */
    static Moment of(String dateCell, @Nullable TimeShape own, Times times) throws BadCell {
        DateShape shape = DateShape.of(dateCell)
                .orElseThrow(() -> new BadCell(quoted(dateCell), "a date such as 2023-06-05", ""));
        LocalDate date = date(shape, dateCell, times);
        TimeShape time = time(shape, own, times.timeOfDay());
        LocalDateTime local = date.atStartOfDay().plus(time.sinceMidnight());
        ZoneOffset offset = time.offset();
        return offset == null ? onTheClock(local, dateCell, times) : new Moment(local.atOffset(offset), false);
    }

    private static TimeShape time(DateShape date, @Nullable TimeShape own, LocalTime otherwise) throws BadCell {
        boolean withDate = !date.time().isEmpty();
        TimeShape beside = withDate ? TimeShape.read(date.time()) : ofDays(date);
        if (own == null) {
            boolean counted = date.kind() == DateShape.Kind.COUNTED
                    && !beside.sinceMidnight().isZero();
            return withDate || counted ? beside : new TimeShape(Duration.ofNanos(otherwise.toNanoOfDay()), null);
        } else if (!beside.sinceMidnight().isZero()) {
            throw new BadCell("a time of day beside a date that has one of its own", "one time for a row", "");
        }
        return own.offset() == null ? new TimeShape(own.sinceMidnight(), beside.offset()) : own;
    }

    /** The time of day of a cell; some spreadsheets write a day before it. */
    static TimeShape timeOfDay(String cell) throws BadCell {
        String time = DateShape.of(cell).map(DateShape::time).orElse("");
        return TimeShape.read(time.isEmpty() ? cell : time);
    }

    private static TimeShape ofDays(DateShape date) {
        double share = date.days() - Math.floor(date.days());
        return new TimeShape(Duration.ofSeconds(Math.round(share * SECONDS_PER_DAY)), null);
    }

    private static LocalDate date(DateShape shape, String cell, Times times) throws BadCell {
        DateOrder order = times.order();
        return switch (shape.kind()) {
            case COUNTED -> DAY_ZERO.plusDays((long) Math.floor(shape.days()));
            case YEAR_FIRST -> date(cell, shape.first(), shape.second(), shape.third());
            case NAMED -> date(cell, year(shape.third(), shape.yearDigits()), shape.second(), shape.first());
            case NUMBERS -> {
                if (order == null) {
                    throw new BadCell(quoted(cell), "a date whose order of day and month is known", "");
                }
                yield inOrder(shape, order, cell);
            }
        };
    }

    private static LocalDate inOrder(DateShape shape, DateOrder order, String cell) throws BadCell {
        int first = shape.first();
        int second = shape.second();
        int third = shape.third();
        int digits = shape.yearDigits();
        return switch (order) {
            case DMY -> date(cell, year(third, digits), second, first);
            case MDY -> date(cell, year(third, digits), first, second);
            case YMD -> {
                if (digits != 2) {
                    throw new BadCell(quoted(cell), "the year first, as in the rest of the sheet", "");
                }
                yield date(cell, year(first, digits), second, third);
            }
        };
    }

    /** Of two digits: 69 to 99 of the last century, 00 to 68 of this one, as POSIX has it for strptime. */
    private static int year(int written, int digits) {
        return digits == 4 ? written : written + (written >= 69 ? 1900 : 2000);
    }

    private static LocalDate date(String cell, int year, int month, int day) throws BadCell {
        if (year < FIRST_YEAR || year > LAST_YEAR) {
            throw new BadCell(quoted(cell), "a year from " + FIRST_YEAR + " to " + LAST_YEAR, "");
        }
        if (month == 2 && day == 29 && !Year.isLeap(year)) {
            throw new BadCell(quoted(cell), "a day that exists: " + year + " has no 29 February", "");
        }
        try {
            return LocalDate.of(year, month, day);
        } catch (DateTimeException none) {
            throw new BadCell(quoted(cell) + " (day " + day + ", month " + month + ")", "a day that exists", "");
        }
    }

    private static Moment onTheClock(LocalDateTime local, String cell, Times times) throws BadCell {
        List<ZoneOffset> offsets = times.zone().getRules().getValidOffsets(local);
        if (offsets.isEmpty()) {
            ZoneOffsetTransition gap = times.zone().getRules().getTransition(local);
            throw new BadCell(
                    local.toLocalTime() + " on " + quoted(cell) + ", which no clock in " + times.zone() + " showed",
                    "a time before " + gap.getDateTimeBefore().toLocalTime() + " or from "
                            + gap.getDateTimeAfter().toLocalTime() + " on, since clocks went forward that night",
                    "Is the zone right?");
        }
        return new Moment(local.atOffset(offsets.get(0)), offsets.size() > 1);
    }
}
