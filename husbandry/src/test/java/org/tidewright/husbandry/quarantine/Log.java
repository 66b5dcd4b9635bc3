package org.tidewright.husbandry.quarantine;

import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.husbandry.journal.Event.Appetite;
import org.tidewright.husbandry.journal.Event.Move;
import org.tidewright.husbandry.journal.Event.Turn;
import org.tidewright.husbandry.journal.Line;
import org.tidewright.husbandry.journal.Parasite;
import org.tidewright.husbandry.journal.Sign;

/** An invented log, written day by day from 1 March 2026. */
final class Log {
    static final LocalDate FIRST = LocalDate.parse("2026-03-01");

    private final List<Line> lines = new ArrayList<>();

    /** Day 1 is 1 March. */
    static LocalDate day(int number) {
        return FIRST.plusDays(number - 1L);
    }

    Log move(int day, int count, String animal, Move move) {
        return write(day, new Event.AnimalMoved(animal, count, move, null), "");
    }

    Log came(int day, int count, String animal) {
        return move(day, count, animal, Move.ARRIVED);
    }

    Log check(int day, @Nullable String animal, Appetite ate, @Nullable Integer breaths, Sign... signs) {
        return write(day, new Event.AnimalsChecked(animal, ate, breaths, Set.of(signs)), "");
    }

    /** Looked at and well on each of some days. */
    Log well(int from, int to) {
        for (int day = from; day <= to; day++) {
            check(day, null, Appetite.ALL, 60);
        }
        return this;
    }

    Log fallow(int day, Parasite parasite, Turn turn, String remark) {
        return write(day, new Event.Fallow(parasite, turn), remark);
    }

    Log write(int day, Event event, String remark) {
        OffsetDateTime at =
                day(day).atTime(18, 0).atOffset(ZoneOffset.ofHours(1)).plusSeconds(lines.size());
        lines.add(new Line(new UUID(0, lines.size() + 1L), 1, at, event, remark, false, Instant.EPOCH));
        return this;
    }

    List<Line> lines() {
        return List.copyOf(lines);
    }
}
