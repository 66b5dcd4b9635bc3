package org.tidewright.web.page;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * The days a chart shows, and the ways from them to others.
 *
 * @param name of one that ends today, as it stands in addresses; null for days of the keeper's own
 * @param from first day
 * @param to last day
 * @param ahead further days, of which it is told what is to be expected
 * @param today the day it is
 * @param first day of which anything is known
 */
record ChartSpan(@Nullable String name, LocalDate from, LocalDate to, int ahead, LocalDate today, LocalDate first) {
    /** As far ahead as a course looks. */
    static final int MOST_AHEAD = 14;

    /** What lies ahead takes no more than a sixth beside what was. */
    private static final int PAST_TO_AHEAD = 6;

    private static final String ALL = "all";

    /** Days that are not looked at more closely. */
    private static final long FEWEST = 4;

    /** The days that may be asked for by name, and how they are called; everything there is, besides. */
    record Named(String name, String words, int days) {}

    static final List<Named> NAMED =
            List.of(new Named("30d", "30 days", 30), new Named("90d", "90 days", 90), new Named("1y", "A year", 365));

    /** Where nothing is asked for. */
    static final String USUAL = "90d";

    /** One with a name; null where none is called so. */
    static @Nullable ChartSpan named(String name, LocalDate today, LocalDate first) {
        if (name.equals(ALL)) {
            return until(ALL, first.isAfter(today) ? today : first, today, first);
        }
        return NAMED.stream()
                .filter(each -> each.name().equals(name))
                .findFirst()
                .map(each -> until(each.name(), today.minusDays(each.days() - 1L), today, first))
                .orElse(null);
    }

    private static ChartSpan until(String name, LocalDate from, LocalDate today, LocalDate first) {
        long days = ChronoUnit.DAYS.between(from, today) + 1;
        int ahead = (int) Math.max(1, Math.min(MOST_AHEAD, days / PAST_TO_AHEAD));
        return new ChartSpan(name, from, today, ahead, today, first);
    }

    /** Days of the keeper's own. */
    static ChartSpan own(LocalDate from, LocalDate to, LocalDate today, LocalDate first) {
        return new ChartSpan(null, from, to, 0, today, first);
    }

    long days() {
        return ChronoUnit.DAYS.between(from, to) + 1;
    }

    /** When its first day begins on the keeper's clock. */
    Instant start(ZoneId zone) {
        return from.atStartOfDay(zone).toInstant();
    }

    /** When its last day ends, what lies ahead included. */
    Instant end(ZoneId zone) {
        return to.plusDays(1L + ahead).atStartOfDay(zone).toInstant();
    }

    /** The same number of days before; null where nothing is known of them. */
    @Nullable
    ChartSpan earlier() {
        return from.isAfter(first) ? own(from.minusDays(days()), from.minusDays(1), today, first) : null;
    }

    /** The same number of days after; null where it reaches today. */
    @Nullable
    ChartSpan later() {
        if (!to.isBefore(today)) {
            return null;
        }
        LocalDate end = to.plusDays(days());
        return end.isBefore(today) ? own(to.plusDays(1), end, today, first) : back(days());
    }

    /** The next fewer days that have a name, or half as many; null where there are too few. */
    @Nullable
    ChartSpan closer() {
        if (days() < FEWEST) {
            return null;
        }
        long half = (days() + 1) / 2;
        if (!to.isBefore(today)) {
            return back(NAMED.stream()
                    .mapToLong(Named::days)
                    .filter(each -> name != null && each < days())
                    .max()
                    .orElse(half));
        }
        LocalDate start = from.plusDays(days() / 4);
        return own(start, start.plusDays(half - 1), today, first);
    }

    /** The next more days that have a name, or twice as many; null where everything is shown. */
    @Nullable
    ChartSpan wider() {
        if (!from.isAfter(first) && !to.isBefore(today)) {
            return null;
        }
        LocalDate end = to.plusDays(days() / 2);
        if (!end.isBefore(today)) {
            return back(NAMED.stream()
                    .mapToLong(Named::days)
                    .filter(each -> name != null && each > days())
                    .min()
                    .orElse(name == null ? 2 * days() : Long.MAX_VALUE));
        }
        return own(from.minusDays((days() + 1) / 2), end, today, first);
    }

    /** So many days that end today, by their name if they have one. */
    private ChartSpan back(long days) {
        if (days > ChronoUnit.DAYS.between(first, today)) {
            return Objects.requireNonNull(named(ALL, today, first));
        }
        return NAMED.stream()
                .filter(each -> each.days() == days)
                .findFirst()
                .map(each -> Objects.requireNonNull(named(each.name(), today, first)))
                .orElseGet(() -> own(today.minusDays(days - 1), today, today, first));
    }

    /** As it stands in an address. */
    String query() {
        return name == null ? "from=" + from + "&to=" + to : "span=" + name;
    }
}
