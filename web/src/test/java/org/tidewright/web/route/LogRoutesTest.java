package org.tidewright.web.route;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.time.Instant;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.husbandry.journal.Kind;
import org.tidewright.husbandry.journal.Line;
import org.tidewright.husbandry.journal.Span;

/** Lines written, corrected and taken back over HTTP. It is 20:40 on 7 March 2026 in Berlin. */
class LogRoutesTest extends Served {
    private static final String LOG = "/systems/harbour-room/log";

    private HttpResponse<String> write(String text, String at, UUID id) {
        Map<String, String> form = new HashMap<>();
        form.put("token", visitor.token(LOG));
        form.put("id", id.toString());
        form.put("text", text);
        form.put("at", at);
        form.put("remark", "");
        return visitor.post(LOG, form);
    }

    private List<Line> lines() {
        return desk.journal().lines("harbour-room", Span.EVER, EnumSet.allOf(Kind.class));
    }

    @Test
    void aReadingIsKeptAndItsErrorIsToldAtOnce() {
        HttpResponse<String> answer = write("alkalinity 8.1 dKH by photometer", "", UUID.randomUUID());
        assertThat(answer.statusCode()).isEqualTo(303);
        assertThat(lines()).singleElement().satisfies(line -> {
            assertThat(line.at().toInstant()).isEqualTo(Instant.parse("2026-03-07T19:40:00Z"));
            assertThat(line.event()).isInstanceOf(Event.Reading.class);
        });
        String location = answer.headers().firstValue("Location").orElseThrow();
        // A pocket photometer at 8.1 dKH: sqrt(0.15² + (0.03 · 8.1)² + 0.06²/12 + 0.25²) = 0.4 dKH.
        assertThat(visitor.get(location).body()).contains("In the log: alkalinity 8.1 dKH by photometer (±\u00a00.4)");
    }

    @Test
    void aFormSentTwiceIsOneLine() {
        UUID id = UUID.randomUUID();
        write("changed 40 L", "", id);
        write("changed 40 L", "", id);
        assertThat(lines()).hasSize(1);
    }

    @Test
    void aDoseThatIsMovedAgainTooSoonIsAskedAboutOnceAndKeptIfTheKeeperInsists() {
        for (int day = 1; day <= 28; day += 3) {
            write("alkalinity 8.1 dKH by photometer", "2026-02-%02dT08:00".formatted(day), UUID.randomUUID());
        }
        write("set bicarbonate dose 90 mL/d", "2026-03-06T08:00", UUID.randomUUID());
        int before = lines().size();

        UUID id = UUID.randomUUID();
        HttpResponse<String> asked = write("set bicarbonate dose 110 mL/d", "", id);
        assertThat(asked.statusCode()).isEqualTo(409);
        assertThat(asked.body())
                .contains(
                        "Leave the bicarbonate dose alone until",
                        "it was moved on Friday 6 March",
                        "value=\"set bicarbonate dose 110 mL/d\"",
                        "Put it in all the same");
        assertThat(lines()).hasSize(before);

        Map<String, String> insisted = new HashMap<>(Map.of(
                "token",
                visitor.token(LOG),
                "id",
                id.toString(),
                "text",
                "set bicarbonate dose 110 mL/d",
                "all_the_same",
                "yes"));
        assertThat(visitor.post(LOG, insisted).statusCode()).isEqualTo(303);
        insisted.remove("all_the_same");
        assertThat(visitor.post(LOG, insisted).statusCode()).as("sent twice").isEqualTo(303);
        assertThat(lines()).hasSize(before + 1);
    }

