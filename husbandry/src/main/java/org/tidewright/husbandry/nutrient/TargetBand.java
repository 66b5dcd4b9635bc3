package org.tidewright.husbandry.nutrient;

import org.tidewright.husbandry.limit.Keeping;
import org.tidewright.husbandry.limit.TargetRange;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.source.Basis;
import org.tidewright.twin.forecast.Quantity;

/**
 * Where keepers hold a nutrient, in the unit {@link Quantity} tells it in.
 *
 * @param low zero where there is no lower end
 * @param whose for whom, in words
 * @param basis the plan's own word, or common practice
 */
public record TargetBand(Quantity quantity, double low, double high, String whose, Basis basis) {
    private static final double MILLIGRAMS_PER_LITRE = 1e3;

    /** The range of {@link TargetRange}. */
    static TargetBand of(Plan plan, Quantity quantity) {
        TargetRange range = TargetRange.of(plan, tested(quantity)).orElseThrow();
        return new TargetBand(
                quantity,
                MILLIGRAMS_PER_LITRE * range.least(),
                MILLIGRAMS_PER_LITRE * range.most(),
                Keeping.of(plan).words(),
                range.basis());
    }

    private static WaterQuantity tested(Quantity quantity) {
        return switch (quantity) {
            case NITRATE -> WaterQuantity.NITRATE;
            case PHOSPHATE -> WaterQuantity.PHOSPHATE;
            case AMMONIA -> WaterQuantity.AMMONIA;
            default -> throw new IllegalArgumentException(quantity + " is no nutrient");
        };
    }

    /** How far a value lies outside, in parts of the end it passes; zero within. */
    double beyond(double value) {
        if (value > high) {
            return value / high - 1;
        }
        return value < low ? low / Math.max(value, 0.1 * low) - 1 : 0;
    }
}
