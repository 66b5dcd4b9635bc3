package org.tidewright.husbandry.spreadsheet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * What stands where in a sheet. A page or {@link MappingText} shows it and changes it.
 *
 * @param decimal null while that is for the keeper to say
 * @param columns what the numbers of a column are, by its number counted from 1; columns that are left out are not there
 * @param named null where each column is a quantity of its own
 * @param remarkColumn of the keeper's notes; null for none
 * @param leaveBadCellsOut whether cells that cannot be meant are passed over; otherwise one of them stops the whole
 */
public record Mapping(
        Layout layout,
        Times times,
        @Nullable DecimalSign decimal,
        SortedMap<Integer, Measured> columns,
        @Nullable Named named,
        @Nullable Integer remarkColumn,
        RowChoice rows,
        boolean leaveBadCellsOut) {
    public Mapping {
        columns = Collections.unmodifiableSortedMap(new TreeMap<>(columns));
    }

    /** What the keeper still has to say, a sentence each; nothing is taken in while there is any. */
    public List<String> questions() {
        List<String> questions = new ArrayList<>();
        if (times.order() == null) {
            questions.add("In which order do day, month and year stand?");
        }
        if (decimal == null) {
            questions.add("Do the numbers have a decimal point or a decimal comma?");
        }
        if (!rows.sure()) {
            questions.add("Are all rows of this system? Column " + rows.column() + " may name others.");
        }
        columns.forEach((column, measured) -> {
            if (!measured.sure()) {
                questions.add("Is column " + column + " " + told(measured) + "?");
            }
        });
        if (named != null) {
            named.names()
                    .forEach((name, meaning) -> meaning.filter(measured -> !measured.sure())
                            .ifPresent(measured -> questions.add("Is “" + name + "” " + told(measured) + "?")));
        }
        return questions;
    }

    static String told(Measured measured) {
        String unit = measured.unit().symbol().isEmpty()
                ? measured.unit().key()
                : measured.unit().symbol();
        return measured.quantity().words() + " in " + unit;
    }

    /** With every guess taken as right; what was not guessed stays open. */
    public Mapping confirmed() {
        TreeMap<Integer, Measured> sure = new TreeMap<>();
        columns.forEach((column, measured) -> sure.put(column, measured.confirmed()));
        Named names = named;
        if (names != null) {
            Map<String, Optional<Measured>> byName = new LinkedHashMap<>();
            names.names().forEach((name, meaning) -> byName.put(name, meaning.map(Measured::confirmed)));
            names = new Named(names.nameColumn(), names.valueColumn(), names.unitColumn(), byName);
        }
        RowChoice all = rows.sure() ? rows : RowChoice.ALL;
        return new Mapping(layout, times, decimal, sure, names, remarkColumn, all, leaveBadCellsOut);
    }

    /** With dates read in this order. */
    public Mapping with(DateOrder order) {
        return new Mapping(layout, times.with(order), decimal, columns, named, remarkColumn, rows, leaveBadCellsOut);
    }

    /** With numbers read with this sign. */
    public Mapping with(DecimalSign sign) {
        return new Mapping(layout, times, sign, columns, named, remarkColumn, rows, leaveBadCellsOut);
    }

    /** With these rows only. */
    public Mapping with(RowChoice chosen) {
        return new Mapping(layout, times, decimal, columns, named, remarkColumn, chosen, leaveBadCellsOut);
    }

    /** With a column told anew. */
    public Mapping with(int column, Measured measured) {
        TreeMap<Integer, Measured> changed = new TreeMap<>(columns);
        changed.put(column, measured);
        return new Mapping(layout, times, decimal, changed, named, remarkColumn, rows, leaveBadCellsOut);
    }

    /** With cells that cannot be meant passed over. */
    public Mapping leavingBadCellsOut() {
        return new Mapping(layout, times, decimal, columns, named, remarkColumn, rows, true);
    }
}
