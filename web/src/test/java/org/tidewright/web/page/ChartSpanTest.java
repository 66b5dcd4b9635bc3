package org.tidewright.web.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class ChartSpanTest {
    private static final LocalDate TODAY = LocalDate.parse("2026-04-05");
    private static final LocalDate FIRST = LocalDate.parse("2021-03-01");
    private static final ZoneId BERLIN = ZoneId.of("Europe/Berlin");

    private static ChartSpan named(String name) {
        return Objects.requireNonNull(ChartSpan.named(name, TODAY, FIRST));
    }

    private static String query(@Nullable ChartSpan span) {
        return span == null ? "none" : span.query();
    }

    private static SpanForm form(Map<String, String> query) {
        return SpanForm.read(query::get, TODAY, FIRST);
    }

    @Test
    void aNamedSpanEndsTodayAndLooksAheadASixth() {
        ChartSpan month = named("30d");
        assertThat(month.from()).isEqualTo(LocalDate.parse("2026-03-07"));
        assertThat(month.to()).isEqualTo(TODAY);
        assertThat(month.days()).isEqualTo(30);
        assertThat(month.ahead()).isEqualTo(5);
        assertThat(named("1y").ahead()).isEqualTo(14);
        assertThat(named("all").from()).isEqualTo(FIRST);
    }

    @Test
    void aSpanBeginsAndEndsAtTheKeepersMidnightWhenTheClockIsPutForward() {
        // The clock goes forward on 29 March 2026: that day has 23 hours.
        ChartSpan day = ChartSpan.own(LocalDate.parse("2026-03-29"), LocalDate.parse("2026-03-29"), TODAY, FIRST);
        assertThat(day.start(BERLIN)).isEqualTo(Instant.parse("2026-03-28T23:00:00Z"));
        assertThat(day.end(BERLIN)).isEqualTo(Instant.parse("2026-03-29T22:00:00Z"));
        // And back on 25 October 2026: 25 hours.
        ChartSpan autumn = ChartSpan.own(LocalDate.parse("2026-10-25"), LocalDate.parse("2026-10-25"), TODAY, FIRST);
        assertThat(Duration.between(autumn.start(BERLIN), autumn.end(BERLIN))).isEqualTo(Duration.ofHours(25));
        // Neighbours share their edge, so that no hour falls between them.
        assertThat(Objects.requireNonNull(day.earlier()).end(BERLIN)).isEqualTo(day.start(BERLIN));
        assertThat(Objects.requireNonNull(day.later()).start(BERLIN)).isEqualTo(day.end(BERLIN));
    }

    @Test
    void aDayThatBeginsLaterThanMidnightBeginsWhenItBegins() {
        // In Beirut the clock goes forward at midnight on 29 March 2026.
        ChartSpan day = ChartSpan.own(LocalDate.parse("2026-03-29"), LocalDate.parse("2026-03-29"), TODAY, FIRST);
        assertThat(day.start(ZoneId.of("Asia/Beirut"))).isEqualTo(Instant.parse("2026-03-28T22:00:00Z"));
    }

    @Test
    void backAndForwardByOneSpanLeadToTheSameDays() {
        ChartSpan earlier = Objects.requireNonNull(named("30d").earlier());
        assertThat(earlier.query()).isEqualTo("from=2026-02-05&to=2026-03-06");
        assertThat(query(earlier.later())).isEqualTo("span=30d");
        assertThat(query(named("30d").later())).isEqualTo("none");
        assertThat(query(named("all").earlier())).isEqualTo("none");
        ChartSpan old = ChartSpan.own(FIRST, FIRST.plusDays(9), TODAY, FIRST);
        assertThat(query(old.earlier())).isEqualTo("none");
        assertThat(query(old.later())).isEqualTo("from=2021-03-11&to=2021-03-20");
    }

    @Test
    void closerAndWiderGoThroughTheNamedSpans() {
        assertThat(query(named("all").closer())).isEqualTo("span=1y");
        assertThat(query(named("1y").closer())).isEqualTo("span=90d");
        assertThat(query(named("90d").closer())).isEqualTo("span=30d");
        assertThat(query(named("30d").closer())).isEqualTo("from=2026-03-22&to=2026-04-05");
        assertThat(query(named("30d").wider())).isEqualTo("span=90d");
        assertThat(query(named("1y").wider())).isEqualTo("span=all");
        assertThat(query(named("all").wider())).isEqualTo("none");
    }

    @Test
    void closerAndWiderKeepTheMiddleOfDaysInThePast() {
        ChartSpan old = ChartSpan.own(LocalDate.parse("2023-01-01"), LocalDate.parse("2023-01-20"), TODAY, FIRST);
        assertThat(query(old.closer())).isEqualTo("from=2023-01-06&to=2023-01-15");
        assertThat(query(old.wider())).isEqualTo("from=2022-12-22&to=2023-01-30");
        ChartSpan short3 = ChartSpan.own(LocalDate.parse("2023-01-01"), LocalDate.parse("2023-01-03"), TODAY, FIRST);
        assertThat(query(short3.closer())).isEqualTo("none");
    }

    @Test
    void theUsualSpanIsShownWhereNothingIsAsked() {
        assertThat(form(Map.of()).span().name()).isEqualTo("90d");
        assertThat(form(Map.of()).refused()).isFalse();
        assertThat(form(Map.of()).kept()).isEmpty();
    }

    @Test
    void daysThatCannotBeShownAreRefusedBesideTheirField() {
        SpanForm wrong = form(Map.of("from", "1.2.2025", "to", "2025-03-01"));
        assertThat(wrong.fromFault()).isEqualTo("found “1.2.2025”; expected a day such as 2026-03-07");
        assertThat(wrong.from()).isEqualTo("1.2.2025");
        assertThat(wrong.refused()).isTrue();
        assertThat(form(Map.of("from", "2025-03-02", "to", "2025-03-01")).toFault())
                .isEqualTo("found 1 March 2025; expected 2 March 2025 or later");
        assertThat(form(Map.of("from", "2026-03-02", "to", "2026-05-01")).toFault())
                .isEqualTo("found 1 May 2026; expected 19 April 2026 or earlier: nothing is told further ahead");
        assertThat(form(Map.of("from", "2026-03-02")).toFault())
                .isEqualTo("found nothing; expected a day such as 2026-03-07");
        assertThat(form(Map.of("span", "2y")).fault()).startsWith("found the span “2y”; expected 30d, 90d, 1y or all.");
        assertThat(form(Map.of("page", "-1")).fault()).startsWith("found the page “-1”");
    }
}
