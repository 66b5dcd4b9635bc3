package org.tidewright.web.route;

import static org.assertj.core.api.Assertions.assertThat;

import biweekly.Biweekly;
import java.net.http.HttpResponse;
import java.time.OffsetDateTime;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.journal.Draft;
import org.tidewright.husbandry.journal.Event;

/** The page Arrivals over HTTP. It is 20:40 on 7 March 2026 in Berlin, and the log tells of no age of the tank. */
class ArrivalRoutesTest extends Served {
    private static final String PAGE = "/systems/harbour-room/arrivals";
    private static final String FILE = "animal,count,price\nyellow assessor,1,65\nyellow tang,1,90\n";
    private static final Pattern BASED_ON = Pattern.compile("name=\"based_on\" value=\"([^\"]*)\"");

    private HttpResponse<String> send(String path, String... fields) {
        String body = visitor.get(PAGE).body();
        Matcher mark = BASED_ON.matcher(body);
        Map<String, String> form = new HashMap<>(Map.of("token", visitor.token(PAGE)));
        if (mark.find()) {
            form.put("based_on", mark.group(1));
        }
        for (int i = 0; i < fields.length; i += 2) {
            form.put(fields[i], fields[i + 1]);
        }
        return visitor.post(path, form);
    }

    @Test
    void anEmptyListAsksWhomOneWishesFor() {
        assertThat(visitor.get(PAGE).body())
                .contains("Write down whom you wish for", "The wish list")
                .doesNotContain("Keep these dates", "class=\"arrivals\"");
    }

    @Test
    void aListHasItsDaysAndThoseWhoCannotComeTheirReason() {
        desk.keepWishes("harbour-room", "", FILE);
        assertThat(visitor.get(PAGE).body())
                .contains("Buy the yellow assessor first, today, into Quarantine box")
                .contains("goes into Harbour room on Monday 6 April")
                .contains(
                        "<svg class=\"arrivals\"",
                        "One of its kind lives here",
                        "March 2026",
                        "No day here is a promise")
                .contains("yellow assessor 2.3 cm price 65", "href=\"/systems/harbour-room/arrivals.ics\"");
        assertThat(visitor.get(PAGE + "?units=us").body()).contains("yellow assessor 0.9 in price 65", ">oz<");
    }

    @Test
    void aListThatIsSentIsKeptAndPlanned() {
        HttpResponse<String> sent = send(
                PAGE,
                "list",
                "yellow assessor price 65\r\n6 scarlet reef hermit",
                "budget",
                "100",
                "start",
                "2026-04-01");
        assertThat(sent.statusCode()).isEqualTo(303);
        assertThat(sent.headers().firstValue("Location")).hasValue(PAGE + "?kept=list");
        assertThat(desk.wishes("harbour-room"))
                .contains("Assessor flavissimus,1,2.25,65", "Paguristes cadenati,6", "100,2026-04-01")
                .hasLineCount(3);
        assertThat(visitor.get(PAGE + "?kept=list").body()).contains("The list is kept.", "Wed 1 Apr");
    }

    @Test
    void whatCannotBeReadStandsAsTypedWithItsFaultsBesideIt() {
        HttpResponse<String> sent = send(PAGE, "list", "yelow tang <b>", "budget", "much", "start", "2026-02-31");
        assertThat(sent.statusCode()).isEqualTo(422);
        assertThat(sent.body())
                .contains(
                        "yelow tang &lt;b&gt;",
                        "Line 1: found",
                        "expected an amount such as 45",
                        "expected a date such as")
                .doesNotContain("<b>\n");
        assertThat(desk.wishes("harbour-room")).isEmpty();
    }

    @Test
    void keptDaysAreComparedWithWhatTheLogTells() {
        desk.keepWishes("harbour-room", "", FILE);
        assertThat(visitor.get(PAGE).body()).contains("Keep these dates");
        HttpResponse<String> sent = send(PAGE + "/keep");
        assertThat(sent.statusCode()).isEqualTo(303);
        assertThat(desk.wishes("harbour-room")).contains("2026-03-07,2026-03-07,2026-04-06");
        assertThat(visitor.get(PAGE).body()).doesNotContain("Keep these dates</button>");
        OffsetDateTime now = OffsetDateTime.parse("2026-03-07T20:00:00+01:00");
        desk.journal()
                .write(
                        "quarantine-box",
                        new Draft(
                                UUID.randomUUID(),
                                now,
                                new Event.AnimalMoved("yellow assessor", 1, Event.Move.ARRIVED, null),
                                ""));
        assertThat(visitor.get(PAGE).body()).contains("there since Sat 7 Mar", "Buy nothing now");
    }

    @Test
    void aListChangedElsewhereIsNotOverwrittenUnseen() {
        HttpResponse<String> sent = send(PAGE, "based_on", "00000001", "list", "yellow assessor");
        assertThat(sent.statusCode()).isEqualTo(409);
        assertThat(sent.body()).contains("changed elsewhere", "yellow assessor</textarea>");
        assertThat(desk.wishes("harbour-room")).isEmpty();
    }

    @Test
    void anOldTokenKeepsNothing() {
        HttpResponse<String> sent = send(PAGE, "token", "old", "list", "yellow assessor");
        assertThat(sent.statusCode()).isEqualTo(403);
        assertThat(sent.body()).contains("yellow assessor</textarea>");
        assertThat(send(PAGE + "/keep", "token", "old").statusCode()).isEqualTo(403);
        assertThat(desk.wishes("harbour-room")).isEmpty();
    }

    @Test
    void aFileThatCannotBeReadIsToldByItsPlaceAndNotWrittenOver() {
        desk.keepWishes("harbour-room", "", "animal,prise\nyellow tang,3\n");
        String body = visitor.get(PAGE).body();
        assertThat(body)
                .contains(
                        "Mend the file of this wish list first",
                        "harbour-room.wishes.csv:1:2: the header: found “prise”")
                .doesNotContain("id=\"wishes\"");
        Map<String, String> form =
                Map.of("token", visitor.token("/systems/harbour-room/log"), "list", "yellow assessor");
        assertThat(visitor.post(PAGE, form).statusCode()).isEqualTo(409);
    }

    @Test
    void theCalendarIsAFileOfItsDays() {
        desk.keepWishes("harbour-room", "", FILE);
        HttpResponse<String> answer = visitor.get(PAGE + ".ics");
        assertThat(answer.headers().firstValue("Content-Type")).hasValue("text/calendar; charset=utf-8");
        assertThat(Biweekly.parse(answer.body()).first().getEvents())
                .extracting(event -> event.getSummary().getValue())
                .contains("Buy the yellow assessor, into Quarantine box");
    }

    @Test
    void aQuarantineTankSendsOnToTheSystemItServes() {
        assertThat(visitor.get("/systems/quarantine-box/arrivals").body())
                .contains("Plan arrivals on the page of Harbour room");
    }
}
