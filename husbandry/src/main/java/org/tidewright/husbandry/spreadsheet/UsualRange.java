package org.tidewright.husbandry.spreadsheet;

import org.tidewright.plan.method.QuantityUnit;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.seawater.unit.Unit;

/**
 * Between what numbers readings of a kept reef mostly lie: wide enough for a tank in trouble, narrow enough to tell one unit from
 * another. Common practice, not a publication; they decide what is guessed, never what is accepted.
 */
final class UsualRange {
    private UsualRange() {}

    /** Whether a number would be usual if it were written in this unit. */
    static boolean holds(WaterQuantity quantity, QuantityUnit unit, @Unit("*") double written) {
        double held = unit.toHeld(written);
        return held >= least(quantity) && held <= most(quantity);
    }

    /** In the quantity's coherent unit. A reading of nothing tells no unit, so that the least is above it. */
    static @Unit("*") double least(WaterQuantity quantity) {
        return switch (quantity) {
            case TEMPERATURE -> 15;
            case SALINITY -> 26;
            case ALKALINITY -> 1.6;
            case CALCIUM -> 0.25;
            case MAGNESIUM -> 0.7;
            case PH -> 7;
            case NITRATE -> 0.2e-3;
            case NITRITE, AMMONIA -> 0.005e-3;
            case PHOSPHATE -> 0.003e-3;
            case OXYGEN -> 3e-3;
        };
    }

    static @Unit("*") double most(WaterQuantity quantity) {
        return switch (quantity) {
            case TEMPERATURE -> 35;
            case SALINITY -> 40;
            case ALKALINITY -> 5.5;
            case CALCIUM -> 0.7;
            case MAGNESIUM -> 2;
            case PH -> 9.2;
            case NITRATE -> 0.2;
            case NITRITE, AMMONIA -> 5e-3;
            case PHOSPHATE -> 2e-3;
            case OXYGEN -> 14e-3;
        };
    }
}
