package org.tidewright.husbandry.quantity;

import java.util.Optional;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.plan.model.Salt;
import org.tidewright.seawater.unit.Unit;

/**
 * A salt by the gram, for who has no solution of it: the mildest that brings the quantity alone.
 *
 * @param salt which
 * @param perLevel mass of it that lifts the level of the whole system by one
 */
record DryPortion(Salt salt, @Unit("kg/(*)") double perLevel) {
    /** kg/mol; IUPAC 2021. */
    private static final double CALCIUM = 40.078e-3;

    private static final double MAGNESIUM = 24.305e-3;

    /**
     * Of a quantity; empty for one that nobody lifts with a salt.
     *
     * @param volume of the system's water
     */
    static Optional<DryPortion> of(WaterQuantity quantity, @Unit("m^3") double volume) {
        return switch (quantity) {
            case ALKALINITY -> Optional.of(of(Salt.SODIUM_BICARBONATE, Salt.SODIUM_BICARBONATE.alkalinity(), volume));
            case CALCIUM -> Optional.of(of(Salt.CALCIUM_CHLORIDE, Salt.CALCIUM_CHLORIDE.calcium() * CALCIUM, volume));
            case MAGNESIUM ->
                Optional.of(of(Salt.MAGNESIUM_CHLORIDE, Salt.MAGNESIUM_CHLORIDE.magnesium() * MAGNESIUM, volume));
            default -> Optional.empty();
        };
    }

    private static DryPortion of(Salt salt, double levelPerMole, double volume) {
        return new DryPortion(salt, salt.molarMass() * volume / levelPerMole);
    }

    /** Mass that lifts the level by so much. */
    @Unit("kg")
    double mass(@Unit("*") double lift) {
        return lift * perLevel;
    }
}
