package org.tidewright.web.route;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.journal.Draft;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.husbandry.journal.ProbeLog.Probe;
import org.tidewright.husbandry.journal.ProbeLog.Value;
import org.tidewright.plan.method.TestMethods;
import org.tidewright.plan.method.WaterQuantity;

/** The page Water over HTTP. It is 20:40 on 7 March 2026 in Berlin. */
class WaterRoutesTest extends Served {
    private static final String WATER = "/systems/harbour-room/water";
    private static final OffsetDateTime NOW = OffsetDateTime.parse("2026-03-07T20:40:00+01:00");
    private static final int BOUND = 100_000;

    private void read(WaterQuantity quantity, double written, OffsetDateTime at) {
        String method = TestMethods.of(quantity).get(0).key();
        Event event = new Event.Reading(quantity, written, quantity.units().get(0), method);
        UUID id = UUID.nameUUIDFromBytes((quantity + " " + at).getBytes(StandardCharsets.UTF_8));
        desk.journal().write("harbour-room", new Draft(id, at, event, ""));
    }

    /** A little up and down, the same each time. */
    private static double wave(int day) {
        return Math.sin(day * 0.7);
    }

    private void probe(WaterQuantity quantity, int days, double middle, double swing) {
        List<Value> values = new ArrayList<>();
        Instant now = NOW.toInstant();
        for (int hour = 24 * days; hour > 0; hour--) {
            values.add(new Value(now.minusSeconds(3600L * hour), middle + swing * Math.sin(2 * Math.PI * hour / 24)));
        }
        desk.probes().append("harbour-room", new Probe(quantity, "probe", "sump"), values);
    }

    private static int count(String body, String part) {
        return body.split(Pattern.quote(part), -1).length - 1;
    }

    @Test
    void whatToMindStandsWhereADoseIsAdvised() {
        for (int day = 60; day > 0; day -= 4) {
            read(WaterQuantity.ALKALINITY, 6.6, NOW.minusDays(day).withHour(8));
        }
        String today = visitor.get("/systems/harbour-room/today").body();
        assertThat(today).contains("Bring alkalinity back");
        assertThat(today.indexOf("Never move alkalinity by more than")).isBetween(1, today.indexOf("See alkalinity"));
        String water = visitor.get(WATER + "/alkalinity").body();
        assertThat(water.indexOf("Never move alkalinity by more than"))
                .isBetween(1, water.indexOf("class=\"soundings\""));
    }

    @Test
    void fiveYearsOfReadingsMakeAPageOfBoundedSize() {
        WaterQuantity[] quantities = {
            WaterQuantity.ALKALINITY, WaterQuantity.CALCIUM, WaterQuantity.MAGNESIUM, WaterQuantity.NITRATE,
            WaterQuantity.PHOSPHATE, WaterQuantity.SALINITY, WaterQuantity.TEMPERATURE, WaterQuantity.PH
        };
        double[][] levels = {{8, 0.2}, {420, 10}, {1320, 20}, {8, 1}, {0.06, 0.01}, {35, 0.3}, {25.5, 0.3}, {8.1, 0.05}
        };
        for (int day = 0; day < 1826; day++) {
            if (day % 7 == 0 || day % 7 == 2 || day % 7 == 4) {
                for (int i = 0; i < quantities.length; i++) {
                    double level = levels[i][0] + levels[i][1] * wave(day + i);
                    read(quantities[i], level, NOW.minusDays(day).withHour(8));
                }
            }
        }
        probe(WaterQuantity.TEMPERATURE, 1826, 25.5, 0.3);
        for (String span : new String[] {"30d", "90d", "1y", "all"}) {
            String body = visitor.get(WATER + "/temperature?span=" + span).body();
            assertThat(body.getBytes(StandardCharsets.UTF_8)).as(span).hasSizeLessThan(BOUND);
            assertThat(count(body, "class=\"dot")).as(span).isLessThanOrEqualTo(160);
            assertThat(count(body, "<tr>")).as(span).isLessThanOrEqualTo(40 + 36 + 10);
        }
        String all = visitor.get(WATER + "/temperature?span=all&page=2").body();
        assertThat(all).contains("Readings 41 to 80 of 783, the newest first.", "<details open");
        assertThat(all).contains("page=1#readings-table", "page=3#readings-table");
    }

