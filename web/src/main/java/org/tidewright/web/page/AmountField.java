package org.tidewright.web.page;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.plan.method.QuantityUnit;
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
        List<Unit> units,
        double value,
        @Nullable Known known,
        String note,
        String fault) {
    private static final Pattern NUMBER =
            Pattern.compile("([-+]?(?:\\d+(?:\\.\\d*)?|\\.\\d+)(?:[eE][-+]?\\d+)?)\\s*(\\D.*)?");

    /** Some telephones offer a comma alone; with three digits behind it, it may as well part thousands. */
    private static final Pattern DECIMAL_COMMA = Pattern.compile("([-+]?\\d+),(\\d{1,2}|\\d{4,})(\\D.*)?");

    private static final MathContext THREE_DIGITS = new MathContext(3);
    private static final char NO_BREAK = '\u00a0';

    /** A unit of the field, with the way from the coherent one and back. */
    public record Unit(
            String key, String label, DoubleUnaryOperator toShown, DoubleUnaryOperator toHeld, boolean chosen) {
        /** In proportion: shown = value × factor. */
        static Unit of(String key, String label, double factor) {
            return new Unit(key, label, value -> value * factor, shown -> shown / factor, false);
        }

        private static Unit of(Measure.Unit unit) {
            return new Unit(
                    unit.suffix(), unit.symbol(), unit::shown, shown -> (shown - unit.zero()) / unit.factor(), false);
        }

        private static Unit of(QuantityUnit unit) {
            return new Unit(unit.key(), unit.symbol(), unit::fromHeld, unit::toHeld, false);
        }

        /** As the list shows it. */
        public String words() {
            return switch (key) {
                case "pss" -> "PSU, ppt";
                case "nbs" -> "NBS, of a meter";
                case "total" -> "total scale";
                default -> label;
            };
        }

        private Unit chosenIf(boolean yes) {
            return new Unit(key, label, toShown, toHeld, yes);
        }

        private double shown(double value) {
            return toShown.applyAsDouble(value);
        }

        private double held(double shown) {
            return toHeld.applyAsDouble(shown);
        }

        private boolean isSpelt(String spelling) {
            return spelling.equalsIgnoreCase(label) || spelling.equalsIgnoreCase(key);
        }

        private String told(double value) {
            return (plain(shown(value)).replace('-', '\u2212') + NO_BREAK + label).strip();
        }
    }

    /**
     * A value the page knows.
     *
     * @param unit key of the unit it stands in; empty for the reader's
     * @param from where from: {@code from the plan}
     */
    record Known(double value, String unit, String from) {}

    /** What a field asks for: its units with the reader's first, and bounds in the coherent unit. */
    record Asked(String name, String label, List<Unit> units, double least, double most) {
        /** In both units of a measure, the reader's first. */
        static Asked of(String name, String label, Measure measure, UnitSystem system, double least, double most) {
            Measure.Unit metric = measure.unit(UnitSystem.METRIC);
            Measure.Unit us = measure.unit(UnitSystem.US);
            List<Unit> units = metric.symbol().equals(us.symbol())
                    ? List.of(Unit.of(metric))
                    : system == UnitSystem.US
                            ? List.of(Unit.of(us), Unit.of(metric))
                            : List.of(Unit.of(metric), Unit.of(us));
            return new Asked(name, label, units, least, most);
        }

        /** In one unit: shown = value × factor. */
        static Asked of(
                String name, String label, String key, String symbol, double factor, double least, double most) {
            return new Asked(name, label, List.of(Unit.of(key, symbol, factor)), least, most);
        }

        /** In every unit a reading of it may be written in, the reader's usual one first. */
        static Asked of(
                String name, String label, WaterQuantity quantity, UnitSystem system, double least, double most) {
            QuantityUnit usual = quantity.usualUnit(system);
            List<Unit> units = new ArrayList<>();
            units.add(Unit.of(usual));
            quantity.units().stream()
                    .filter(unit -> !unit.equals(usual))
                    .map(Unit::of)
                    .forEach(units::add);
            return new Asked(name, label, List.copyOf(units), least, most);
        }
    }

    public boolean faulty() {
        return !fault.isEmpty();
    }

    boolean isGiven() {
        return !Double.isNaN(value);
    }

    /** The value of one unit, without choice. */
    public String unit() {
        return units.get(0).label();
    }

    /**
     * Reads it from a query.
     *
     * @param known what stands in it until something else is typed; null for nothing
     * @param wants what it wants, where nothing is known
     */
    static AmountField read(Levers.Query query, Asked asked, @Nullable Known known, String wants) {
        String typed = query.get(asked.name());
        String plain = typed == null ? "" : plainly(typed);
        Unit unit = unit(asked, query.get(asked.name() + "_unit"), known);
        if (plain.isEmpty()) {
            return untouched(asked, known, unit, wants);
        }
        Matcher matcher = NUMBER.matcher(plain);
        String spelling =
                matcher.matches() && matcher.group(2) != null ? matcher.group(2).strip() : "";
        Unit spelt = unit;
        for (Unit each : asked.units()) {
            spelt = !spelling.isEmpty() && each.isSpelt(spelling) ? each : spelt;
        }
        if (!matcher.matches() || (!spelling.isEmpty() && !spelt.isSpelt(spelling))) {
            return faulty(
                    asked,
                    typed,
                    unit,
                    "Found “" + Entry.shortened(typed) + "”; expected a number"
                            + (labels(asked).isEmpty() ? "" : " in " + labels(asked)) + ".");
        }
        String number = matcher.group(1);
        // The number that was filled in comes back: in the other unit only where the reader changed units in between.
        if (known != null && number.equals(plain(spelt.shown(known.value())))) {
            return untouched(asked, known, unit(asked, known), wants);
        }
        double value = spelt.held(Double.parseDouble(number));
        double slack = 1e-9 * Math.max(Math.abs(asked.least()), Math.abs(asked.most()));
        if (!(value >= asked.least() - slack && value <= asked.most() + slack)) {
            return faulty(
                    asked,
                    typed,
                    spelt,
                    "Found " + Entry.shortened(number) + NO_BREAK + spelt.label()
                            + "; expected from " + spelt.told(asked.least()) + " to " + spelt.told(asked.most())
                            + ". Is the unit right?");
        }
        return new AmountField(asked.name(), asked.label(), number, chosen(asked, spelt), value, null, "", "");
    }

    private static AmountField untouched(Asked asked, @Nullable Known known, Unit unit, String wants) {
        if (known == null) {
            return new AmountField(asked.name(), asked.label(), "", chosen(asked, unit), Double.NaN, null, wants, "");
        }
        return new AmountField(
                asked.name(),
                asked.label(),
                plain(unit.shown(known.value())),
                chosen(asked, unit),
                known.value(),
                known,
                known.from(),
                "");
    }

    private static AmountField faulty(Asked asked, @Nullable String typed, Unit unit, String fault) {
        String text = typed == null ? "" : typed.strip();
        return new AmountField(asked.name(), asked.label(), text, chosen(asked, unit), Double.NaN, null, "", fault);
    }

    /** The same field, found wrong beside others. */
    AmountField refused(String why) {
        return new AmountField(name, label, text, units, Double.NaN, null, "", why);
    }

    private static String plainly(String typed) {
        String plain = typed.strip().replace('\u2212', '-');
        Matcher comma = DECIMAL_COMMA.matcher(plain);
        if (!comma.matches()) {
            return plain;
        }
        return comma.group(1) + "." + comma.group(2) + (comma.group(3) == null ? "" : comma.group(3));
    }

    private static Unit unit(Asked asked, @Nullable String key, @Nullable Known known) {
        for (Unit each : asked.units()) {
            if (each.key().equals(key)) {
                return each;
            }
        }
        return known == null ? asked.units().get(0) : unit(asked, known);
    }

    private static Unit unit(Asked asked, Known known) {
        for (Unit each : asked.units()) {
            if (each.key().equals(known.unit())) {
                return each;
            }
        }
        return asked.units().get(0);
    }

    private static List<Unit> chosen(Asked asked, Unit unit) {
        return asked.units().stream()
                .map(each -> each.chosenIf(each.key().equals(unit.key())))
                .toList();
    }

    private static String labels(Asked asked) {
        return String.join(
                " or ",
                asked.units().stream()
                        .map(Unit::label)
                        .filter(label -> !label.isEmpty())
                        .toList());
    }

    /** Three digits that count. */
    private static String plain(double shown) {
        BigDecimal rounded = new BigDecimal(shown).round(THREE_DIGITS).stripTrailingZeros();
        return rounded.signum() == 0 ? "0" : rounded.toPlainString().toLowerCase(Locale.ROOT);
    }
}
