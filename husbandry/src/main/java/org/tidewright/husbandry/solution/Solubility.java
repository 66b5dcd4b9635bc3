package org.tidewright.husbandry.solution;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.tidewright.plan.model.Salt;
import org.tidewright.seawater.density.Density;
import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.law.carbonate.Limewater;

/**
 * How much of a salt water holds, and at what temperatures a solution stays clear.
 *
 * <p>Each salt is taken alone. In a solution of several the shares of saturation, each in all of the water, are added up:
 * a rule of thumb, within a tenth for magnesium chloride with sulfate (from memory).
 *
 * @source CRC Handbook of Chemistry and Physics, 98th edition, "Aqueous solubility of inorganic compounds at various
 *     temperatures", read in the open transcription "chicolucio/solutions" (MIT) and set against older handbooks in
 *     the tests; limewater: {@link Limewater#saturated}
 * @validity 0 to 40 degC; the salt, not its impurities
 */
public final class Solubility {
    /** Coldest and warmest that the tables reach. */
    @Unit("degC")
    public static final double COLDEST = 0;

    @Unit("degC")
    public static final double WARMEST = 40;

    private static final double[] TEMPERATURES = {0, 10, 20, 25, 30, 40};
    private static final double STEP = 0.1;
    private static final double ROUNDING = 1e-9;

    /** Per cent of the mass of the saturated solution that is the salt, without its water of crystallisation. */
    private static final Map<Salt, double[]> PER_CENT = new EnumMap<>(Salt.class);

    static {
        put(Salt.SODIUM_BICARBONATE, 6.48, 7.59, 8.73, 9.32, 9.91, 11.13);
        put(Salt.SODIUM_CARBONATE, 6.44, 10.8, 17.9, 23.5, 28.7, 32.8);
        put(Salt.SODIUM_HYDROXIDE, 30, 39, 46, 50, 53, 58);
        put(Salt.CALCIUM_CHLORIDE, 36.70, 39.19, 42.13, 44.83, 49.12, 52.85);
        put(Salt.CALCIUM_CHLORIDE_ANHYDROUS, 36.70, 39.19, 42.13, 44.83, 49.12, 52.85);
        put(Salt.MAGNESIUM_CHLORIDE, 33.96, 34.85, 35.58, 35.90, 36.20, 36.77);
        put(Salt.MAGNESIUM_SULFATE, 18.2, 21.7, 25.1, 26.3, 28.2, 30.9);
        put(Salt.POTASSIUM_CHLORIDE, 21.74, 23.61, 25.39, 26.22, 27.04, 28.59);
        put(Salt.AMMONIUM_CHLORIDE, 22.92, 25.12, 27.27, 28.34, 29.39, 31.46);
        put(Salt.SODIUM_NITRATE, 42.2, 44.4, 46.6, 47.7, 48.8, 51.0);
        put(Salt.SODIUM_PHOSPHATE, 36.54, 41.07, 46.00, 48.68, 51.54, 57.89);
    }

    /**
     * Temperatures between which nothing falls out of a solution; the ends of the tables where it is clear to there.
     *
     * @param coldest below it crystals fall
     * @param warmest above it they do: limewater alone
     */
    public record ClearRange(
            @Unit("degC") double coldest, @Unit("degC") double warmest) {}

    private Solubility() {}

    private static void put(Salt salt, double... perCent) {
        PER_CENT.put(salt, perCent);
    }

    /**
     * Mass of a salt, without its water of crystallisation, that a mass of water holds. Between the temperatures of the
     * table its logarithm is drawn straight.
     *
     * @param temperature ITS-90
     * @return infinite for acetic acid, which mixes with water in any proportion
     */
    @Unit("kg/kg")
    public static double saturated(Salt salt, @Unit("degC") double temperature) {
        Bounds.within(temperature, "degC", COLDEST, WARMEST, "temperature of the solution", "is it in fahrenheit?");
        if (salt == Salt.ACETIC_ACID) {
            return Double.POSITIVE_INFINITY;
        } else if (salt == Salt.CALCIUM_HYDROXIDE) {
            return Limewater.saturated(temperature) * salt.molarMass() / Density.ofSeawater(temperature, 0);
        }
        double[] perCent = PER_CENT.get(salt);
        if (perCent == null) {
            throw new IllegalArgumentException("no solubility is known of " + salt.words());
        }
        int above = 1;
        while (TEMPERATURES[above] < temperature) {
            above++;
        }
        double low = logOfRatio(perCent[above - 1]);
        double high = logOfRatio(perCent[above]);
        double way = (temperature - TEMPERATURES[above - 1]) / (TEMPERATURES[above] - TEMPERATURES[above - 1]);
        return Math.exp(low + way * (high - low));
    }

    private static double logOfRatio(double perCent) {
        return Math.log(perCent / (100 - perCent));
    }

    /**
     * How near a solution is to dropping crystals: 1 is saturated.
     *
     * @param temperature ITS-90
     */
    @Unit("1")
    public static double shareOfSaturation(Solution solution, @Unit("degC") double temperature) {
        double water = SolutionDensity.water(solution, temperature);
        if (water <= 0) {
            return Double.POSITIVE_INFINITY;
        }
        return solution.content().entrySet().stream()
                .mapToDouble(part ->
                        part.getValue() * part.getKey().dryMolarMass() / water / saturated(part.getKey(), temperature))
                .sum();
    }

    /** Temperatures at which a solution stays clear; empty where there is none. */
    public static Optional<ClearRange> clear(Solution solution) {
        double coldest = Double.NaN;
        double warmest = Double.NaN;
        int steps = (int) Math.round((WARMEST - COLDEST) / STEP);
        for (int i = 0; i <= steps; i++) {
            double temperature = COLDEST + i * STEP;
            if (isClear(solution, temperature)) {
                coldest = Double.isNaN(coldest) ? temperature : coldest;
                warmest = temperature;
            }
        }
        return Double.isNaN(coldest) ? Optional.empty() : Optional.of(new ClearRange(coldest, warmest));
    }

    /**
     * The strongest solution of the same salts in the same proportion that a temperature allows; of acetic acid, the pure
     * acid.
     *
     * @param temperature ITS-90
     */
    public static Solution strongest(Solution solution, @Unit("degC") double temperature) {
        double low = 0;
        double high = 1;
        while (isClear(solution.times(high), temperature)) {
            low = high;
            high *= 2;
        }
        for (int step = 0; step < 60; step++) {
            double middle = (low + high) / 2;
            if (isClear(solution.times(middle), temperature)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return solution.times(low);
    }

    private static boolean isClear(Solution solution, double temperature) {
        return shareOfSaturation(solution, temperature) <= 1 + ROUNDING;
    }
}
