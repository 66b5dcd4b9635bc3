package org.tidewright.store.journal;

import java.sql.SQLException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.husbandry.journal.Event.WaterChanged;
import org.tidewright.husbandry.journal.Kind;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.store.database.Keepable;
import org.tidewright.store.database.Sql;

/** Water changes, and what is known of their new water: as many rows of {@code new_water}. */
final class WaterChangeTable extends EventTable<WaterChanged> {
    WaterChangeTable() {
        super(
                Kind.WATER_CHANGE,
                WaterChanged.class,
                List.of("volume_m3"),
                changed -> row(changed.volume()),
                row -> new WaterChanged(row.number("volume_m3"), Map.of()));
    }

    @Override
    void insert(Sql sql, Map<Long, Event> events) throws SQLException {
        super.insert(sql, events);
        List<@Nullable Object[]> rows = new ArrayList<>();
        events.forEach((number, event) -> ((WaterChanged) event)
                .newWater()
                .forEach((quantity, value) -> rows.add(new Object[] {number, quantity.key(), value, quantity.held()})));
        sql.changeAll("INSERT INTO new_water (line_no, quantity, value, unit) VALUES (?, ?, ?, ?)", rows);
    }

    @Override
    Map<Long, WaterChanged> find(Sql sql, Condition condition) throws SQLException {
        Map<Long, Map<WaterQuantity, Double>> newWater = new HashMap<>();
        sql.each(
                "SELECT new_water.* FROM line JOIN new_water ON new_water.line_no = line.line_no WHERE "
                        + condition.sql(),
                row -> {
                    WaterQuantity quantity = EventTables.quantity(row);
                    newWater.computeIfAbsent(row.whole("line_no"), number -> new EnumMap<>(WaterQuantity.class))
                            .put(quantity, row.number("value"));
                    return true;
                },
                condition.values().toArray());
        Map<Long, WaterChanged> changes = super.find(sql, condition);
        changes.replaceAll(
                (number, changed) -> new WaterChanged(changed.volume(), newWater.getOrDefault(number, Map.of())));
        return changes;
    }

    @Override
    List<@Nullable Object> content(Event event) {
        List<@Nullable Object> content = super.content(event);
        Map<WaterQuantity, @Nullable Object> newWater = new EnumMap<>(WaterQuantity.class);
        ((WaterChanged) event).newWater().forEach((quantity, value) -> newWater.put(quantity, Keepable.of(value)));
        content.add(newWater);
        return content;
    }
}
