package org.tidewright.web.page;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.plan.method.QuantityUnit;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.plan.quantity.SiUnit;
import org.tidewright.plan.quantity.TextUnit;

/**
 * The units a number of a kind may be typed in.
 *
 * @param metric the usual one of a reader who has metric units
 * @param us and of one who has US units
 */
record FieldUnits(List<One> all, One metric, One us) {
    private static final double DAY = 86_400;

    static final FieldUnits VOLUME = of("m^3", "L", "gal", "L", "gal", "mL");
    static final FieldUnits MASS = of("kg", "g", "oz", "g", "kg", "oz", "lb");
    static final FieldUnits AREA = of("m^2", "m²", "ft²", "m²", "ft²");
    static final FieldUnits WATER_A_DAY = of("m^3/s", "L/d", "gal/d", "L/d", "gal/d");
    static final FieldUnits EVAPORATION = of("m^3/s", "L/d", "gal/d", "L/d", "gal/d", "mL/d");
    static final FieldUnits TIME = of("s", "d", "d", "d", "h");
    static final FieldUnits DAYS = of("s", "d", "d", "d");
    static final FieldUnits SHARE = of("1", "%", "%", "%");
    static final FieldUnits POWER = of("W", "W", "W", "W");
    static final FieldUnits WARMTH = warmth();

    /**
     * One unit.
     *
     * @param name in a query
     * @param label as the list shows it
     * @param spellings beside name and label
     * @param toHeld to the coherent unit
     * @param fromHeld back
     */
    record One(
            String name,
            String label,
            List<String> spellings,
            DoubleUnaryOperator toHeld,
            DoubleUnaryOperator fromHeld) {
        /** In proportion: so many of it are one coherent unit. */
        static One of(String name, double inOne, String... spellings) {
            return new One(name, name, List.of(spellings), value -> value / inOne, value -> value * inOne);
        }

        boolean isSpelt(String text) {
            return name.equalsIgnoreCase(text)
                    || label.equalsIgnoreCase(text)
                    || spellings.stream().anyMatch(text::equalsIgnoreCase);
        }

        /** Digits that count. */
        int digits() {
            return digits(4);
        }

        /** So many, but five where all begin with 1.02. */
        int digits(int ordinary) {
            return name.startsWith("SG") ? 5 : ordinary;
        }

        /** In the coherent unit; not a number where the scale does not reach so far. */
        double held(double written) {
            return onScale(toHeld, written);
        }

        /** From the coherent unit; not a number likewise. */
        double written(double held) {
            return onScale(fromHeld, held);
        }

        private static double onScale(DoubleUnaryOperator scale, double value) {
            try {
                return scale.applyAsDouble(value);
            } catch (IllegalArgumentException beyond) {
                return Double.NaN;
            }
        }

        /** A small difference at a number, both in the coherent unit, in this one. */
        double difference(double at, double error) {
            return Math.abs(written(at + error / 2) - written(at - error / 2));
        }

        /** A number in this unit, with it. */
        String told(double written) {
            return told(plain(written, digits()).replace('-', '\u2212'));
        }

        String told(String number) {
            return name.isEmpty() ? number : number + "\u00a0" + label;
        }
    }

    /** As a field shows a number: so many digits that count, no empty decimals. */
    static String plain(double value, int digits) {
        BigDecimal rounded =
                new BigDecimal(value).round(new MathContext(digits)).stripTrailingZeros();
        return rounded.signum() == 0 ? "0" : rounded.toPlainString();
    }

    One usual(UnitSystem system) {
        return system == UnitSystem.US ? us : metric;
    }

    /** All, a reader's usual one first. */
    List<One> usualFirst(UnitSystem system) {
        List<One> sorted = new ArrayList<>(all);
        sorted.remove(usual(system));
        sorted.add(0, usual(system));
        return sorted;
    }

    /** The one to tell bounds in: the metric one where the scale does not reach as far as they do. */
    One reaching(One unit, double least, double most) {
        return Double.isFinite(unit.written(least) + unit.written(most)) ? unit : metric;
    }

    Optional<String> spelt(String text) {
        return all.stream().filter(unit -> unit.isSpelt(text)).map(One::name).findFirst();
    }

