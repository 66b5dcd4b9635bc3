package org.tidewright.web.page;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.spreadsheet.Kept;
import org.tidewright.husbandry.spreadsheet.Mapping;
import org.tidewright.husbandry.spreadsheet.Measured;
import org.tidewright.husbandry.spreadsheet.Named;
import org.tidewright.husbandry.spreadsheet.Proposal;
import org.tidewright.plan.method.QuantityUnit;
import org.tidewright.plan.method.TestMethod;
import org.tidewright.plan.method.TestMethods;
import org.tidewright.plan.method.WaterQuantity;

/** What stands in the fields of the import page before anybody has chosen: the proposal, with its guesses left open. */
final class ImportDefaults {
    /** Wider sheets than this are no log; the form would have more fields than it may. */
    static final int MOST_COLUMNS = 200;

    private ImportDefaults() {}

    /** Columns that hold anything, by number. */
    static List<Integer> columns(Proposal proposal) {
        TreeSet<Integer> columns = new TreeSet<>(proposal.labels().keySet());
        for (int column = 1; column <= MOST_COLUMNS; column++) {
            if (proposal.ofColumn(column).isPresent()) {
                columns.add(column);
            }
        }
        return columns.headSet(MOST_COLUMNS, true).stream().toList();
    }

    static Map<String, String> of(Proposal proposal) {
        Mapping mapping = proposal.mapping();
        Map<String, String> values = new LinkedHashMap<>();
        values.put("order", lower(mapping.times().order()));
        values.put("decimal", lower(mapping.decimal()));
        values.put("time_of_day", mapping.times().timeOfDay().toString());
        values.put("carried", mapping.times().carriedDown() ? "yes" : "");
        values.put("rows", mapping.rows().sure() ? "all" : "");
        values.put("leave_out", mapping.leaveBadCellsOut() ? "yes" : "");
        Named named = mapping.named();
        if (named == null) {
            for (int column : columns(proposal)) {
                part(values, "column_" + column, column, mapping);
            }
        } else {
            int i = 0;
            for (Optional<Measured> meaning : named.names().values()) {
                measured(values, "name_" + i, meaning.orElse(null));
                i++;
            }
        }
        return values;
    }

    private static void part(Map<String, String> values, String field, int column, Mapping mapping) {
        measured(values, field, mapping.columns().get(column));
        if (column == mapping.times().dateColumn()) {
            values.put(field, ImportForm.DATE);
        } else if (Integer.valueOf(column).equals(mapping.times().timeColumn())) {
            values.put(field, ImportForm.TIME);
        } else if (Integer.valueOf(column).equals(mapping.remarkColumn())) {
            values.put(field, ImportForm.REMARK);
        }
    }

    private static void measured(Map<String, String> values, String field, @Nullable Measured guess) {
        boolean open = guess != null && !guess.sure();
        values.put(field, guess == null ? ImportForm.LEFT_OUT : open ? "" : ImportForm.value(guess));
        values.put("method_" + field, guess == null || guess.method() == null ? "" : guess.method());
        values.put("kept_" + field, lower(guess == null ? Kept.BY_PACE : guess.kept()));
        values.put("place_" + field, guess == null ? "tank" : guess.place());
    }

    /** What a choice such as {@code alkalinity dkh} means; empty for a column that holds no readings. */
    static Optional<Measured> measured(String value) {
        String[] keys = value.split(" ", 2);
        WaterQuantity quantity =
                keys.length < 2 ? null : WaterQuantity.ofKey(keys[0]).orElse(null);
        QuantityUnit unit =
                quantity == null ? null : quantity.unitOfKey(keys[1]).orElse(null);
        return quantity == null || unit == null
                ? Optional.empty()
                : Optional.of(new Measured(quantity, unit, null, "tank", Kept.BY_PACE, true));
    }

    static List<String> methods(WaterQuantity quantity) {
        return TestMethods.of(quantity).stream().map(TestMethod::key).toList();
    }

    /** Every quantity in each of its units, as groups of a list. */
    static List<Select.Group> quantities(String chosen) {
        return Arrays.stream(WaterQuantity.values())
                .map(quantity -> Select.group(
                        quantity.words(),
                        chosen,
                        quantity.units().stream()
                                .flatMap(unit -> Stream.of(
                                        quantity.key() + " " + unit.key(), quantity.words() + " in " + name(unit)))
                                .toList()))
                .toList();
    }

    static String name(QuantityUnit unit) {
        return unit.symbol().isEmpty() ? unit.key().toUpperCase(Locale.ROOT) : unit.symbol();
    }

    private static String lower(@Nullable Enum<?> constant) {
        return constant == null ? "" : constant.name().toLowerCase(Locale.ROOT);
    }
}
