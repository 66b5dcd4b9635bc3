package org.tidewright.plan.quantity;

import static tech.units.indriya.AbstractUnit.ONE;
import static tech.units.indriya.unit.Units.*;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.measure.IncommensurableException;
import javax.measure.MetricPrefix;
import javax.measure.Unit;
import javax.measure.UnitConverter;
import org.tidewright.seawater.carbonate.Alkalinity;

/**
 * A unit as it may stand in a plan: its symbol and what it means.
 *
 * <p>US customary units as in NIST Special Publication 811 (2008), appendix B: inch 25.4 mm, gallon (US) 3.785411784 L,
 * pound 0.45359237 kg, all exact. A degree of carbonate hardness as in {@link Alkalinity}.
 */
public final class TextUnit {
    private static final Unit<?> INCH = METRE.multiply(0.0254);
    private static final Unit<?> GALLON = LITRE.multiply(3.785411784);
    private static final Unit<?> POUND = KILOGRAM.multiply(0.45359237);
    private static final Unit<?> FAHRENHEIT = CELSIUS.multiply(5).divide(9).shift(-32);

    private static final Unit<?> PER_CUBIC_METRE = MOLE.divide(CUBIC_METRE);
    private static final Unit<?> GERMAN_DEGREE = PER_CUBIC_METRE.multiply(Alkalinity.GERMAN_DEGREE);

    private static final Map<String, TextUnit> BY_SYMBOL = new LinkedHashMap<>();
    private static final Map<String, List<TextUnit>> BY_SPELLING = new LinkedHashMap<>();

    static {
        add("m", METRE);
        add("cm", MetricPrefix.CENTI(METRE));
        add("mm", MetricPrefix.MILLI(METRE));
        add("in", INCH, "inch", "inches");
        add("ft", INCH.multiply(12), "foot", "feet");
        add("m²", SQUARE_METRE, "m2", "m^2");
        add("cm²", MetricPrefix.CENTI(METRE).pow(2), "cm2", "cm^2");
        add("ft²", INCH.multiply(12).pow(2), "ft2", "ft^2", "sq ft");
        add("L", LITRE, "l", "litre", "litres", "liter", "liters");
        add("mL", MetricPrefix.MILLI(LITRE), "ml");
        add("m³", CUBIC_METRE, "m3", "m^3");
        add("gal", GALLON, "gallon", "gallons");
        add("ft³", INCH.multiply(12).pow(3), "ft3", "ft^3", "cu ft");
        add("kg", KILOGRAM);
        add("g", GRAM);
        add("lb", POUND, "lbs");
        add("oz", POUND.divide(16));
        add("s", SECOND);
        add("min", MINUTE);
        add("h", HOUR, "hour", "hours");
        add("d", DAY, "day", "days");
        add("°C", CELSIUS, "C", "degC");
        add("°F", FAHRENHEIT, "F", "degF");
        add("K", KELVIN);
        add("W", WATT);
        add("kW", MetricPrefix.KILO(WATT));
        add("Wh", WATT.multiply(HOUR));
        add("kWh", MetricPrefix.KILO(WATT).multiply(HOUR));
        add("W/K", WATT.divide(KELVIN));
        add("L/h", LITRE.divide(HOUR), "l/h");
        add("L/min", LITRE.divide(MINUTE), "l/min");
        add("m³/h", CUBIC_METRE.divide(HOUR), "m3/h");
        add("gal/h", GALLON.divide(HOUR), "gph");
        add("gal/d", GALLON.divide(DAY), "gpd");
        add("L/d", LITRE.divide(DAY), "l/d");
        add("mL/min", MetricPrefix.MILLI(LITRE).divide(MINUTE), "ml/min");
        add("mL/d", MetricPrefix.MILLI(LITRE).divide(DAY), "ml/d");
        add("L/kg", LITRE.divide(KILOGRAM), "l/kg");
        add("gal/lb", GALLON.divide(POUND));
        add("m/s", METRE.divide(SECOND));
        add("cm/s", MetricPrefix.CENTI(METRE).divide(SECOND));
        add("ft/s", INCH.multiply(12).divide(SECOND));
        add("/h", ONE.divide(HOUR), "1/h");
        add("g/L", GRAM.divide(LITRE), "g/l");
        add("mg/L", MetricPrefix.MILLI(GRAM).divide(LITRE), "mg/l", "ppm");
        add("kg/m³", KILOGRAM.divide(CUBIC_METRE), "kg/m3", "kg/m^3");
        add("kg/m²", KILOGRAM.divide(SQUARE_METRE), "kg/m2", "kg/m^2");
        add("dKH", GERMAN_DEGREE, "°dKH");
        add("meq/L", PER_CUBIC_METRE, "meq/l");
        add("mmol/L", PER_CUBIC_METRE, "mmol/l");
        add("µmol/L", PER_CUBIC_METRE.divide(1000), "μmol/L", "umol/L", "µmol/l");
        add("mol/L", PER_CUBIC_METRE.multiply(1000), "mol/l");
        add("dKH/d", GERMAN_DEGREE.divide(DAY));
        add("meq/L/d", PER_CUBIC_METRE.divide(DAY), "meq/l/d");
        add(
                "µmol/m²/s",
                MetricPrefix.MICRO(MOLE).divide(SQUARE_METRE).divide(SECOND),
                "μmol/m²/s",
                "umol/m2/s",
                "µmol/(m²·s)");
        add("%", PERCENT);
        add("ppm", ONE.divide(1_000_000));
        add("", ONE);
    }

