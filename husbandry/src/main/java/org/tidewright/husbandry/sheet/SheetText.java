package org.tidewright.husbandry.sheet;

import static org.tidewright.husbandry.advice.FigureText.number;

import org.tidewright.plan.model.UnitSystem;

/** Numbers of a water sheet as text: as many digits as can mean something, and no more. */
public final class SheetText {
    private static final String RAISED = "⁰¹²³⁴⁵⁶⁷⁸⁹";
    private static final int DIGITS = 4;

    /** A value and its unit as they are told. */
    public record Told(String value, String unit) {}

    private SheetText() {}

    /** A number of the sheet; only the temperature follows the reader's units, all else is the trade's own. */
    public static Told of(SheetColumn column, double value, UnitSystem units) {
        if (column == SheetColumn.TEMPERATURE && units == UnitSystem.US) {
            return new Told(plain(value * 1.8 + 32), "°F");
        }
        String key = column.key();
        if (key.startsWith("ph_")) {
            return new Told(number(value, 3), "");
        } else if (column.unit().isEmpty() && (key.contains("share") || key.contains("fraction"))) {
            return new Told(significant(100 * value, 3), "%");
        } else if (key.startsWith("sg_") || key.startsWith("refractive") || key.startsWith("density")) {
            // What can be read off an instrument here is a small part of the number itself.
            return new Told(significant(value, key.startsWith("refractive") ? 6 : 5), column.unit());
        }
        return new Told(significant(value, DIGITS), column.unit());
    }

    /** With so many digits that count; very large and very small numbers as a power of ten. */
    public static String significant(double value, int digits) {
        if (value == 0) {
            return "0";
        }
        int power = power(value, digits);
        if (power < -4 || power > 6) {
            String exponent = Integer.toString(Math.abs(power));
            StringBuilder raised = new StringBuilder(power < 0 ? "⁻" : "");
            exponent.chars().forEach(digit -> raised.append(RAISED.charAt(digit - '0')));
            return number(value / Math.pow(10, power), digits - 1) + "\u00a0×\u00a010" + raised;
        }
        int decimals = digits - 1 - power;
        double step = Math.pow(10, Math.max(0, -decimals));
        return decimals > 0 ? number(value, decimals) : number(Math.rint(value / step) * step, 0);
    }

    /** As somebody would write it: without empty decimals. */
    public static String plain(double value) {
        String told = significant(value, DIGITS);
        return told.contains(".") && !told.contains("×") ? told.replaceAll("\\.?0+$", "") : told;
    }

    /** Carbon dioxide in ppm: the last digit told is one a reading of the pH can reach. */
    public static String ppm(double ppm) {
        double step = ppm < 100 ? 1 : Math.pow(10, Math.floor(Math.log10(ppm)) - 1);
        return number(Math.rint(ppm / step) * step, 0);
    }

    /** The power of ten of its first digit, once it is rounded. */
    private static int power(double value, int digits) {
        int power = (int) Math.floor(Math.log10(Math.abs(value)));
        double rounded = Math.rint(Math.abs(value) / Math.pow(10, power - digits + 1));
        return rounded >= Math.pow(10, digits) ? power + 1 : power;
    }
}
