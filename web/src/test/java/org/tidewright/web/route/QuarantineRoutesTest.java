package org.tidewright.web.route;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.time.OffsetDateTime;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tidewright.husbandry.journal.Draft;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.husbandry.journal.Event.AnimalMoved;
import org.tidewright.husbandry.journal.Event.Appetite;
import org.tidewright.husbandry.journal.Event.Move;
import org.tidewright.husbandry.journal.Event.Turn;
import org.tidewright.husbandry.journal.Kind;
import org.tidewright.husbandry.journal.Line;
import org.tidewright.husbandry.journal.Parasite;
import org.tidewright.husbandry.journal.Sign;
import org.tidewright.husbandry.journal.Span;
import org.tidewright.plan.Examples;

/** The page Quarantine over HTTP. It is 20:40 on 7 March 2026 in Berlin. */
class QuarantineRoutesTest extends Served {
    private static final String BOX = "quarantine-box";
    private static final String HARBOUR = "harbour-room";
    private static final String PAGE = "/systems/" + BOX + "/quarantine";
    private static final String DISPLAY = "/systems/" + HARBOUR + "/quarantine";
    private static final OffsetDateTime NOW = OffsetDateTime.parse("2026-03-07T20:40:00+01:00");

    private void write(String system, int daysAgo, Event event) {
        desk.journal().write(system, new Draft(UUID.randomUUID(), NOW.minusDays(daysAgo), event, ""));
    }

    /** Four wrasses came so many days ago and were well on every day since, but today nobody has looked. */
    private void batch(int daysAgo) {
        write(BOX, daysAgo, new AnimalMoved("wrasse", 4, Move.ARRIVED, null));
        for (int day = daysAgo; day > 0; day--) {
            write(BOX, day, new Event.AnimalsChecked(null, Appetite.ALL, 60, Set.of()));
        }
    }

    private HttpResponse<String> send(String page, String what, String... fields) {
        Map<String, String> form = new HashMap<>(
                Map.of("token", visitor.token(page), "id", UUID.randomUUID().toString()));
        for (int i = 0; i < fields.length; i += 2) {
            form.put(fields[i], fields[i + 1]);
        }
        return visitor.post(page + "/" + what, form);
    }

    private List<Event> events(String system) {
        return desk.journal().lines(system, Span.EVER, EnumSet.allOf(Kind.class)).stream()
                .map(Line::event)
                .toList();
    }

    private static String header(HttpResponse<String> answer) {
        return answer.headers().firstValue("Location").orElse("");
    }

    @Test
    void anEmptyTankAsksForAnArrival() {
        assertThat(visitor.get(PAGE).body())
                .contains("Nobody is in it yet", "/log?line=arrived+1+", "Ammonia is held without any change")
                .doesNotContain("Today’s look", "class=\"calendar\"");
    }

    @Test
    void aBatchHasItsDayItsLookItsCalendarAndItsEnd() {
        batch(11);
        String body = visitor.get(PAGE).body();
        assertThat(body)
                .contains("Day 12 of 30", "Look at them today while they eat")
                .contains("Wednesday 25 February: all eaten; 60 breaths a minute; no sign")
                .contains("Keep them here until Thursday 26 March", "wrasse (4)", "Move to Harbour room")
                .contains("class=\"sign-drawing\"", "hanging at the surface", "Nothing was given to this batch.")
                .contains("No dose is worked out here", "Free ammonia");
        assertThat(body.split("class=\"sign-drawing\"", -1)).hasSize(Sign.values().length + 1);
    }

    @Test
    void aLookIsKeptWithAllItSays() {
        batch(3);
        HttpResponse<String> answer = send(
                PAGE,
                "look",
                "ate",
                "some",
                "sign_cloudy_eye",
                "yes",
                "breaths",
                "72",
                "animal",
                "wrasse",
                "remark",
                "left");
        assertThat(answer.statusCode()).isEqualTo(303);
        assertThat(events(BOX))
                .last()
                .isEqualTo(new Event.AnimalsChecked("wrasse", Appetite.SOME, 72, Set.of(Sign.CLOUDY_EYE)));
        assertThat(visitor.get(header(answer)).body())
                .contains("In the log: watched wrasse: ate some, 72 breaths, cloudy eye.")
                .contains("Ask a veterinarian", "30", "seen: cloudy eye");
    }

    @ParameterizedTest
    @CsvSource({
        "'', '', '', Say how they ate",
        "all, many, '', Found “many”; expected a whole number from 0 to 400.",
        "all, 900, '', Found “900”",
        "all, '', shark, “shark” is not in the tank by the log"
    })
    void aLookThatCannotBeMeantIsAskedForAgainAsTyped(String ate, String breaths, String animal, String told) {
        batch(3);
        int before = events(BOX).size();
        HttpResponse<String> answer =
                send(PAGE, "look", "ate", ate, "breaths", breaths, "animal", animal, "sign_spinning", "yes");
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains(told, "name=\"sign_spinning\" value=\"yes\" checked");
        assertThat(events(BOX)).hasSize(before);
    }

    @Test
    void somethingElseNeedsItsWords() {
        batch(3);
        HttpResponse<String> answer = send(PAGE, "look", "ate", "all", "sign_something_else", "yes");
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("Say what the something else is.");
    }

    @Test
    void aFormSentTwiceIsOneLine() {
        batch(3);
        int before = events(BOX).size();
        String id = UUID.randomUUID().toString();
        send(PAGE, "look", "id", id, "ate", "all");
        send(PAGE, "look", "id", id, "ate", "all");
        assertThat(events(BOX)).hasSize(before + 1);
    }

