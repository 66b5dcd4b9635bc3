package org.tidewright.web.page;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.plan.model.UnitSystem;

/**
 * An amount of a form: what was typed with its unit, what is reckoned with, and what is wrong. A value the page knew already
 * says where from; one that cannot be is reckoned with by nobody.
 *
 * @param name in the query; the unit's ends in {@code _unit}
 * @param text as the field shows it
 * @param value in the coherent unit; NaN where there is none, or a fault
 * @param known what was filled in and still stands; null for what was typed, or nothing
 * @param note beside the field: where its value is from, or what the field wants
 * @param fault what is wrong; empty for nothing
 */
public record AmountField(
        String name,
        String label,
        String text,
        List<Choice.Option> units,
        double value,
        @Nullable Known known,
        String note,
        String fault) {
    /** Digits that count of a value that is filled in. */
    private static final int SHOWN = 3;

    /**
     * A value the page knows.
     *
     * @param unit name of the unit it stands in; empty for the reader's usual one
     * @param from where from: {@code from the plan}
     */
    record Known(double value, String unit, String from) {
        /** As the field shows it; empty where the unit's scale does not reach so far. */
        private String text(FieldUnits.One unit) {
            double written = unit.written(value);
            return Double.isFinite(written) ? FieldUnits.plain(written, unit.digits(SHOWN)) : "";
        }
    }

    /** What a field asks for, and bounds in the coherent unit. */
    record Asked(String name, String label, FieldUnits units, UnitSystem reader, double least, double most) {
        /** In both units of a measure. */
        static Asked of(String name, String label, Measure measure, UnitSystem reader, double least, double most) {
            return new Asked(name, label, FieldUnits.of(measure), reader, least, most);
        }

        /** In every unit a reading of it may be written in. */
        static Asked of(
                String name, String label, WaterQuantity quantity, UnitSystem reader, double least, double most) {
            return new Asked(name, label, FieldUnits.of(quantity), reader, least, most);
        }

        /** The unit it stands in until another is chosen. */
        private FieldUnits.One usual(@Nullable Known known) {
            String name = known == null ? "" : known.unit();
            return units.all().stream()
                    .filter(unit -> !name.isEmpty() && unit.name().equals(name))
                    .findFirst()
                    .orElse(units.usual(reader));
        }

        private boolean allows(double value) {
            double slack = 1e-9 * Math.max(Math.abs(least), Math.abs(most));
            return value >= least - slack && value <= most + slack;
        }

        private List<Choice.Option> options(FieldUnits.One chosen) {
            return units.usualFirst(reader).stream()
                    .map(unit -> new Choice.Option(unit.name(), unit.label(), unit.equals(chosen)))
                    .toList();
        }

        private String unread(String text) {
            String labels = String.join(
                    " or ",
                    units.usualFirst(reader).stream()
                            .map(FieldUnits.One::label)
                            .filter(label -> !label.isEmpty())
                            .toList());
            return "Found “" + Entry.shortened(text) + "”; expected a number"
                    + (labels.isEmpty() ? "" : " in " + labels) + ".";
        }

        private String outside(String digits, FieldUnits.One unit) {
            FieldUnits.One scale = units.reaching(unit, least, most);
            return "Found " + unit.told(Entry.shortened(digits)) + "; expected from " + scale.told(scale.written(least))
                    + " to " + scale.told(scale.written(most)) + ". Is the unit right?";
        }
    }

    public boolean faulty() {
        return !fault.isEmpty();
    }

    boolean isGiven() {
        return !Double.isNaN(value);
    }

    /** The one unit, without choice. */
    public String unit() {
        return units.get(0).words();
    }

    /**
     * Reads it from a query.
     *
     * @param known what stands in it until something else is typed; null for nothing
     * @param wants what it wants, where nothing is known
     */
    static AmountField read(Levers.Query query, Asked asked, @Nullable Known known, String wants) {
        String text = query.get(asked.name());
        FieldUnits.One usual = asked.usual(known);
        TypedNumber typed = TypedNumber.of(
                text == null ? "" : text, query.get(asked.name() + "_unit"), usual.name(), asked.units()::spelt);
        FieldUnits.One unit = asked.units().named(typed.unit());
        if (typed.read().isEmpty()) {
            return untouched(asked, known, unit, wants);
        }
        if (typed.digits().isEmpty()) {
            return faulty(asked, typed, unit, asked.unread(typed.read()));
        }
        // The number that was filled in comes back: in another unit only where units were changed in between.
        if (known != null && typed.digits().equals(known.text(unit))) {
            return untouched(asked, known, usual, wants);
        }
        double value = unit.held(typed.number().orElse(Double.NaN));
        if (!asked.allows(value)) {
            return faulty(asked, typed, unit, asked.outside(typed.digits(), unit));
        }
        return new AmountField(asked.name(), asked.label(), typed.digits(), asked.options(unit), value, null, "", "");
    }

    private static AmountField untouched(Asked asked, @Nullable Known known, FieldUnits.One unit, String wants) {
        if (known == null) {
            return new AmountField(asked.name(), asked.label(), "", asked.options(unit), Double.NaN, null, wants, "");
        }
        FieldUnits.One scale = asked.units().reaching(unit, known.value(), known.value());
        return new AmountField(
                asked.name(),
                asked.label(),
                known.text(scale),
                asked.options(scale),
                known.value(),
                known,
                known.from(),
                "");
    }

    private static AmountField faulty(Asked asked, TypedNumber typed, FieldUnits.One unit, String fault) {
        return new AmountField(
                asked.name(), asked.label(), typed.text(), asked.options(unit), Double.NaN, null, "", fault);
    }

    /** The same field, found wrong beside others. */
    AmountField refused(String why) {
        return new AmountField(name, label, text, units, Double.NaN, null, "", why);
    }
}
