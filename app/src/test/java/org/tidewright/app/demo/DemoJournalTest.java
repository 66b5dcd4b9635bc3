package org.tidewright.app.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.ZonedDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.journal.Draft;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.plan.Examples;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.text.PlanReading;
import org.tidewright.plan.text.PlanText;

class DemoJournalTest {
    private static final ZonedDateTime NOW = ZonedDateTime.parse("2026-03-31T12:00:00+02:00[Europe/Berlin]");
    private static final Plan PLAN = ((PlanReading.Sound) PlanText.read(Examples.text("harbour-room"))).plan();

    @Test
    void itSaysThatItIsInventedAndEndsNow() {
        List<Draft> drafts = DemoJournal.of(PLAN, NOW).lines();
        assertThat(drafts.get(0).event())
                .isInstanceOfSatisfying(
                        Event.Observation.class, seen -> assertThat(seen.seen()).contains("invented"));
        assertThat(drafts).allMatch(draft -> draft.at().isBefore(NOW.toOffsetDateTime()));
        assertThat(drafts).extracting(Draft::id).doesNotHaveDuplicates();
        assertThat(drafts.stream()
                        .filter(draft -> draft.event() instanceof Event.Reading reading
                                && reading.quantity() == WaterQuantity.ALKALINITY))
                .hasSizeBetween(20, 24);
    }

    @Test
    void itsProbesSayThatTheyAreInventedAndSpeakEveryHour() {
        DemoJournal.of(PLAN, NOW).probes().forEach((probe, values) -> {
            assertThat(probe.place()).contains("invented");
            assertThat(values).hasSizeBetween(70 * 24, 71 * 24);
            assertThat(values).allMatch(value -> value.at().isBefore(NOW.toInstant()));
            assertThat(values)
                    .allMatch(value -> value.value() > probe.quantity().least()
                            && value.value() < probe.quantity().most());
        });
        assertThat(DemoJournal.of(PLAN, NOW).probes().keySet())
                .extracting(probe -> probe.quantity())
                .containsExactly(WaterQuantity.TEMPERATURE, WaterQuantity.PH);
    }

    @Test
    void itIsTheSameEachTime() {
        assertThat(DemoJournal.of(PLAN, NOW)).isEqualTo(DemoJournal.of(PLAN, NOW));
    }
}
