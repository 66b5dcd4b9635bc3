package org.tidewright.husbandry.exchange;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.husbandry.journal.Kind;
import org.tidewright.husbandry.journal.Line;

/** The names and values of one revision of a line: what all kinds have, and its event between. */
final class LineFields {
    static final String KIND = "kind";

    private static final List<String> BEFORE = List.of("id", "revision", "at");
    private static final List<String> AFTER =
            List.of(JournalFormat.REMARK, JournalFormat.STRUCK, JournalFormat.WRITTEN_AT);

    private LineFields() {}

    /** All names of a kind, without the kind itself. */
    static List<String> names(Kind kind) {
        List<String> names = new ArrayList<>(BEFORE);
        names.addAll(EventFields.names(kind));
        names.addAll(AFTER);
        return List.copyOf(names);
    }

    /** A text, a number, a flag or null for each of the names. */
    static Map<String, @Nullable Object> values(Line line) {
        Map<String, @Nullable Object> values = new LinkedHashMap<>();
        values.put("id", line.id().toString());
        values.put("revision", line.revision());
        values.put("at", DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(line.at()));
        List<String> names = EventFields.names(Kind.of(line.event()));
        List<@Nullable Object> event = EventFields.values(line.event());
        for (int i = 0; i < names.size(); i++) {
            values.put(names.get(i), event.get(i));
        }
        values.put(JournalFormat.REMARK, line.remark().isEmpty() ? null : line.remark());
        values.put(JournalFormat.STRUCK, line.struck());
        values.put(JournalFormat.WRITTEN_AT, line.writtenAt().toString());
        return values;
    }

    static Line read(Kind kind, Given given) throws BadLine {
        UUID id = given.parsed("id", LineFields::id, "an id such as 3f2a1c58-6a52-4c0e-9d1b-0a8f6c7e5d42");
        int revision = given.whole("revision");
        if (revision < 1) {
            throw given.refusal("revision", "1 for a line as first written, or more", "");
        }
        OffsetDateTime at = given.parsed("at", OffsetDateTime::parse, "a time such as 2026-03-01T08:30:00+01:00");
        Instant writtenAt =
                given.parsed(JournalFormat.WRITTEN_AT, Instant::parse, "a time such as 2026-03-01T07:30:12Z");
        String remark = given.textOrEmpty(JournalFormat.REMARK);
        boolean struck = given.flag(JournalFormat.STRUCK);
        try {
            Event event = EventFields.read(kind, given);
            return new Line(id, revision, at, event, remark, struck, writtenAt);
        } catch (IllegalArgumentException refused) {
            throw new BadLine(given.place()
                    .fault("a line that cannot be meant (" + refused.getMessage() + ")", "one that can", ""));
        }
    }

    /** The library's own reader takes halves of an id too. */
    private static UUID id(String text) {
        UUID id = UUID.fromString(text);
        if (!id.toString().equalsIgnoreCase(text)) {
            throw new IllegalArgumentException(text);
        }
        return id;
    }
}
