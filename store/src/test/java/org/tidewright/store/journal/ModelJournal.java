package org.tidewright.store.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.tidewright.husbandry.journal.Draft;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.husbandry.journal.Journal;
import org.tidewright.husbandry.journal.Line;
import org.tidewright.testkit.Draw;

/** Does random things to a journal, says what each of them should have answered, and keeps what should be there. */
final class ModelJournal {
    private static final String SYSTEM = JournalCase.REEF;
    private static final long FIRST_S = Instant.parse("0001-01-02T00:00:00Z").getEpochSecond();
    private static final long LAST_S = Instant.parse("9998-12-30T00:00:00Z").getEpochSecond();

    private final Journal journal;
    private final Map<UUID, List<Line>> histories = new LinkedHashMap<>();
    private final List<Line> everything = new ArrayList<>();

    ModelJournal(Journal journal) {
        this.journal = journal;
    }

    void doSomething(Draw draw) {
        UUID id = histories.isEmpty() || draw.whole(0, 2) == 0
                ? new UUID(draw.anyLong(), draw.anyLong())
                : draw.oneOf(histories.keySet().toArray(UUID[]::new));
        List<Line> history = histories.getOrDefault(id, List.of());
        Draft draft = draft(draw, id);
        int basedOn = draw.whole(0, 3) == 0 ? draw.whole(0, 4) : history.size();
        switch (draw.whole(0, 3)) {
            case 0, 1 -> write(draft, history);
            case 2 -> correct(basedOn, draft, history);
            default -> strike(basedOn, id, history);
        }
    }

    private void write(Draft draft, List<Line> history) {
        Line answer = journal.write(SYSTEM, draft);
        if (history.isEmpty()) {
            add(answer, new Line(draft.id(), 1, draft.at(), draft.event(), draft.remark(), false, answer.writtenAt()));
        } else {
            assertThat(answer).isEqualTo(last(history));
        }
    }

    private void correct(int basedOn, Draft draft, List<Line> history) {
        Optional<Line> answer = journal.correct(SYSTEM, basedOn, draft);
        if (history.isEmpty() || basedOn != history.size()) {
            assertThat(answer).isEmpty();
        } else {
            Line line = answer.orElseThrow();
            add(
                    line,
                    new Line(
                            draft.id(),
                            basedOn + 1,
                            draft.at(),
                            draft.event(),
                            draft.remark(),
                            false,
                            line.writtenAt()));
        }
    }

    private void strike(int basedOn, UUID id, List<Line> history) {
        Optional<Line> answer = journal.strike(SYSTEM, id, basedOn);
        if (history.isEmpty() || basedOn != history.size()) {
            assertThat(answer).isEmpty();
        } else if (last(history).struck()) {
            assertThat(answer).contains(last(history));
        } else {
            Line seen = last(history);
            Line line = answer.orElseThrow();
            add(line, new Line(id, basedOn + 1, seen.at(), seen.event(), seen.remark(), true, line.writtenAt()));
        }
    }

    private void add(Line answer, Line expected) {
        assertThat(answer).isEqualTo(expected);
        everything.add(expected);
        histories.computeIfAbsent(expected.id(), id -> new ArrayList<>()).add(expected);
    }

    private static Draft draft(Draw draw, UUID id) {
        Event event = Events.random(draw);
        ZoneOffset offset = ZoneOffset.ofTotalSeconds(draw.whole(-18 * 3600, 18 * 3600));
        long second = FIRST_S + (long) (draw.between(0, 1) * (LAST_S - FIRST_S));
        OffsetDateTime at =
                Instant.ofEpochSecond(second, draw.whole(0, 999_999_999)).atOffset(offset);
        return new Draft(id, at, event, Events.text(draw));
    }

    List<Line> everything() {
        return everything;
    }

    Map<UUID, List<Line>> histories() {
        return histories;
    }

    /** In the order of time, those of one time in the order in which they came first. */
    List<Line> standing() {
        return histories.values().stream()
                .map(ModelJournal::last)
                .filter(line -> !line.struck())
                .sorted((one, other) ->
                        one.at().toInstant().compareTo(other.at().toInstant()))
                .toList();
    }

    private static Line last(List<Line> history) {
        return history.get(history.size() - 1);
    }
}
