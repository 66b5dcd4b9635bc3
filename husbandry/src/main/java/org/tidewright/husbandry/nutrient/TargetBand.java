package org.tidewright.husbandry.nutrient;

import java.util.EnumSet;
import java.util.Set;
import org.tidewright.plan.model.Inhabitants;
import org.tidewright.plan.model.Plan;
import org.tidewright.twin.forecast.Quantity;

/**
 * Where keepers hold a nutrient, by who lives there. Common practice.
 *
 * @param quantity nitrate, phosphate or ammonia, mg/L as {@link Quantity} tells it
 * @param low zero where there is no lower end
 * @param whose for whom, in words
 */
public record TargetBand(Quantity quantity, double low, double high, String whose) {
    private static final Set<Inhabitants.Coral.Form> SMALL_POLYPS = EnumSet.of(
            Inhabitants.Coral.Form.BRANCHING_ACROPORA,
            Inhabitants.Coral.Form.POCILLOPORA,
            Inhabitants.Coral.Form.STYLOPHORA,
            Inhabitants.Coral.Form.BRANCHING_MONTIPORA,
            Inhabitants.Coral.Form.PLATING_MONTIPORA);

    /** The band for the most demanding of a plan's animals. */
    static TargetBand of(Plan plan, Quantity quantity) {
        Inhabitants inhabitants = plan.inhabitants();
        if (inhabitants == null || (inhabitants.corals().isEmpty() && inhabitants.coralTissue() == null)) {
            return band(quantity, 0, 40, 0, 0.8, "fish without corals");
        }
        boolean small = inhabitants.corals().stream().anyMatch(coral -> SMALL_POLYPS.contains(coral.form()));
        boolean soft = !inhabitants.corals().isEmpty()
                && inhabitants.corals().stream().allMatch(coral -> coral.form() == Inhabitants.Coral.Form.SOFT);
        if (small) {
            return band(quantity, 1, 12, 0.02, 0.10, "stony corals of small polyps");
        }
        return soft
                ? band(quantity, 2, 25, 0.03, 0.20, "soft corals")
                : band(quantity, 2, 15, 0.03, 0.12, "stony corals of large polyps");
    }

    private static TargetBand band(
            Quantity quantity, double nitrateLow, double nitrateHigh, double low, double high, String whose) {
        return switch (quantity) {
            case NITRATE -> new TargetBand(quantity, nitrateLow, nitrateHigh, whose);
            case PHOSPHATE -> new TargetBand(quantity, low, high, whose);
            case AMMONIA -> new TargetBand(quantity, 0, 0.05, whose);
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
