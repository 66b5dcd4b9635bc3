package org.tidewright.husbandry.spreadsheet;

import java.util.BitSet;
import java.util.Optional;

/** What the cells of one column say about dates, from all of them together. */
final class DateEvidence {
    private static final int MONTHS = 12;
    private static final int DAYS = 31;

    /** Of years of two digits: a log that would tell of more different ones than this is read wrongly. */
    private static final int MOST_YEARS = 12;

    /** A slip of the pen must not decide: one date in so many may contradict the rest. */
    private static final int SLIPS = 50;

    private int dates;
    private int counted;
    private int numbers;
    private int notDayMonth;
    private int notMonthDay;
    private int notYearMonthDay;
    private final BitSet firstNumbers = new BitSet();
    private final BitSet lastNumbers = new BitSet();
    private String example = "";

    void add(DateShape date) {
        dates++;
        if (date.kind() == DateShape.Kind.COUNTED) {
            counted++;
        } else if (date.kind() == DateShape.Kind.NUMBERS) {
            numbers++;
            boolean day = isDay(date.first());
            if (!day || date.second() > MONTHS) {
                notDayMonth++;
            }
            if (date.first() > MONTHS || !isDay(date.second())) {
                notMonthDay++;
            }
            if (date.yearDigits() != 2 || date.second() > MONTHS || !isDay(date.third())) {
                notYearMonthDay++;
            }
            if (date.yearDigits() == 2) {
                firstNumbers.set(date.first());
                lastNumbers.set(date.third());
            }
            if (example.isEmpty()) {
                example = date.first() + "/" + date.second() + "/" + date.third();
            }
        }
    }

    private static boolean isDay(int number) {
        return number >= 1 && number <= DAYS;
    }

    /** Cells that are dates, a spreadsheet's count of days among them. */
    int dates() {
        return dates;
    }

    /** Cells that are plain numbers unless they stand under a date. */
    int counted() {
        return counted;
    }

    /** The order; without value where the dates leave it open. */
    Guess<Optional<DateOrder>> order() {
        if (numbers == 0) {
            return new Guess<>(Optional.of(DateOrder.YMD), "no date leaves its order open", true);
        }
        boolean yearLast = lastNumbers.cardinality() <= MOST_YEARS;
        boolean dayMonth = yearLast && notDayMonth * SLIPS <= numbers;
        boolean monthDay = yearLast && notMonthDay * SLIPS <= numbers;
        boolean yearMonth = firstNumbers.cardinality() <= MOST_YEARS && notYearMonthDay * SLIPS <= numbers;
        int possible = (dayMonth ? 1 : 0) + (monthDay ? 1 : 0) + (yearMonth ? 1 : 0);
        if (possible == 1) {
            DateOrder order = dayMonth ? DateOrder.DMY : monthDay ? DateOrder.MDY : DateOrder.YMD;
            return new Guess<>(Optional.of(order), "any other order makes no days of " + numbers + " dates", true);
        } else if (possible == 0) {
            return new Guess<>(Optional.empty(), "no one order makes days of all of them", false);
        }
        return new Guess<>(
                Optional.empty(),
                "a date such as " + example + " can be read in more than one way, and so can all others",
                false);
    }
}
