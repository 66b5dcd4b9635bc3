package org.tidewright.store.journal;

import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.IntConsumer;
import java.util.function.UnaryOperator;
import org.tidewright.husbandry.journal.Draft;
import org.tidewright.husbandry.journal.Journal;
import org.tidewright.husbandry.journal.Kind;
import org.tidewright.husbandry.journal.Line;
import org.tidewright.husbandry.journal.Span;
import org.tidewright.store.database.Database;
import org.tidewright.store.database.Moment;
import org.tidewright.store.database.Sql;

/** Journals in a database. Lines of one time keep the order in which they were first written, however often corrected. */
public final class SqlJournal implements Journal {
    /** After how many lines a long write tells how far it is. */
    private static final int STRIDE = 1000;

    private final Database database;
    private final Clock clock;

    public SqlJournal(Database database, Clock clock) {
        this.database = database;
        this.clock = clock;
    }

    @Override
    public Line write(String system, Draft draft) {
        return database.write(sql -> {
            insertFirst(sql, system, List.of(draft), clock.instant());
            return newest(sql, system, draft.id()).orElseThrow().line();
        });
    }

    @Override
    public int writeAll(String system, List<Draft> drafts, IntConsumer progress) {
        return database.write(sql -> writeAll(sql, system, drafts, clock.instant(), progress));
    }

    @Override
    public int writeTogether(Map<String, List<Draft>> drafts) {
        return database.write(sql -> {
            int written = 0;
            for (Map.Entry<String, List<Draft>> ofSystem : drafts.entrySet()) {
                written += insertFirst(sql, ofSystem.getKey(), ofSystem.getValue(), clock.instant());
            }
            return written;
        });
    }

    /** The same within a transaction that writes more than lines. */
    public static int writeAll(Sql sql, String system, List<Draft> drafts, Instant now, IntConsumer progress)
            throws SQLException {
        int written = 0;
        for (int done = 0; done < drafts.size(); ) {
            int end = Math.min(done + STRIDE, drafts.size());
            written += insertFirst(sql, system, drafts.subList(done, end), now);
            done = end;
            progress.accept(done);
        }
        return written;
    }

    private static int insertFirst(Sql sql, String system, List<Draft> drafts, Instant now) throws SQLException {
        LineTable lines = new LineTable(sql);
        long number = lines.nextNumber();
        List<KeptLine> first = new ArrayList<>();
        for (Draft draft : drafts) {
            first.add(new KeptLine(number, number, line(draft, 1, now)));
            number++;
        }
        return lines.insert(system, first, true).size();
    }

    @Override
    public Optional<Line> correct(String system, int basedOn, Draft corrected) {
        return revise(system, corrected.id(), basedOn, seen -> line(corrected, basedOn + 1, clock.instant()));
    }

    @Override
    public Optional<Line> strike(String system, UUID id, int basedOn) {
        return revise(
                system,
                id,
                basedOn,
                seen -> seen.struck()
                        ? seen
                        : new Line(id, basedOn + 1, seen.at(), seen.event(), seen.remark(), true, clock.instant()));
    }

    /**
     * Puts a further revision in place of the one that was seen.
     *
     * @param revision makes it of the one that was seen, or gives that back where there is nothing to change
     */
    private Optional<Line> revise(String system, UUID id, int basedOn, UnaryOperator<Line> revision) {
        return database.write(sql -> {
            Optional<KeptLine> seen =
                    newest(sql, system, id).filter(kept -> kept.line().revision() == basedOn);
            if (seen.isEmpty()) {
                return Optional.empty();
            }
            Line revised = revision.apply(seen.get().line());
            if (revised.revision() > basedOn) {
                LineTable lines = new LineTable(sql);
                sql.change(
                        "UPDATE line SET stands = 0 WHERE line_no = ?",
                        seen.get().number());
                lines.insert(
                        system,
                        List.of(new KeptLine(lines.nextNumber(), seen.get().firstNumber(), revised)),
                        true);
            }
            return newest(sql, system, id).map(KeptLine::line);
        });
    }

    @Override
    public List<Line> lines(String system, Span span, Set<Kind> kinds) {
        return kinds.isEmpty() ? List.of() : read(standing(system, span, kinds), "at_ms, at_ns, first_no");
    }

    @Override
    public Optional<Line> lastBefore(String system, Instant time, Set<Kind> kinds) {
        if (kinds.isEmpty()) {
            return Optional.empty();
        }
        Condition before = standing(system, new Span(Span.EVER.from(), time), kinds);
        Condition last = Condition.of(
                "line.line_no = (SELECT line_no FROM line WHERE " + before.sql()
                        + " ORDER BY at_ms DESC, at_ns DESC, first_no DESC LIMIT 1)",
                before.values().toArray());
        return read(last, "line_no").stream().findFirst();
    }

    private static Condition standing(String system, Span span, Set<Kind> kinds) {
        Moment from = Moment.end(span.from());
        Moment to = Moment.end(span.to());
        return Condition.of("system = ? AND stands = 1", system)
                .and(
                        "kind IN (?" + ", ?".repeat(kinds.size() - 1) + ")",
                        kinds.stream().map(Kind::key).toArray())
                .and("(at_ms, at_ns) >= (?, ?)", from.ms(), from.ns())
                .and("(at_ms, at_ns) < (?, ?)", to.ms(), to.ns());
    }

    @Override
    public List<Line> history(String system, UUID id) {
        return read(ofId(system, id), "revision");
    }

    @Override
    public List<Line> everything(String system) {
        return read(Condition.of("system = ?", system), "line_no");
    }

    private List<Line> read(Condition condition, String order) {
        return database.read(sql -> new LineTable(sql)
                .find(condition, order).stream().map(KeptLine::line).toList());
    }

    @Override
    public int restore(String system, List<Line> revisions) {
        return database.write(sql -> {
            LineTable lines = new LineTable(sql);
            Map<UUID, List<KeptLine>> histories = new HashMap<>();
            for (KeptLine here : lines.find(Condition.of("system = ?", system), "line_no")) {
                histories
                        .computeIfAbsent(here.line().id(), id -> new ArrayList<>())
                        .add(here);
            }
            List<KeptLine> missing = Restoring.missing(revisions, histories, lines.nextNumber());
            lines.insert(system, missing, false);
            Restoring.standAgain(sql, system, missing, histories);
            return missing.size();
        });
    }

    private static Optional<KeptLine> newest(Sql sql, String system, UUID id) throws SQLException {
        List<KeptLine> history = new LineTable(sql).find(ofId(system, id), "revision");
        return history.isEmpty() ? Optional.empty() : Optional.of(history.get(history.size() - 1));
    }

    private static Condition ofId(String system, UUID id) {
        return Condition.of("system = ? AND id = ?", system, id.toString());
    }

    private static Line line(Draft draft, int revision, Instant now) {
        return new Line(draft.id(), revision, draft.at(), draft.event(), draft.remark(), false, now);
    }
}