    @Test
    void aSpanInThePastHasNoTodayAndNothingAhead() {
        for (int day = 0; day < 200; day += 4) {
            read(WaterQuantity.ALKALINITY, 8 + 0.1 * wave(day), NOW.minusDays(day));
        }
        String past =
                visitor.get(WATER + "/alkalinity?from=2025-10-01&to=2025-11-30").body();
        assertThat(past)
                .contains("alkalinity from 1 October 2025 to 30 November 2025: 15 readings")
                .doesNotContain(">today<", "class=\"curve ahead\"", "class=\"expected\"");
        assertThat(past)
                .contains("?from=2025-08-01&amp;to=2025-09-30#readings", "?from=2025-12-01&amp;to=2026-01-30#readings");
        String now = visitor.get(WATER + "/alkalinity").body();
        assertThat(now).contains(">today<", "class=\"curve ahead\"", "class=\"expected\"");
    }

    @Test
    void whatSettlesIsShadedWhereItIsOnTheChartAlone() {
        for (int day = 1; day < 100; day += 4) {
            read(WaterQuantity.ALKALINITY, 8, NOW.minusDays(day));
        }
        Event moved = new Event.LeverMoved("bicarbonate dose", "m^3/s", 60e-6 / 86_400, 100e-6 / 86_400);
        desk.journal().write("harbour-room", new Draft(UUID.randomUUID(), NOW.minusHours(30), moved, ""));
        assertThat(visitor.get(WATER + "/alkalinity?span=30d").body()).contains("class=\"settles\"");
        assertThat(visitor.get(WATER + "/alkalinity?from=2026-01-01&to=2026-02-01")
                        .body())
                .doesNotContain("class=\"settles\"");
    }

    @Test
    void aProbeAloneMakesThePage() {
        probe(WaterQuantity.TEMPERATURE, 40, 25.9, 0.4);
        String body = visitor.get(WATER + "/temperature?span=30d").body();
        assertThat(body)
                .contains("steady; read by its probe", "class=\"probe\"", "class=\"probe-mean\"")
                .contains("Show as table: the probe “sump”", "30 days, by the probe")
                .doesNotContain("Show as table: readings");
        // Numbers as text: the extremes of a sine of 0.4 about 25.9 °C.
        Matcher line = Pattern.compile("the probe “sump” said from 25\\.[0-9] to 26\\.3 °C".replace(' ', ' '))
                .matcher(body.replace('\u00a0', ' ').replace("&nbsp;", " "));
        assertThat(line.find()).isTrue();
    }

    @Test
    void daysThatCannotBeMeantAreRefusedWithTheFormAsTyped() {
        read(WaterQuantity.ALKALINITY, 8, NOW.minusDays(1));
        HttpResponse<String> answer = visitor.get(WATER + "/alkalinity?from=2026-02-30&to=2026-03-01");
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body())
                .contains("found “2026-02-30”; expected a day such as 2026-03-07", "value=\"2026-02-30\"");
        assertThat(visitor.get(WATER + "/alkalinity?span=never").statusCode()).isEqualTo(422);
    }

    @Test
    void theSpanIsKeptOnTheWayToAnotherQuantity() {
        read(WaterQuantity.ALKALINITY, 8, NOW.minusDays(1));
        read(WaterQuantity.CALCIUM, 420, NOW.minusDays(1));
        assertThat(visitor.get(WATER + "/alkalinity?span=1y").body()).contains("/water/calcium?span=1y\"");
        assertThat(visitor.get(WATER + "/alkalinity").body()).contains("/water/calcium\"");
    }
}
