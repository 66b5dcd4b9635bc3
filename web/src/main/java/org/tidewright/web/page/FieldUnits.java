package org.tidewright.web.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
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
    static final FieldUnits EVAPORATION = of("m^3/s", "L/d", "gal/d", "L/d", "gal/d", "mL/d");
    static final FieldUnits TIME = of("s", "d", "d", "d", "h");
    static final FieldUnits SHARE = of("1", "%", "%", "%");
    static final FieldUnits POWER = of("W", "W", "W", "W");
    static final FieldUnits WARMTH = warmth();

    /**
     * One unit.
     *
     * @param name in a query
     * @param label as the list shows it
     * @param spellings beside the name
     * @param toHeld to the coherent unit
     * @param fromHeld back
     */
    record One(
            String name,
            String label,
            List<String> spellings,
            DoubleUnaryOperator toHeld,
            DoubleUnaryOperator fromHeld) {
        boolean isSpelt(String text) {
            return name.equalsIgnoreCase(text) || spellings.stream().anyMatch(text::equalsIgnoreCase);
        }

        /** Digits that count: one more where they all begin with 1.02. */
        int digits() {
            return name.startsWith("SG") ? 5 : 4;
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
    }

    One usual(UnitSystem system) {
        return system == UnitSystem.US ? us : metric;
    }

    Optional<String> spelt(String text) {
        return all.stream().filter(unit -> unit.isSpelt(text)).map(One::name).findFirst();
    }

    One named(String name) {
        return all.stream().filter(unit -> unit.name.equals(name)).findFirst().orElse(metric);
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
        return new FieldUnits(all, all.get(0), all.get(0));
    }

    private static One one(QuantityUnit unit, String label, double span) {
        return new One(
                unit.symbol(),
                label,
                unit.otherSpellings(),
                value -> unit.toHeld(value) / span,
                held -> unit.fromHeld(held * span));
    }

    private static FieldUnits of(String held, String metric, String us, String... names) {
        SiUnit si = SiUnit.of(held);
        List<One> all = new ArrayList<>();
        for (String name : names) {
            TextUnit unit = TextUnit.spelt(name).orElseThrow();
            double size = unit.toSi(1, si);
            all.add(new One(name, label(name), unit.otherSpellings(), value -> value * size, value -> value / size));
        }
        FieldUnits units = new FieldUnits(List.copyOf(all), all.get(0), all.get(0));
        return new FieldUnits(units.all, units.named(metric), units.named(us));
    }

    /** Differences of temperature. */
    private static FieldUnits warmth() {
        One kelvin = new One("K", "K", List.of("°C", "C"), value -> value, value -> value);
        One fahrenheit = new One("°F", "°F", List.of("F"), value -> value / 1.8, value -> value * 1.8);
        return new FieldUnits(List.of(kelvin, fahrenheit), kelvin, fahrenheit);
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
        return unit.symbol().replace("CaCO3", "CaCO₃").replace("NO3", "NO₃").replace("PO4", "PO₄");
    }
}