    @Test
    void aLineThatCannotBeReadIsRefusedAndNothingTypedIsLost() {
        HttpResponse<String> answer = write("alkalinity 8.1", "2026-03-06T08:00", UUID.randomUUID());
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body())
                .contains("a number without a unit", "value=\"alkalinity 8.1\"", "value=\"2026-03-06T08:00\"");
        assertThat(lines()).isEmpty();
    }

    @Test
    void aTimeThatTheClockSkippedIsRefused() {
        // In 2025 the clocks of Berlin went from 02:00 to 03:00 on 30 March.
        assertThat(write("changed 40 L", "2025-03-30T02:30", UUID.randomUUID()).body())
                .contains("The clock was put forward over 02:30");
        assertThat(lines()).isEmpty();
    }

    @Test
    void aTimeYetToComeIsRefused() {
        assertThat(write("changed 40 L", "2026-03-08T08:00", UUID.randomUUID()).statusCode())
                .isEqualTo(422);
    }

    @Test
    void aLineIsCorrectedAndTakenBackAndItsHistoryStays() {
        UUID id = UUID.randomUUID();
        write("changed 40 L", "2026-03-06T08:00", id);
        String line = LOG + "/" + id;
        Map<String, String> form = new HashMap<>();
        form.put("token", visitor.token(line));
        form.put("based_on", "1");
        form.put("text", "changed 45 L");
        form.put("at", "2026-03-06T08:00");
        form.put("remark", "measured in the drum");
        assertThat(visitor.post(line, form).statusCode()).isEqualTo(303);
        assertThat(visitor.get(line).body()).contains("changed 40 L", "changed 45 L", "measured in the drum");

        assertThat(visitor.post(line, form).statusCode())
                .as("based on a revision that is gone")
                .isEqualTo(409);

        Map<String, String> strike = Map.of("token", visitor.token(line), "based_on", "2");
        assertThat(visitor.post(line + "/strike", strike).statusCode()).isEqualTo(303);
        assertThat(lines()).isEmpty();
        assertThat(visitor.get(line).body()).contains("taken back", "changed 40 L");
    }

    @Test
    void aFormWithoutItsTokenWritesNothing() {
        HttpResponse<String> answer =
                visitor.post(LOG, Map.of("id", UUID.randomUUID().toString(), "text", "changed 40 L"));
        assertThat(answer.statusCode()).isEqualTo(403);
        assertThat(answer.body()).contains("value=\"changed 40 L\"");
        assertThat(lines()).isEmpty();
    }

    @Test
    void aReadingFromTheQuickEntryIsKeptAndToldAsASurpriseOrNone() {
        String today = "/systems/fifty-five-gallon/today";
        Map<String, String> form = new HashMap<>();
        form.put("token", visitor.token(today));
        form.put("id", UUID.randomUUID().toString());
        form.put("quantity", "alkalinity");
        form.put("value", "8,2");
        form.put("unit", "dKH");
        form.put("method", "photometer");
        HttpResponse<String> answer = visitor.post(today, form);
        assertThat(answer.statusCode()).isEqualTo(303);
        String location = answer.headers().firstValue("Location").orElseThrow();
        assertThat(visitor.get(location).body())
                .contains("In the log. Saturday 7 March 2026: read 8.2", "No surprise.");

        form.put("id", UUID.randomUUID().toString());
        form.put("value", "eight");
        HttpResponse<String> refused = visitor.post(today, form);
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.body()).contains("a number with its unit");
    }

    @Test
    void theWaterPageTellsLevelRangeAndEveryReading() {
        String page = visitor.get("/systems/fifty-five-gallon/water/alkalinity").body();
        assertThat(page).contains("Now, estimated", "class=\"readings-chart\"", "Show as table: readings");
        assertThat(page.split("class=\"dot\"", -1)).hasSize(12 + 1);
        assertThat(visitor.get("/systems/harbour-room/water").body()).contains("Write a first reading");
    }

    @Test
    void linesAreShownByMonthAndKind() {
        write("changed 40 L", "2026-02-20T08:00", UUID.randomUUID());
        write("saw a snail spawn", "2026-03-06T08:00", UUID.randomUUID());
        assertThat(visitor.get(LOG).body())
                .contains("saw a snail spawn", "month=2026-02")
                .doesNotContain("changed 40 L");
        assertThat(visitor.get(LOG + "?month=2026-02").body()).contains("Friday 20 February 2026", "changed 40 L");
        assertThat(visitor.get(LOG + "?month=2026-02&kind=feeding").body()).contains("Nothing was written");
        assertThat(visitor.get(LOG + "?month=2026-13").statusCode()).isEqualTo(404);
        assertThat(visitor.get(LOG + "/" + UUID.randomUUID()).statusCode()).isEqualTo(404);
    }

    @Test
    void whatIsWrittenIsShownAsTextAndNeverAsMarkup() {
        write("saw <script>alert(1)</script>", "", UUID.randomUUID());
        assertThat(visitor.get(LOG).body()).doesNotContain("<script>alert").contains("&lt;script&gt;");
    }
}
