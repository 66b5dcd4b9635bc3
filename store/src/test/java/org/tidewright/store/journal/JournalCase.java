package org.tidewright.store.journal;

import java.time.OffsetDateTime;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.tidewright.husbandry.journal.Draft;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.husbandry.journal.Journal;
import org.tidewright.husbandry.journal.Kind;
import org.tidewright.husbandry.journal.Line;

/** A journal to be tried, and what is written into it. */
abstract class JournalCase {
    static final String REEF = "harbour room";
    static final Set<Kind> ALL = EnumSet.allOf(Kind.class);
    static final OffsetDateTime NOON = OffsetDateTime.parse("2026-05-03T12:00:00+02:00");
    static final Event FED = new Event.Fed("frozen mysis", 1.5e-3);

    Journal journal;

    /** A journal that holds nothing yet, apart from those under other names. */
    abstract Journal openEmpty(String name);

    @BeforeEach
    void open() {
        journal = openEmpty("journal");
    }

    static List<Event> events() {
        return Events.ofEveryKind();
    }

    static Draft draft(OffsetDateTime at, Event event, String remark) {
        return new Draft(UUID.randomUUID(), at, event, remark);
    }

    static List<UUID> ids(List<Line> lines) {
        return lines.stream().map(Line::id).toList();
    }
}
