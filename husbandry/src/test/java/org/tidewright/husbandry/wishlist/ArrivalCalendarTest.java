package org.tidewright.husbandry.wishlist;

import static org.assertj.core.api.Assertions.assertThat;

import biweekly.Biweekly;
import biweekly.component.VEvent;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.calendar.ArrivalCalendar;

/** The calendar of a plan, read back. */
class ArrivalCalendarTest {
    private static List<VEvent> events(ArrivalAnswer answer) {
        return Biweekly.parse(ArrivalCalendar.text("harbour-room", answer, Instant.EPOCH))
                .first()
                .getEvents();
    }

    private static List<String> ids(ArrivalAnswer answer) {
        return events(answer).stream().map(event -> event.getUid().getValue()).toList();
    }

    @Test
    void anAnimalHasTheDayItComesTheDayItGoesInAndItsTankThatDries() {
        List<VEvent> events = events(new House().plan("yellow assessor"));
        assertThat(events)
                .extracting(event -> event.getSummary().getValue())
                .containsExactly(
                        "Buy the yellow assessor, into Quarantine box",
                        "The yellow assessor into Harbour room",
                        "Quarantine box stands dry");
        assertThat(events.get(1).getDescription().getValue()).contains("no ammonia and no nitrite");
    }

    @Test
    void anEntryKeepsItsIdWhenItsDayMoves() {
        ArrivalAnswer early = new House().plan("yellow assessor");
        ArrivalAnswer late = new House().plan("yellow assessor from 2026-05-01");
        assertThat(ids(late))
                .isEqualTo(ids(early))
                .contains("harbour-room-assessor-flavissimus-comes@tidewright.invalid");
        assertThat(events(late).get(0).getDateStart().getValue())
                .isNotEqualTo(events(early).get(0).getDateStart().getValue());
    }

    @Test
    void twoThatShareATankLetItDryOnce() {
        ArrivalAnswer answer = new House().plan("yellow assessor", "2 neon goby");
        assertThat(answer.coming().get(0).arrival().out())
                .isEqualTo(answer.coming().get(1).arrival().out());
        assertThat(ids(answer)).filteredOn(id -> id.contains("-dry@")).hasSize(1);
    }
}
