package org.tidewright.plan.method;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.tidewright.seawater.unit.Unit;

/**
 * A unit that readings of a quantity may be written in.
 *
 * @param symbol as it is shown, empty for a plain number
 * @param key as it ends the name of a column
 * @param otherSpellings beside the symbol
 * @param toHeld from a number in this unit to one in the quantity's coherent unit
 * @param fromHeld back
 */
public record QuantityUnit(
        String symbol,
        String key,
        List<String> otherSpellings,
        DoubleUnaryOperator toHeld,
        DoubleUnaryOperator fromHeld) {

    private static final double SMALL = 1e-6;

    static QuantityUnit curved(
            String symbol, String key, DoubleUnaryOperator toHeld, DoubleUnaryOperator fromHeld, String... others) {
        return new QuantityUnit(symbol, key, List.of(others), toHeld, fromHeld);
    }

    /** A unit of so many coherent ones. */
    static QuantityUnit times(@Unit("*") double size, String symbol, String key, String... others) {
        return curved(symbol, key, value -> value * size, value -> value / size, others);
    }

    /** A number in this unit, in the quantity's coherent one. */
    public @Unit("*") double toHeld(@Unit("*") double written) {
        return toHeld.applyAsDouble(written);
    }

    /** A number in the quantity's coherent unit, in this one. */
    public @Unit("*") double fromHeld(@Unit("*") double held) {
        return fromHeld.applyAsDouble(held);
    }

    /** A small difference at a number in this unit, in the coherent one: the zero of a scale does not enter. */
    public @Unit("*") double errorToHeld(@Unit("*") double written, @Unit("*") double error) {
        double step = SMALL * Math.max(1, Math.abs(written));
        return Math.abs(toHeld(written + step) - toHeld(written - step)) / (2 * step) * error;
    }

    /** A small difference at a number in the coherent unit, in this one. */
    public @Unit("*") double errorFromHeld(@Unit("*") double held, @Unit("*") double error) {
        return error / errorToHeld(fromHeld(held), 1);
    }

    /** Whether this unit is written so, case apart. */
    boolean isSpelt(String text) {
        return symbol.equalsIgnoreCase(text) || otherSpellings.stream().anyMatch(text::equalsIgnoreCase);
    }
}
