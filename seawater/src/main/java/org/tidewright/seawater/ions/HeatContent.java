package org.tidewright.seawater.ions;

import org.tidewright.seawater.heat.SpecificHeat;

/** Heat in a kilogram of seawater over that in the same water at 25 degC. */
final class HeatContent {
    /** Waters of this temperature mix without warming or cooling, which is nearly so in a tank. */
    static final double BASE = 25;

    private static final double GAUSS = Math.sqrt(0.6);

    private HeatContent() {}

    /**
     * Specific heat integrated from the base: J/kg. Gauss's rule of three points is exact for polynomials up to the
     * fifth degree; specific heat is of the fourth in temperature.
     */
    static double of(double temperature, double practicalSalinity) {
        double half = (temperature - BASE) / 2;
        double middle = (temperature + BASE) / 2;
        return half
                * (5 * SpecificHeat.ofSeawater(middle - GAUSS * half, practicalSalinity)
                        + 8 * SpecificHeat.ofSeawater(middle, practicalSalinity)
                        + 5 * SpecificHeat.ofSeawater(middle + GAUSS * half, practicalSalinity))
                / 9;
    }

    /** Temperature at which a kilogram holds this much heat, near the guess: Newton's method. */
    static double temperature(double heat, double practicalSalinity, double guess) {
        double temperature = guess;
        for (int step = 0; step < 20; step++) {
            double change = (heat - of(temperature, practicalSalinity))
                    / SpecificHeat.ofSeawater(temperature, practicalSalinity);
            temperature += change;
            if (Math.abs(change) < 1e-13) {
                break;
            }
        }
        return temperature;
    }
}
