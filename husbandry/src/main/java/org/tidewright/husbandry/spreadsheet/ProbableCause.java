package org.tidewright.husbandry.spreadsheet;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.tidewright.plan.method.QuantityUnit;
import org.tidewright.plan.method.WaterQuantity;

/** What was probably meant by a number that cannot be. */
final class ProbableCause {
    private static final int[] PLACES = {1, 2, 3, 4, -1, -2};

    private ProbableCause() {}

    /** “Did you mean 8.40? Or is it in mg/L CaCO3?”; empty where nothing suggests itself. */
    static String of(WaterQuantity quantity, QuantityUnit unit, String digits) {
        List<String> causes = new ArrayList<>();
        for (int places : PLACES) {
            BigDecimal moved = new BigDecimal(digits).movePointLeft(places);
            if (usual(quantity, unit, moved.doubleValue())) {
                causes.add("did you mean " + moved.toPlainString() + "?");
                break;
            }
        }
        for (QuantityUnit other : quantity.units()) {
            if (!other.equals(unit) && usual(quantity, other, Double.parseDouble(digits))) {
                causes.add("is it in " + (other.symbol().isEmpty() ? other.key() : other.symbol()) + "?");
                break;
            }
        }
        String all = String.join(" Or ", causes);
        return all.isEmpty() ? "" : Character.toUpperCase(all.charAt(0)) + all.substring(1);
    }

    private static boolean usual(WaterQuantity quantity, QuantityUnit unit, double written) {
        try {
            return UsualRange.holds(quantity, unit, written);
        } catch (IllegalArgumentException outsideTheLaw) {
            return false;
        }
    }
}
