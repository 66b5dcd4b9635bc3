package org.tidewright.store.journal;

import java.sql.SQLException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.husbandry.journal.Kind;
import org.tidewright.husbandry.journal.Line;
import org.tidewright.store.database.Sql;

/** Revisions that were kept elsewhere, set against those that are here. */
final class Restoring {
    private Restoring() {}

    /**
     * Those that are not here yet, numbered; they are added to the histories too.
     *
     * @param histories revisions of each line that are here, the first one first
     * @throws IllegalArgumentException where one is here with another content, or an earlier one of its line is lacking
     */
    static List<KeptLine> missing(List<Line> revisions, Map<UUID, List<KeptLine>> histories, long nextNumber) {
        List<KeptLine> missing = new ArrayList<>();
        long number = nextNumber;
        for (Line line : revisions) {
            List<KeptLine> history = histories.computeIfAbsent(line.id(), id -> new ArrayList<>());
            if (line.revision() < 1 || line.revision() > history.size() + 1) {
                throw new IllegalArgumentException(
                        "revision " + line.revision() + " of line " + line.id() + " does not follow the "
                                + history.size() + " that are there: give all its revisions in order");
            }
            if (line.revision() <= history.size()) {
                mustBeSame(history.get(line.revision() - 1).line(), line);
            } else {
                long first = history.isEmpty() ? number : history.get(0).firstNumber();
                KeptLine kept = new KeptLine(number++, first, line);
                history.add(kept);
                missing.add(kept);
            }
        }
        return missing;
    }

    private static void mustBeSame(Line here, Line given) {
        boolean same = here.at().equals(given.at())
                && here.remark().equals(given.remark())
                && here.struck() == given.struck()
                && here.writtenAt().equals(given.writtenAt())
                && Kind.of(here.event()) == Kind.of(given.event())
                && content(here.event()).equals(content(given.event()));
        if (!same) {
            throw new IllegalArgumentException("revision " + given.revision() + " of line " + given.id()
                    + " is here with another content: " + here + " is kept, " + given + " was given");
        }
    }

    private static List<@Nullable Object> content(Event event) {
        return EventTables.of(Kind.of(event)).content(event);
    }

    /** Sets which revision stands, in the lines that got further ones. */
    static void standAgain(Sql sql, String system, List<KeptLine> added, Map<UUID, List<KeptLine>> histories)
            throws SQLException {
        Set<UUID> touched = new LinkedHashSet<>();
        added.forEach(kept -> touched.add(kept.line().id()));
        List<@Nullable Object[]> superseded = new ArrayList<>();
        List<@Nullable Object[]> newest = new ArrayList<>();
        for (UUID id : touched) {
            List<KeptLine> history = histories.getOrDefault(id, List.of());
            superseded.add(new Object[] {system, id.toString()});
            newest.add(new Object[] {history.get(history.size() - 1).number()});
        }
        sql.changeAll("UPDATE line SET stands = 0 WHERE system = ? AND id = ? AND stands = 1", superseded);
        sql.changeAll("UPDATE line SET stands = 1 WHERE line_no = ? AND struck = 0", newest);
    }
}
