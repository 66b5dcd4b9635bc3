package org.tidewright.web.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.limit.Keeping;
import org.tidewright.husbandry.mixing.Given;
import org.tidewright.plan.model.UnitSystem;

/**
 * Reads the fields of a question from a query, one after the other, and remembers how they are to be shown. A field the query
 * does not have begins with what is given; one that it has and leaves empty is empty. What cannot be read is marked, and
 * then nothing should be worked out.
 */
final class MixingFields {
    private final Levers.Query query;
    private final UnitSystem reader;
    private final List<MixingItem.Group> groups = new ArrayList<>();
    private final List<String> wanting = new ArrayList<>();
    private List<MixingItem> items = new ArrayList<>();
    private boolean opened;
    private int faults;

    MixingFields(Levers.Query query, UnitSystem reader) {
        this.query = query;
        this.reader = reader;
    }

    /**
     * A number as it was read.
     *
     * @param value in the coherent unit; empty where nothing was typed or it cannot be read
     * @param given whether it is what was given, and so known as well as that; null otherwise
     */
    record Value(OptionalDouble value, @Nullable Given given, boolean typed) {
        /** Whether nobody has told it yet, neither log nor plan nor the keeper; an emptied field is a fault. */
        boolean isWanting(@Nullable String asked) {
            return asked == null && value.isEmpty();
        }

        double error() {
            return given == null ? 0 : given.standardError();
        }

        /** Not a number where it was not read; the form is not sound then. */
        double orNone() {
            return value.orElse(Double.NaN);
        }
    }

    /** Bounds of a number in the coherent unit, and what slip is likely behind one outside. */
    record Range(double least, double most, String slip) {}

    /** A word of the query that is no field; null where it has none. */
    @Nullable
    String text(String name) {
        return query.get(name);
    }

    /** Begins a group. */
    void group(String legend) {
        items = new ArrayList<>();
        groups.add(new MixingItem.Group("group-" + (groups.size() + 1), legend, false, true, items));
    }

    /** Begins a group that is folded unless something of it was typed or cannot be read. */
    void foldedGroup(String legend) {
        group(legend);
        opened = false;
    }

    /** Ends a folded group. */
    void fold() {
        MixingItem.Group last = groups.remove(groups.size() - 1);
        groups.add(new MixingItem.Group(last.key(), last.legend(), true, opened, last.items()));
    }

    /** A number that must be there. */
    Value needed(String name, String label, FieldUnits units, @Nullable Given given, Range range) {
        return row(name, label, units, given, range, true, "");
    }

    /** A number that may be left out. */
    Value optional(String name, String label, FieldUnits units, @Nullable Given given, Range range, String empty) {
        return row(name, label, units, given, range, false, empty);
    }

    private Value row(
            String name,
            String label,
            FieldUnits units,
            @Nullable Given given,
            Range range,
            boolean needed,
            String empty) {
        Draft draft = read(name, label, units, name + "_unit", given, range, needed, empty);
        if (needed && draft.number.isWanting(query.get(name))) {
            wanting.add(label.toLowerCase(Locale.ROOT));
        }
        items.add(new MixingItem.Row(label, List.of(draft.cell), name + "_unit", units(units, draft.unit)));
        return draft.number;
    }

    /**
     * Two numbers of a kind side by side.
     *
     * @param labels of the two, the name of what they are of before them
     */
    List<Value> pair(
            String name,
            String label,
            FieldUnits units,
            List<String> names,
            List<String> labels,
            List<@Nullable Given> given,
            List<Range> ranges,
            boolean needed) {
        String unitName = name + "_unit";
        List<Value> numbers = new ArrayList<>();
        List<MixingItem.Cell> cells = new ArrayList<>();
        String unit = units.usual(reader).name();
        for (int i = 0; i < names.size(); i++) {
            String empty = needed ? "" : "Not known.";
            Draft draft =
                    read(names.get(i), labels.get(i), units, unitName, given.get(i), ranges.get(i), needed, empty);
            if (needed && draft.number.isWanting(query.get(names.get(i)))) {
                wanting.add(
                        label.toLowerCase(Locale.ROOT) + ", " + labels.get(i).toLowerCase(Locale.ROOT));
            }
            numbers.add(draft.number);
            cells.add(draft.cell);
            unit = draft.unit;
        }
        items.add(new MixingItem.Row(label, cells, unitName, units(units, unit)));
        return numbers;
    }

    private record Draft(Value number, MixingItem.Cell cell, String unit) {}

