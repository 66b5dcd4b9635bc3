package org.tidewright.store.journal;

import java.sql.SQLDataException;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.husbandry.journal.Event.AnimalsChecked;
import org.tidewright.husbandry.journal.Kind;
import org.tidewright.husbandry.journal.Sign;
import org.tidewright.store.database.Row;
import org.tidewright.store.database.Sql;

/** Checks of animals, and the signs that were seen: as many rows of {@code animal_sign}. */
final class AnimalCheckTable extends EventTable<AnimalsChecked> {
    AnimalCheckTable() {
        super(
                Kind.ANIMAL_CHECK,
                AnimalsChecked.class,
                List.of("animal", "ate", "breaths_per_minute"),
                check ->
                        row(check.animal(), check.appetite().name().toLowerCase(Locale.ROOT), check.breathsPerMinute()),
                row -> new AnimalsChecked(
                        row.textOrNone("animal"),
                        Event.Appetite.valueOf(row.text("ate").toUpperCase(Locale.ROOT)),
                        breaths(row),
                        Set.of()));
    }

    private static @Nullable Integer breaths(Row row) throws SQLException {
        Long breaths = row.wholeOrNone("breaths_per_minute");
        return breaths == null ? null : Integer.valueOf(breaths.intValue());
    }

    @Override
    void insert(Sql sql, Map<Long, Event> events) throws SQLException {
        super.insert(sql, events);
        List<@Nullable Object[]> rows = new ArrayList<>();
        events.forEach((number, event) ->
                ((AnimalsChecked) event).signs().forEach(sign -> rows.add(new Object[] {number, sign.key()})));
        sql.changeAll("INSERT INTO animal_sign (line_no, sign) VALUES (?, ?)", rows);
    }

    @Override
    Map<Long, AnimalsChecked> find(Sql sql, Condition condition) throws SQLException {
        Map<Long, Set<Sign>> signs = new HashMap<>();
        sql.each(
                "SELECT animal_sign.* FROM line JOIN animal_sign ON animal_sign.line_no = line.line_no WHERE "
                        + condition.sql(),
                row -> {
                    signs.computeIfAbsent(row.whole("line_no"), number -> EnumSet.noneOf(Sign.class))
                            .add(sign(row.text("sign")));
                    return true;
                },
                condition.values().toArray());
        Map<Long, AnimalsChecked> checks = super.find(sql, condition);
        checks.replaceAll((number, check) -> new AnimalsChecked(
                check.animal(), check.appetite(), check.breathsPerMinute(), signs.getOrDefault(number, Set.of())));
        return checks;
    }

    private static Sign sign(String key) throws SQLException {
        return Sign.ofKey(key).orElseThrow(() -> new SQLDataException("no sign of illness is called “" + key + "”"));
    }

    @Override
    List<@Nullable Object> content(Event event) {
        List<@Nullable Object> content = super.content(event);
        content.add(((AnimalsChecked) event).signs());
        return content;
    }
}