    One named(String name) {
        return all.stream().filter(unit -> unit.name.equals(name)).findFirst().orElse(metric);
    }

    /** The first is everybody's usual one. */
    static FieldUnits of(List<One> all) {
        return new FieldUnits(List.copyOf(all), all.get(0), all.get(0));
    }

    /** Two of a kind, which may be the same. */
    static FieldUnits of(One metric, One us) {
        return metric.name.equals(us.name) ? of(List.of(metric)) : new FieldUnits(List.of(metric, us), metric, us);
    }

    /** Those that a measure is told in. */
    static FieldUnits of(Measure measure) {
        return of(one(measure.unit(UnitSystem.METRIC)), one(measure.unit(UnitSystem.US)));
    }

    /** Those that a level of a quantity is read in. */
    static FieldUnits of(WaterQuantity quantity) {
        List<One> all = quantity.units().stream()
                .map(unit -> one(unit, label(quantity, unit), 1))
                .toList();
        return new FieldUnits(
                all,
                all.get(quantity.units().indexOf(quantity.usualUnit(UnitSystem.METRIC))),
                all.get(quantity.units().indexOf(quantity.usualUnit(UnitSystem.US))));
    }

    /** Those that what is added of a quantity a day is told in; held a second. */
    static FieldUnits perDay(WaterQuantity quantity) {
        // On a bent scale, as that of specific gravity, a rise has no one size.
        List<QuantityUnit> even =
                quantity == WaterQuantity.SALINITY ? quantity.units().subList(0, 1) : quantity.units();
        List<One> all =
                even.stream().map(unit -> one(unit, label(quantity, unit), DAY)).toList();
        return of(all);
    }

    private static One one(QuantityUnit unit, String label, double span) {
        return new One(
                unit.symbol(),
                label,
                with(unit.key(), unit.otherSpellings()),
                value -> unit.toHeld(value) / span,
                held -> unit.fromHeld(held * span));
    }

    private static One one(Measure.Unit unit) {
        List<String> plans =
                TextUnit.spelt(unit.symbol()).map(TextUnit::otherSpellings).orElse(List.of());
        return new One(
                unit.symbol(),
                unit.symbol(),
                with(unit.suffix(), plans),
                shown -> (shown - unit.zero()) / unit.factor(),
                unit::shown);
    }

    /** It is read, too, as names in files and queries end: {@code sg_25c_25c}. */
    private static List<String> with(String key, List<String> spellings) {
        List<String> all = new ArrayList<>(spellings);
        all.add(key);
        return List.copyOf(all);
    }

    private static FieldUnits of(String held, String metric, String us, String... names) {
        SiUnit si = SiUnit.of(held);
        List<One> all = new ArrayList<>();
        for (String name : names) {
            TextUnit unit = TextUnit.spelt(name).orElseThrow();
            double size = unit.toSi(1, si);
            String key = name.toLowerCase(Locale.ROOT).replace("/", "_per_");
            all.add(new One(
                    name, label(name), with(key, unit.otherSpellings()), value -> value * size, value -> value / size));
        }
        FieldUnits units = of(all);
        return new FieldUnits(units.all, units.named(metric), units.named(us));
    }

    /** Differences of temperature. */
    private static FieldUnits warmth() {
        return of(One.of("K", 1, "°C", "C"), One.of("°F", 1.8, "F"));
    }

    private static String label(String name) {
        return switch (name) {
            case "d" -> "days";
            case "h" -> "hours";
            case "L/d" -> "L a day";
            case "mL/d" -> "mL a day";
            case "gal/d" -> "gal a day";
            default -> name;
        };
    }

    private static String label(WaterQuantity quantity, QuantityUnit unit) {
        if (quantity == WaterQuantity.SALINITY && unit.symbol().isEmpty()) {
            return "PSU, ppt";
        }
        if (quantity == WaterQuantity.PH) {
            return unit.symbol().isEmpty() ? "NBS, of a meter" : unit.symbol() + " scale";
        }
        return unit.symbol().replace("CaCO3", "CaCO₃").replace("NO3", "NO₃").replace("PO4", "PO₄");
    }
}
