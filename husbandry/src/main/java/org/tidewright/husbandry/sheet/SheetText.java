package org.tidewright.husbandry.sheet;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;

/** Numbers of a water sheet as people read them. */
public final class SheetText {
    /** More than any of them is known to, and few enough to read. */
    private static final MathContext DIGITS = new MathContext(5, RoundingMode.HALF_EVEN);

    /** For numbers near that of water, whose first digits are always the same. */
    private static final MathContext ONE_MORE = new MathContext(6, RoundingMode.HALF_EVEN);

    private static final int DECIMALS_OF_PH = 3;
    private static final double TOO_SMALL_TO_WRITE_OUT = 1e-4;

    private SheetText() {}

    /** The number without its unit: five digits, a pH to a thousandth, a very small one as 1.4218e-6. */
    public static String value(SheetColumn column, double value) {
        if (column.key().startsWith("ph_")) {
            return String.format(Locale.ROOT, "%." + DECIMALS_OF_PH + "f", value);
        }
        if (value != 0 && Math.abs(value) < TOO_SMALL_TO_WRITE_OUT) {
            return String.format(Locale.ROOT, "%.4e", value).replaceFirst("e-0?", "e-");
        }
        return new BigDecimal(value)
                .round(isNearThatOfWater(column) ? ONE_MORE : DIGITS)
                .toPlainString();
    }

    private static boolean isNearThatOfWater(SheetColumn column) {
        return column.unit().equals("kg/m³")
                || column == SheetColumn.SPECIFIC_GRAVITY_25
                || column == SheetColumn.SPECIFIC_GRAVITY_20
                || column == SheetColumn.REFRACTIVE_INDEX;
    }
}
