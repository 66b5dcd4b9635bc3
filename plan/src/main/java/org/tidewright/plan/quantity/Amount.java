package org.tidewright.plan.quantity;

/**
 * A number with its unit as the keeper wrote it, and the standard error they gave with it, if any.
 *
 * <p>It keeps the keeper's own unit, so a plan that is written back says "55 gal" where it said so before.
 *
 * @param number in {@code unit}
 * @param doubt one standard error, in {@code unit}; 0 when none was stated
 */
public record Amount(double number, TextUnit unit, double doubt) {

    public static Amount of(double number, String symbol) {
        TextUnit unit =
                TextUnit.spelt(symbol).orElseThrow(() -> new IllegalArgumentException("no unit is written " + symbol));
        return new Amount(number, unit, 0);
    }

    /** The number in a coherent unit; which one, the record component that holds it says. */
    public double in(String siUnit) {
        return unit.toSi(number, SiUnit.of(siUnit));
    }

    /** The stated standard error in a coherent unit, 0 when none was stated. */
    public double doubtIn(String siUnit) {
        return unit.differenceToSi(doubt, SiUnit.of(siUnit));
    }

    /** As it stands in a plan, {@code 48.5 cm ± 3 cm}; reading it back gives an equal amount. */
    @Override
    public String toString() {
        return withUnit(number) + (doubt == 0 ? "" : " ± " + withUnit(doubt));
    }

    private String withUnit(double value) {
        String digits = value == Math.rint(value) && Math.abs(value) < 1e15
                ? Long.toString((long) value)
                : Double.toString(value);
        return unit.symbol().isEmpty() ? digits : digits + " " + unit.symbol();
    }
}
