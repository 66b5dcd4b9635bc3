package org.tidewright.app.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.journal.Draft;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.husbandry.journal.Line;
import org.tidewright.husbandry.quarantine.QuarantineStudy;
import org.tidewright.husbandry.quarantine.Restart;
import org.tidewright.husbandry.quarantine.Watch;
import org.tidewright.plan.Examples;
import org.tidewright.plan.text.PlanReading;
import org.tidewright.plan.text.PlanText;

class DemoQuarantineTest {
    private static final ZonedDateTime NOW = ZonedDateTime.parse("2026-03-31T12:00:00+02:00[Europe/Berlin]");

    @Test
    void itSaysThatItIsInventedAndEndsNow() {
        List<Draft> drafts = DemoQuarantine.of(NOW);
        assertThat(drafts.get(0).event())
                .isInstanceOfSatisfying(
                        Event.Observation.class, seen -> assertThat(seen.seen()).contains("invented"));
        assertThat(drafts).allMatch(draft -> draft.at().isBefore(NOW.toOffsetDateTime()));
        assertThat(drafts).extracting(Draft::id).doesNotHaveDuplicates();
    }

    @Test
    void itShowsASignThatMovedTheEndAndALookThatIsDue() {
        List<Line> lines = DemoQuarantine.of(NOW).stream()
                .map(draft -> new Line(draft.id(), 1, draft.at(), draft.event(), draft.remark(), false, Instant.EPOCH))
                .toList();
        QuarantineStudy study = QuarantineStudy.of(
                ((PlanReading.Sound) PlanText.read(Examples.text("quarantine-box"))).plan(), lines, NOW.toLocalDate());
        Watch watch = Objects.requireNonNull(study.watch());
        assertThat(watch.governing().cause()).isEqualTo(Restart.Cause.SIGN);
        // The eye was cloudy on day 4 of the log, 23 March, for the last time.
        assertThat(watch.end()).isEqualTo("2026-04-22");
        assertThat(study.isCalm()).isFalse();
        assertThat(Objects.requireNonNull(study.batch()).heads()).isEqualTo(study.planned());
    }
}