    private final String symbol;
    private final Unit<?> unit;

    private TextUnit(String symbol, Unit<?> unit) {
        this.symbol = symbol;
        this.unit = unit;
    }

    private static void add(String symbol, Unit<?> unit, String... otherSpellings) {
        TextUnit added = new TextUnit(symbol, unit);
        BY_SYMBOL.put(symbol, added);
        spell(symbol, added);
        for (String spelling : otherSpellings) {
            spell(spelling, added);
        }
    }

    private static void spell(String spelling, TextUnit unit) {
        BY_SPELLING.computeIfAbsent(spelling, none -> new ArrayList<>()).add(unit);
    }

    /**
     * The unit written so in a plan, in its usual or another accepted spelling. Where several are written so, the one
     * whose symbol it is.
     */
    public static Optional<TextUnit> spelt(String text) {
        TextUnit bySymbol = BY_SYMBOL.get(text);
        return bySymbol != null
                ? Optional.of(bySymbol)
                : writtenSo(text).stream().findFirst();
    }

    /**
     * The unit written so where a place asks for a quantity: ppm is mg/L of a concentration and a millionth of a number.
     * Where none of those written so fits, one of them all the same.
     */
    public static Optional<TextUnit> spelt(String text, SiUnit target) {
        return writtenSo(text).stream()
                .filter(unit -> unit.isCompatibleWith(target))
                .findFirst()
                .or(() -> spelt(text));
    }

    private static List<TextUnit> writtenSo(String text) {
        return BY_SPELLING.getOrDefault(text, List.of());
    }

    /** How this unit may be written beside its symbol. */
    public List<String> otherSpellings() {
        return BY_SPELLING.entrySet().stream()
                .filter(entry -> entry.getValue().contains(this))
                .map(Map.Entry::getKey)
                .filter(spelling -> !spelling.equals(symbol))
                .toList();
    }

    /** Every unit a plan may use, once each. */
    public static Collection<TextUnit> all() {
        return BY_SYMBOL.values();
    }

    /** Every accepted spelling, of all units. */
    public static Collection<String> spellings() {
        return BY_SPELLING.keySet();
    }

    public String symbol() {
        return symbol;
    }

    /** Whether a number in this unit can be told in the other: a litre in cubic metres, not in metres. */
    public boolean isCompatibleWith(SiUnit target) {
        return unit.isCompatible(target.unit());
    }

    /** A number in this unit told in a coherent one. */
    public double toSi(double number, SiUnit target) {
        UnitConverter converter = converterTo(target);
        double converted = converter.convert(number);
        // A band of 0.5 °F is a difference: the zero of its scale must not enter.
        return target.isDifference() ? converted - converter.convert(0.0) : converted;
    }

    /** A coherent value told in this unit, as {@code toSi} would take it. */
    public double fromSi(double value, SiUnit target) {
        double zero = toSi(0, target);
        return (value - zero) / (toSi(1, target) - zero);
    }

    double differenceToSi(double number, SiUnit target) {
        UnitConverter converter = converterTo(target);
        return converter.convert(number) - converter.convert(0.0);
    }

    private UnitConverter converterTo(SiUnit target) {
        try {
            return unit.getConverterToAny(target.unit());
        } catch (IncommensurableException different) {
            throw new IllegalArgumentException(symbol + " cannot be told in " + target.text(), different);
        }
    }

    @Override
    public String toString() {
        return symbol;
    }
}
