package org.tidewright.store.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.journal.Draft;
import org.tidewright.husbandry.journal.Line;
import org.tidewright.husbandry.journal.Span;

/** What whoever keeps journals must do with many lines, and with many who write at once. */
abstract class ManyLinesContract extends JournalCase {
    @Test
    void manyLinesAreWrittenTogetherAndToldOfOnTheWay() {
        List<Draft> drafts = new ArrayList<>();
        for (int i = 0; i < 2500; i++) {
            drafts.add(draft(NOON.plusMinutes(i), events().get(i % events().size()), "line " + i));
        }
        Line before = journal.write(REEF, drafts.get(7));
        List<Integer> told = new ArrayList<>();
        assertThat(journal.writeAll(REEF, drafts, told::add)).isEqualTo(2499);
        assertThat(told).isSorted().hasSizeGreaterThan(1).endsWith(2500);
        List<Line> lines = journal.lines(REEF, Span.EVER, ALL);
        assertThat(ids(lines)).isEqualTo(drafts.stream().map(Draft::id).toList());
        assertThat(lines.get(7)).isEqualTo(before);
        assertThat(lines.get(2499).remark()).isEqualTo("line 2499");
        assertThat(journal.writeAll(REEF, drafts, told::add)).isZero();
        assertThat(journal.everything(REEF)).hasSize(2500);
    }

    @Test
    void aLineThatComesTwiceAmongManyIsKeptOnce() {
        Draft draft = draft(NOON, FED, "first");
        assertThat(journal.writeAll(
                        REEF, List.of(draft, new Draft(draft.id(), NOON, FED, "second"), draft), done -> {}))
                .isEqualTo(1);
        assertThat(journal.history(REEF, draft.id()).get(0).remark()).isEqualTo("first");
    }

    @Test
    void ofManyLinesNoneIsKeptIfOneIsRefused() {
        List<Draft> drafts = new ArrayList<>();
        for (int i = 0; i < 1500; i++) {
            drafts.add(draft(NOON.plusMinutes(i), FED, ""));
        }
        drafts.add(draft(NOON, FED, "nothing \0"));
        assertThatIllegalArgumentException().isThrownBy(() -> journal.writeAll(REEF, drafts, done -> {}));
        assertThat(journal.everything(REEF)).isEmpty();
    }

    @Test
    void ofManyLinesNoneIsKeptIfWhoListensFails() {
        List<Draft> drafts = List.of(draft(NOON, FED, ""), draft(NOON, FED, ""));
        assertThatThrownBy(() -> journal.writeAll(REEF, drafts, done -> {
                    throw new IllegalStateException("enough");
                }))
                .hasMessage("enough");
        assertThat(journal.everything(REEF)).isEmpty();
        assertThat(journal.writeAll(REEF, drafts, done -> {})).isEqualTo(2);
    }

    @Test
    void whoListensMayReadWhatStoodBeforeAndMayNotWrite() {
        Draft draft = draft(NOON, FED, "");
        journal.writeAll(
                REEF,
                List.of(draft),
                done -> assertThat(journal.everything(REEF)).isEmpty());
        assertThatThrownBy(() -> journal.writeAll(
                        REEF, List.of(draft(NOON, FED, "")), done -> journal.write(REEF, draft(NOON, FED, ""))))
                .hasMessageContaining("a write cannot begin before the one around it has ended");
        assertThat(journal.everything(REEF)).hasSize(1);
    }

    @Test
    void fourThatWriteAtTheSameTimeLoseNothing() throws Exception {
        int each = 60;
        ExecutorService writers = Executors.newFixedThreadPool(5);
        try {
            Draft shared = draft(NOON, FED, "");
            journal.write(REEF, shared);
            List<Future<List<Line>>> written = new ArrayList<>();
            for (int i = 0; i < 4; i++) {
                written.add(writers.submit(() -> writeSome(each, shared)));
            }
            Future<Integer> seen = writers.submit(() -> {
                int most = 0;
                while (most < 4 * each + 1) {
                    int now = journal.lines(REEF, Span.EVER, ALL).size();
                    assertThat(now).isGreaterThanOrEqualTo(most);
                    most = now;
                }
                return most;
            });
            List<Line> all = new ArrayList<>();
            for (Future<List<Line>> lines : written) {
                all.addAll(lines.get());
            }
            assertThat(seen.get()).isEqualTo(4 * each + 1);
            assertThat(journal.everything(REEF)).containsAll(all);
            // Each of these corrections was accepted exactly once, so the revisions are without gaps.
            assertThat(journal.history(REEF, shared.id()).stream().map(Line::revision))
                    .isEqualTo(IntStream.rangeClosed(
                                    1,
                                    1
                                            + (int) all.stream()
                                                    .filter(line -> line.id().equals(shared.id()))
                                                    .count())
                            .boxed()
                            .toList());
        } finally {
            writers.shutdownNow();
        }
    }

    /** Writes lines, and after each tries to correct a line that others correct too. */
    private List<Line> writeSome(int count, Draft shared) {
        List<Line> written = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            written.add(journal.write(REEF, draft(NOON.plusMinutes(i), FED, "")));
            int basedOn = journal.history(REEF, shared.id()).size();
            Optional<Line> corrected = journal.correct(REEF, basedOn, shared);
            corrected.ifPresent(written::add);
        }
        return Collections.unmodifiableList(written);
    }
}