    @Test
    void aFormWithoutItsTokenIsNotTaken() {
        batch(3);
        int before = events(BOX).size();
        HttpResponse<String> answer = visitor.post(
                PAGE + "/look", Map.of("token", "x", "id", UUID.randomUUID().toString(), "ate", "all"));
        assertThat(answer.statusCode()).isEqualTo(403);
        assertThat(answer.body()).contains("nothing was taken");
        assertThat(events(BOX)).hasSize(before);
    }

    @Test
    void animalsThatMoveStandInBothLogs() {
        batch(31);
        HttpResponse<String> answer = send(PAGE, "move", "animal", "wrasse", "count", "3");
        assertThat(answer.statusCode()).isEqualTo(303);
        assertThat(events(BOX)).last().isEqualTo(new AnimalMoved("wrasse", 3, Move.LEFT, null));
        assertThat(events(HARBOUR)).last().isEqualTo(new AnimalMoved("wrasse", 3, Move.ARRIVED, null));
        assertThat(visitor.get(PAGE).body()).contains("wrasse (1)");
    }

    @Test
    void movingEarlyIsAskedAboutAndDoneAllTheSame() {
        batch(10);
        HttpResponse<String> asked = send(PAGE, "move", "animal", "wrasse", "count", "4");
        assertThat(asked.statusCode()).isEqualTo(409);
        assertThat(asked.body()).contains("This is day 11 of 30", "Move all the same");
        assertThat(events(HARBOUR)).isEmpty();
        assertThat(send(PAGE, "move", "animal", "wrasse", "count", "4", "all_the_same", "yes")
                        .statusCode())
                .isEqualTo(303);
        assertThat(visitor.get(PAGE).body()).contains("stand dry until Tuesday 10 March");
    }

    @Test
    void aDisplayWithoutFishIsNotStockedUnasked() {
        batch(31);
        write(HARBOUR, 5, new Event.Fallow(Parasite.WHITE_SPOT, Turn.BEGAN));
        HttpResponse<String> asked = send(PAGE, "move", "animal", "wrasse", "count", "4");
        assertThat(asked.statusCode()).isEqualTo(409);
        assertThat(asked.body()).contains("Harbour room stands without fish because of white spot");
    }

    @Test
    void moreThanThereAreCannotMove() {
        batch(31);
        HttpResponse<String> answer = send(PAGE, "move", "animal", "wrasse", "count", "5");
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("expected a whole number from 1 to 4");
    }

    @Test
    void aTankThatServesNobodyIsToldSo() {
        desk.put(BOX, Examples.text(BOX).replace("serves: Harbour room", "serves: Nowhere"));
        batch(31);
        assertThat(visitor.get(PAGE).body()).contains("No system called “Nowhere” is in this folder");
        assertThat(send(PAGE, "move", "animal", "wrasse", "count", "1").statusCode())
                .isEqualTo(422);
    }

    @Test
    void aFallowBeginsBreaksAndEndsOnTheDisplaysPage() {
        assertThat(visitor.get(DISPLAY).body()).contains("It stands with its fish", "Quarantine box");
        HttpResponse<String> began =
                send(DISPLAY, "fallow", "parasite", "white_spot", "turn", "began", "at", "2026-03-03T12:00");
        assertThat(began.statusCode()).isEqualTo(303);
        assertThat(visitor.get(DISPLAY).body())
                .contains("Leave Harbour room without any fish until Monday 18 May", "day 5 of 76", "Friday 10 April")
                .contains("Yoshinaga 2001", "Colorni 1985");
        assertThat(visitor.get("/systems/harbour-room/today").body())
                .contains("Without fish, white spot", "day 5 of 76");
        send(DISPLAY, "fallow", "parasite", "white_spot", "turn", "broken", "remark", "a wet net");
        assertThat(visitor.get(DISPLAY).body()).contains("day 1 of 76", "a wet net");
        send(DISPLAY, "fallow", "parasite", "white_spot", "turn", "ended");
        assertThat(visitor.get(DISPLAY).body()).contains("It stands with its fish");
    }

    @ParameterizedTest
    @CsvSource({
        "'', began, '', Say because of what.",
        "velvet, '', '', Say what became of it.",
        "rust, began, '', “rust”",
        "velvet, began, 2027-01-01T00:00, yet to come"
    })
    void aFallowThatCannotBeMeantIsAskedForAgain(String parasite, String turn, String at, String told) {
        HttpResponse<String> answer = send(DISPLAY, "fallow", "parasite", parasite, "turn", turn, "at", at);
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains(told);
        assertThat(events(HARBOUR)).isEmpty();
    }

    @Test
    void todaySaysThatALookIsDueInTheTankThatServesIt() {
        batch(3);
        String today = visitor.get("/systems/harbour-room/today").body();
        assertThat(today)
                .contains("One thing today.", "Look at the animals in Quarantine box")
                .contains("Quarantine box: 4 wrasse", "day 4 of 30", "until Fri 3 Apr");
        assertThat(visitor.get("/systems/window-nano/today").body()).doesNotContain("Quarantine box: ");
        send(PAGE, "look", "ate", "all");
        assertThat(visitor.get("/systems/harbour-room/today").body()).doesNotContain("Look at the animals in");
    }

    @Test
    void onlyAQuarantineTankTakesALook() {
        HttpResponse<String> answer = visitor.post(
                DISPLAY + "/look",
                Map.of("token", visitor.token(DISPLAY), "id", UUID.randomUUID().toString(), "ate", "all"));
        assertThat(answer.statusCode()).isEqualTo(404);
    }
}
