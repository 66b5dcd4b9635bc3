package org.tidewright.store.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.journal.Draft;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.husbandry.journal.Journal;
import org.tidewright.husbandry.journal.Line;
import org.tidewright.husbandry.journal.Span;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.testkit.SeededCases;

/** A journal copied elsewhere is the same, and does no harm to what is there. */
abstract class RestoringContract extends JournalCase {
    @Test
    void aRestoredJournalIsTheSame() {
        List<Draft> drafts = new ArrayList<>();
        for (Event event : events()) {
            drafts.add(draft(NOON, event, "as it was"));
        }
        journal.writeAll(REEF, drafts, done -> {});
        journal.correct(REEF, 1, new Draft(drafts.get(2).id(), NOON, FED, "corrected"));
        journal.strike(REEF, drafts.get(5).id(), 1);
        journal.strike(REEF, drafts.get(6).id(), 1);
        journal.correct(REEF, 2, drafts.get(6));
        Journal copy = openEmpty("copy");
        List<Line> everything = journal.everything(REEF);
        assertThat(copy.restore("another name", everything)).isEqualTo(everything.size());
        assertThat(copy.everything("another name")).isEqualTo(everything);
        assertThat(copy.lines("another name", Span.EVER, ALL)).isEqualTo(journal.lines(REEF, Span.EVER, ALL));
        assertThat(copy.restore("another name", everything)).isZero();
    }

    @Test
    void whatIsMissingIsRestoredBesideWhatIsThere() {
        Draft one = draft(NOON, FED, "one");
        Draft other = draft(NOON, FED, "other");
        Line first = journal.write(REEF, one);
        Journal copy = openEmpty("copy");
        copy.restore(REEF, List.of(first));
        copy.write(REEF, draft(NOON, FED, "only there"));
        journal.write(REEF, other);
        Line corrected = journal.correct(REEF, 1, one).orElseThrow();
        assertThat(copy.restore(REEF, journal.everything(REEF))).isEqualTo(2);
        assertThat(copy.history(REEF, one.id())).containsExactly(first, corrected);
        assertThat(copy.lines(REEF, Span.EVER, ALL)).hasSize(3).startsWith(corrected);
        assertThat(copy.correct(REEF, 2, one).orElseThrow().revision()).isEqualTo(3);
    }

    @Test
    void aLineThatIsThereWithAnotherContentIsRefusedAndNothingRestored() {
        Draft draft = draft(NOON, new Event.WaterChanged(0.04, Map.of(WaterQuantity.PH, 8.2)), "");
        Line here = journal.write(REEF, draft);
        Line fresh = new Line(UUID.randomUUID(), 1, NOON, FED, "", false, here.writtenAt());
        Event otherWater = new Event.WaterChanged(0.04, Map.of(WaterQuantity.PH, 8.3));
        List<Line> others = List.of(
                new Line(here.id(), 1, here.at().plusNanos(1), here.event(), "", false, here.writtenAt()),
                new Line(here.id(), 1, here.at(), FED, "", false, here.writtenAt()),
                new Line(here.id(), 1, here.at(), otherWater, "", false, here.writtenAt()),
                new Line(here.id(), 1, here.at(), here.event(), "!", false, here.writtenAt()),
                new Line(here.id(), 1, here.at(), here.event(), "", true, here.writtenAt()),
                new Line(
                        here.id(),
                        1,
                        here.at(),
                        here.event(),
                        "",
                        false,
                        here.writtenAt().plusNanos(1)));
        for (Line other : others) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> journal.restore(REEF, List.of(fresh, other)))
                    .withMessageContaining("revision 1 of line " + here.id() + " is here with another content");
        }
        assertThat(journal.everything(REEF)).containsExactly(here);
    }

    @Test
    void aRevisionWithoutThoseBeforeItIsNotRestored() {
        Line line = new Line(UUID.randomUUID(), 2, NOON, FED, "", false, Instant.EPOCH);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> journal.restore(REEF, List.of(line)))
                .withMessageContaining("does not follow");
        Line none = new Line(UUID.randomUUID(), 0, NOON, FED, "", false, Instant.EPOCH);
        assertThatIllegalArgumentException().isThrownBy(() -> journal.restore(REEF, List.of(none)));
        assertThat(journal.everything(REEF)).isEmpty();
    }

    @Test
    void whateverIsDoneToAJournalIsThereAndInItsCopy() {
        int[] tried = {0};
        SeededCases.check(25, draw -> {
            Journal original = openEmpty("original " + tried[0]);
            ModelJournal model = new ModelJournal(original);
            int deeds = draw.whole(0, 60);
            for (int i = 0; i < deeds; i++) {
                model.doSomething(draw);
            }
            Journal copy = openEmpty("copy " + tried[0]++);
            copy.restore(REEF, original.everything(REEF));
            for (Journal each : List.of(original, copy)) {
                assertThat(each.everything(REEF)).isEqualTo(model.everything());
                assertThat(each.lines(REEF, Span.EVER, ALL)).isEqualTo(model.standing());
                model.histories()
                        .forEach((id, history) ->
                                assertThat(each.history(REEF, id)).isEqualTo(history));
            }
        });
    }
}
