package org.tidewright.husbandry.spreadsheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What stands in the cells of one column, from all rows, in little memory. */
final class ColumnStats {
    private static final int SAMPLE = 2000;
    private static final int TEXTS = 80;
    private static final int LONGEST = 60;

    private final DateEvidence dates = new DateEvidence();
    private final Map<String, Integer> texts = new LinkedHashMap<>();
    private final List<String> numbers = new ArrayList<>();
    private int filled;
    private int numbersSeen;
    private int step = 1;
    private int times;
    private int datesWithTime;
    private boolean manyTexts;

    void add(String cell) {
        filled++;
        DateShape date = DateShape.of(cell).orElse(null);
        if (date != null) {
            dates.add(date);
            datesWithTime += date.time().isEmpty() ? 0 : 1;
        }
        if (TimeShape.looksLikeOne(cell)) {
            times++;
        }
        if (CellNumber.looksLikeOne(cell) && !isDate(date)) {
            number(cell);
        }
        if (!manyTexts) {
            texts.merge(cell.length() > LONGEST ? cell.substring(0, LONGEST) : cell, 1, Integer::sum);
            manyTexts = texts.size() > TEXTS;
        }
    }

    private static boolean isDate(@Nullable DateShape date) {
        return date != null && date.kind() != DateShape.Kind.COUNTED;
    }

    /** Every one while they are few, then every second, every fourth… */
    private void number(String cell) {
        if (numbersSeen++ % step == 0) {
            numbers.add(cell);
            if (numbers.size() == 2 * SAMPLE) {
                for (int i = numbers.size() - 1; i > 0; i -= 2) {
                    numbers.remove(i);
                }
                step *= 2;
            }
        }
    }

    /** Cells with anything in them. */
    int filled() {
        return filled;
    }

    DateEvidence dates() {
        return dates;
    }

    int datesWithTime() {
        return datesWithTime;
    }

    boolean areMostlyDates() {
        return filled > 0 && 2 * (dates.dates() - dates.counted()) > filled;
    }

    boolean areMostlyCountedDays() {
        return filled > 0 && 10 * dates.counted() > 9 * filled;
    }

    boolean areMostlyTimes() {
        return filled > 0 && 10 * times > 8 * filled;
    }

    boolean areMostlyNumbers() {
        return filled > 0 && 2 * numbersSeen > filled;
    }

    /** The different texts and how often each stands, in the order of the sheet; null where there are too many. */
    @Nullable
    Map<String, Integer> texts() {
        return manyTexts ? null : texts;
    }

    /** Some of the numbers, from all over the column; without those that cannot be read so. */
    List<CellNumber> numbers(DecimalSign decimal) {
        return numbers.stream()
                .flatMap(cell -> CellNumber.ifReadable(cell, decimal).stream())
                .toList();
    }
}
