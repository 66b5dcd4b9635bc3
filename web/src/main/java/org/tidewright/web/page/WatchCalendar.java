package org.tidewright.web.page;

import static java.util.stream.Collectors.joining;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.journal.Event.Appetite;
import org.tidewright.husbandry.journal.Sign;
import org.tidewright.husbandry.quarantine.CheckedDay;
import org.tidewright.husbandry.quarantine.Watch;

/** The days of a watch, week by week, with what each showed. */
public record WatchCalendar(List<Week> weeks) {
    private static final DateTimeFormatter MONTH = DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);
    private static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern("EEEE d MMMM", Locale.ENGLISH);
    private static final int MOST_WEEKS = 30;

    /** From Monday to Sunday. */
    public record Week(List<Cell> days) {}

    /**
     * A day.
     *
     * @param number day of the month, with the month where it begins
     * @param symbol of what it showed; null for a day that showed nothing yet
     * @param kind class of its cell
     * @param words what it showed, read aloud and on a long press
     */
    public record Cell(String number, @Nullable String symbol, String kind, String words, String mark) {}

    static WatchCalendar of(Watch watch, LocalDate today) {
        Map<LocalDate, CheckedDay> known = new HashMap<>();
        watch.days().forEach(day -> known.put(day.day(), day));
        LocalDate first = watch.days().get(0).day().with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
        LocalDate end = watch.end().isAfter(today) ? watch.end() : today;
        List<Week> weeks = new ArrayList<>();
        for (LocalDate monday = first;
                !monday.isAfter(end) && weeks.size() < MOST_WEEKS;
                monday = monday.plusWeeks(1)) {
            List<Cell> days = new ArrayList<>();
            for (int i = 0; i < DayOfWeek.values().length; i++) {
                LocalDate day = monday.plusDays(i);
                days.add(cell(day, known.get(day), watch, today, day.equals(first)));
            }
            weeks.add(new Week(days));
        }
        return new WatchCalendar(weeks);
    }

    private static Cell cell(LocalDate day, @Nullable CheckedDay known, Watch watch, LocalDate today, boolean first) {
        String number = first || day.getDayOfMonth() == 1 ? MONTH.format(day) : Integer.toString(day.getDayOfMonth());
        String kind = day.equals(today) ? "is-today" : day.equals(watch.end()) ? "is-end" : "";
        String date = DATE.format(day) + ": ";
        String end = day.equals(watch.end()) ? "go" : "";
        if (known == null) {
            boolean before = day.isBefore(today);
            String words = before ? "before they came" : day.equals(watch.end()) ? "they may go" : "to come";
            return new Cell(number, null, before ? "is-out" : kind.isEmpty() ? "is-ahead" : kind, date + words, end);
        }
        String mark = known.died() > 0 ? "died" : !known.treatments().isEmpty() ? "treated" : end;
        return new Cell(
                number,
                symbol(known, day.equals(today)),
                known.isUrgent() ? kind + " is-bad" : kind,
                date + words(known),
                mark);
    }

    private static @Nullable String symbol(CheckedDay day, boolean today) {
        if (!day.isWell()) {
            return day.isUrgent() || day.died() > 0 ? "fails" : "close";
        }
        return day.checked() ? "holds" : today ? null : "ask";
    }

    static String words(CheckedDay day) {
        List<String> words = new ArrayList<>();
        if (day.died() > 0) {
            words.add(day.died() + " died");
        }
        if (!day.checked()) {
            words.add("nobody looked");
        }
        if (day.appetite() != null) {
            words.add(ate(day.appetite()));
        }
        if (day.breaths() != null) {
            words.add(day.breaths() + " breaths a minute");
        }
        if (!day.signs().isEmpty()) {
            words.add(day.signs().stream().sorted().map(Sign::words).collect(joining(", ")));
        } else if (day.checked()) {
            words.add("no sign");
        }
        day.treatments().forEach(treatment -> words.add("treated with " + treatment));
        return String.join("; ", words);
    }

    private static String ate(Appetite appetite) {
        return switch (appetite) {
            case ALL -> "all eaten";
            case SOME -> "some eaten";
            case NONE -> "nothing eaten";
            case NOT_FED -> "not fed";
        };
    }
}