    private Draft read(
            String name,
            String label,
            FieldUnits units,
            String unitName,
            @Nullable Given given,
            Range range,
            boolean needed,
            String empty) {
        FieldUnits.One usual = units.usual(reader);
        String asked = query.get(name);
        String begins = given == null ? "" : MixingNotes.begun(given, usual);
        String beside = asked == null ? usual.name() : query.get(unitName);
        TypedNumber typed = TypedNumber.of(asked == null ? begins : asked, beside, usual.name(), units::spelt);
        FieldUnits.One unit = units.named(typed.unit());
        String fault = "";
        OptionalDouble value = OptionalDouble.empty();
        if (typed.number().isPresent()) {
            double held = unit.held(typed.number().getAsDouble());
            if (held >= range.least() && held <= range.most()) {
                value = OptionalDouble.of(held);
            } else {
                fault = MixingNotes.outside(typed.number().getAsDouble(), units, unit, range);
            }
        } else if (!typed.read().isEmpty()) {
            fault = MixingNotes.unread(typed.read(), begins, units);
        } else if (needed && asked != null) {
            fault = "Needed: nothing can be worked out without it.";
        }
        boolean begun = given != null && isSame(value, given, unit);
        Value number = new Value(value, begun ? given : null, asked != null && !asked.isBlank() && !begun);
        opened |= number.typed || !fault.isEmpty();
        if (!fault.isEmpty()) {
            faults++;
        }
        boolean signed = unit.written(range.least()) < 0;
        String note = typed.read().isEmpty() && given == null ? empty : MixingNotes.of(given, begun, unit);
        return new Draft(number, new MixingItem.Cell(name, label, typed.text(), signed, note, fault), unit.name());
    }

    /** Whether it is the number a field begins with, as far as that was shown. */
    private static boolean isSame(OptionalDouble value, Given given, FieldUnits.One unit) {
        double begun = unit.held(Double.parseDouble(MixingNotes.begun(given, unit)));
        return value.isPresent() && Math.abs(value.getAsDouble() - begun) <= 1e-9 * Math.max(1e-9, Math.abs(begun));
    }

    private static List<MixingItem.Unit> units(FieldUnits units, String chosen) {
        return units.all().stream()
                .map(unit -> new MixingItem.Unit(
                        unit.name(), unit.label(), unit.name().equals(chosen)))
                .toList();
    }

    /** One of a few. */
    Choice choice(String name, String legend, String usual, List<String> valuesAndWords, String note) {
        Choice choice = Choice.read(query, name, legend, usual, valuesAndWords);
        items.add(new MixingItem.Pick(choice, note));
        return choice;
    }

    /** One of several. */
    Choice menu(String name, String legend, String usual, List<String> valuesAndWords, Function<Choice, String> note) {
        Choice choice = Choice.read(query, name, legend, usual, valuesAndWords);
        items.add(new MixingItem.Menu(choice, note.apply(choice)));
        return choice;
    }

    /** Who lives there, by which the pace is judged. */
    Keeping keeping(Keeping planned) {
        List<String> all = new ArrayList<>();
        for (Keeping keeping : Keeping.values()) {
            all.add(keeping.name().toLowerCase(Locale.ROOT));
            all.add(keeping.words());
        }
        String usual = planned.name().toLowerCase(Locale.ROOT);
        String asked = query.get("keeping");
        boolean begun = asked == null || asked.isBlank() || asked.equals(usual);
        Choice choice = menu(
                "keeping",
                "Who lives in it",
                usual,
                all,
                any -> begun ? "From your plan." : "Chosen; your plan has " + planned.words() + ".");
        return Keeping.valueOf(choice.chosen().toUpperCase(Locale.ROOT));
    }

    /** Marks a field that was read, for how it goes with others. */
    void fault(String name, String words) {
        faults++;
        for (MixingItem.Group group : groups) {
            group.items().replaceAll(item -> item instanceof MixingItem.Row row ? marked(row, name, words) : item);
        }
    }

    private static MixingItem.Row marked(MixingItem.Row row, String name, String words) {
        List<MixingItem.Cell> cells = row.cells().stream()
                .map(cell -> cell.name().equals(name)
                        ? new MixingItem.Cell(name, cell.label(), cell.text(), cell.signed(), cell.note(), words)
                        : cell)
                .toList();
        return new MixingItem.Row(row.label(), cells, row.unitName(), row.units());
    }

    List<MixingItem.Group> groups() {
        return groups.stream()
                .map(group -> new MixingItem.Group(
                        group.key(), group.legend(), group.folded(), group.open(), List.copyOf(group.items())))
                .toList();
    }

    int faults() {
        return faults;
    }

    /** What neither log nor plan tells and nobody has typed yet. */
    List<String> wanting() {
        return List.copyOf(wanting);
    }

    /** Whether all can be worked out. */
    boolean isSound() {
        return faults == 0 && wanting.isEmpty();
    }
}
