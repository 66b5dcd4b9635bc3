package org.tidewright.store.journal;

import java.sql.SQLDataException;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.husbandry.journal.Kind;
import org.tidewright.husbandry.journal.Line;
import org.tidewright.store.database.Moment;
import org.tidewright.store.database.Row;
import org.tidewright.store.database.Sql;

/** The table {@code line}, and with it the tables of the kinds, within one transaction. */
final class LineTable {
    private static final String COLUMNS =
            "line_no, system, id, revision, first_no, at_ms, at_ns, at_offset_s, kind, remark, struck, stands,"
                    + " written_ms, written_ns";

    private final Sql sql;

    LineTable(Sql sql) {
        this.sql = sql;
    }

    /** The number of the next row. */
    long nextNumber() throws SQLException {
        return sql.first("SELECT coalesce(max(line_no), 0) + 1 AS next FROM line", row -> row.whole("next"))
                .orElseThrow();
    }

    /** Writes revisions of lines of a system, and passes over those that are there; returns which were new. */
    List<KeptLine> insert(String system, List<KeptLine> lines, boolean stands) throws SQLException {
        List<@Nullable Object[]> rows = new ArrayList<>();
        for (KeptLine kept : lines) {
            rows.add(row(system, kept, stands && !kept.line().struck()));
        }
        int[] counts = sql.changeAll(
                "INSERT INTO line (" + COLUMNS + ") VALUES (?" + ", ?".repeat(13)
                        + ") ON CONFLICT (system, id, revision) DO NOTHING",
                rows);
        List<KeptLine> written = new ArrayList<>();
        Map<Kind, Map<Long, Event>> events = new EnumMap<>(Kind.class);
        for (int i = 0; i < counts.length; i++) {
            if (counts[i] == 1) {
                KeptLine kept = lines.get(i);
                written.add(kept);
                Event event = kept.line().event();
                events.computeIfAbsent(Kind.of(event), kind -> new LinkedHashMap<>())
                        .put(kept.number(), event);
            }
        }
        for (Map.Entry<Kind, Map<Long, Event>> ofKind : events.entrySet()) {
            EventTables.of(ofKind.getKey()).insert(sql, ofKind.getValue());
        }
        return written;
    }

    private static @Nullable Object[] row(String system, KeptLine kept, boolean stands) {
        Line line = kept.line();
        Moment at = Moment.of(line.at().toInstant());
        Moment writtenAt = Moment.of(line.writtenAt());
        return new Object[] {
            kept.number(),
            system,
            line.id().toString(),
            line.revision(),
            kept.firstNumber(),
            at.ms(),
            at.ns(),
            line.at().getOffset().getTotalSeconds(),
            Kind.of(line.event()).key(),
            line.remark(),
            line.struck() ? 1 : 0,
            stands ? 1 : 0,
            writtenAt.ms(),
            writtenAt.ns()
        };
    }

    /** The lines that are meant, in an order over the columns of {@code line}. */
    List<KeptLine> find(Condition condition, String order) throws SQLException {
        List<Head> heads = sql.list(
                "SELECT " + COLUMNS + " FROM line WHERE " + condition.sql() + " ORDER BY " + order,
                Head::of,
                condition.values().toArray());
        Map<Long, Event> events = new HashMap<>();
        for (Kind kind : heads.stream().map(Head::kind).distinct().toList()) {
            events.putAll(EventTables.of(kind).find(sql, condition.and("kind = ?", kind.key())));
        }
        List<KeptLine> lines = new ArrayList<>();
        for (Head head : heads) {
            lines.add(head.with(events.get(head.number())));
        }
        return lines;
    }

    /** What a row of {@code line} says. */
    private record Head(
            long number,
            long firstNumber,
            UUID id,
            int revision,
            OffsetDateTime at,
            Kind kind,
            String remark,
            boolean struck,
            Moment writtenAt) {

        static Head of(Row row) throws SQLException {
            String kind = row.text("kind");
            return new Head(
                    row.whole("line_no"),
                    row.whole("first_no"),
                    UUID.fromString(row.text("id")),
                    (int) row.whole("revision"),
                    new Moment(row.whole("at_ms"), (int) row.whole("at_ns"))
                            .instant()
                            .atOffset(ZoneOffset.ofTotalSeconds((int) row.whole("at_offset_s"))),
                    Kind.ofKey(kind)
                            .orElseThrow(() -> new SQLDataException("no kind of line is called “" + kind + "”")),
                    row.text("remark"),
                    row.flag("struck"),
                    new Moment(row.whole("written_ms"), (int) row.whole("written_ns")));
        }

        KeptLine with(@Nullable Event event) throws SQLException {
            if (event == null) {
                throw new SQLDataException("line " + number + " has no row in " + kind.key());
            }
            return new KeptLine(
                    number, firstNumber, new Line(id, revision, at, event, remark, struck, writtenAt.instant()));
        }
    }
}
