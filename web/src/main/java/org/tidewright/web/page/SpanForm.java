package org.tidewright.web.page;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * Which days a chart shows, as it was asked for.
 *
 * @param from as the field shows it
 * @param to likewise
 * @param fromFault what is wrong with it; null for nothing
 * @param toFault likewise
 * @param fault what is wrong with the rest of the question; null for nothing
 * @param span what is shown: what was asked for, or the usual where that was refused
 * @param page of the table of readings, from 1
 * @param paged whether a page of the table was asked for
 */
public record SpanForm(
        String from,
        String to,
        @Nullable String fromFault,
        @Nullable String toFault,
        @Nullable String fault,
        ChartSpan span,
        int page,
        boolean paged) {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH);
    private static final LocalDate OLDEST = LocalDate.of(1970, 1, 1);

    /** A way to other days. */
    public record Way(String words, @Nullable String href, boolean current, String key) {}

    /**
     * Reads it from a query.
     *
     * @param first day of which anything is known
     */
    static SpanForm read(Levers.Query query, LocalDate today, LocalDate first) {
        String from = trimmed(query.get("from"));
        String to = trimmed(query.get("to"));
        String named = trimmed(query.get("span"));
        String fault = null;
        ChartSpan usual = ChartSpan.named(ChartSpan.USUAL, today, first);
        ChartSpan span = usual;
        String fromFault = null;
        String toFault = null;
        if (!from.isEmpty() || !to.isEmpty()) {
            LocalDate last = today.plusDays(ChartSpan.MOST_AHEAD);
            LocalDate start = date(from);
            LocalDate end = date(to);
            fromFault = fault(from, start, last);
            toFault = fault(to, end, last);
            if (start != null && end != null && fromFault == null && toFault == null) {
                if (end.isBefore(start)) {
                    toFault = "found " + DAY.format(end) + "; expected " + DAY.format(start) + " or later";
                } else {
                    span = ChartSpan.own(start, end, today, first);
                }
            }
        } else if (!named.isEmpty()) {
            span = ChartSpan.named(named, today, first);
            if (span == null) {
                fault = "found the span “" + named + "”; expected 30d, 90d, 1y or all. The last 90 days are shown.";
                span = usual;
            }
        }
        String asked = trimmed(query.get("page"));
        int page = asked.matches("[1-9]\\d{0,5}") ? Integer.parseInt(asked) : 1;
        if (!asked.isEmpty() && !asked.matches("[1-9]\\d{0,5}")) {
            fault = "found the page “" + asked + "” of the table; expected a number from 1 on. The first is shown.";
        }
        if (span == null) {
            throw new IllegalStateException("the usual span has no name any more");
        }
        boolean own = !from.isEmpty() || !to.isEmpty();
        return new SpanForm(
                own ? from : span.from().toString(),
                own ? to : span.to().toString(),
                fromFault,
                toFault,
                fault,
                span,
                page,
                !asked.isEmpty());
    }

    private static String trimmed(@Nullable String typed) {
        return typed == null ? "" : typed.trim();
    }

    private static @Nullable LocalDate date(String typed) {
        try {
            return LocalDate.parse(typed);
        } catch (DateTimeParseException none) {
            return null;
        }
    }

    private static @Nullable String fault(String typed, @Nullable LocalDate date, LocalDate last) {
        if (date == null) {
            return (typed.isEmpty() ? "found nothing" : "found “" + typed + "”")
                    + "; expected a day such as 2026-03-07";
        } else if (date.isBefore(OLDEST)) {
            return "found " + DAY.format(date) + "; expected " + DAY.format(OLDEST) + " or later";
        } else if (date.isAfter(last)) {
            return "found " + DAY.format(date) + "; expected " + DAY.format(last)
                    + " or earlier: nothing is told further ahead";
        }
        return null;
    }

    /** Whether something that was asked for cannot be. */
    public boolean refused() {
        return fromFault != null || toFault != null || fault != null;
    }

    /** The days that have a name. */
    List<Way> named(String href) {
        List<Way> ways = new ArrayList<>();
        for (ChartSpan.Named each : ChartSpan.NAMED) {
            ways.add(new Way(
                    each.words(),
                    address(href, "span=" + each.name()),
                    each.name().equals(span.name()),
                    ""));
        }
        ways.add(new Way("All", address(href, "span=all"), "all".equals(span.name()), ""));
        return ways;
    }

    /** Back, forward, closer and wider; without an address where that leads nowhere. */
    List<Way> ways(String href) {
        return List.of(
                way("Earlier", span.earlier(), href, "PageUp"),
                way("Later", span.later(), href, "PageDown"),
                way("Closer", span.closer(), href, "+"),
                way("Wider", span.wider(), href, "-"));
    }

    private static Way way(String words, @Nullable ChartSpan to, String href, String key) {
        return new Way(words, to == null ? null : address(href, to.query()), false, key);
    }

    private static String address(String href, String query) {
        return href + "?" + query + "#readings";
    }

    /** What keeps the span in an address; empty for the usual. */
    String kept() {
        return ChartSpan.USUAL.equals(span.name()) ? "" : "?" + span.query();
    }
}
