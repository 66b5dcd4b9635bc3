package org.tidewright.husbandry.solution;

import java.util.EnumMap;
import java.util.Map;
import org.tidewright.plan.model.Salt;
import org.tidewright.seawater.density.Density;
import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * Density of solutions, for how much water is in a volume of them.
 *
 * <pre>1/rho = w_water/rho_water + sum of w_i v_i,
 * v_i = (w + c2 + c3 t)/[(c0 w + c1) exp(1e-6 (t + c4)^2)], w = sum of w_i</pre>
 *
 * <p>The w_i are shares of the mass, of salts without their water of crystallisation. Calcium hydroxide, at most 2 g/L, is taken
 * to need no room.
 *
 * @source Laliberté and Cooper 2004, J. Chem. Eng. Data 49, 1141-1151; coefficients of Laliberté 2009, J. Chem. Eng. Data
 *     54, 1725-1760, as the open library "chemicals" 1.5.2 (MIT) has them. Water: EOS-80
 * @validity 15 to 40 degC up to saturation, 1.4 kg/m^3 in the authors' words; below 15 degC some of them extrapolate
 */
public final class SolutionDensity {
    private static final int STEPS = 200;

    /** c0 to c4 of each salt without water of crystallisation. */
    private static final Map<Salt, double[]> COEFFICIENTS = new EnumMap<>(Salt.class);

    static {
        put(
                Salt.SODIUM_BICARBONATE,
                0.0377378060615898,
                0.00710029652458366,
                0.0735733388535116,
                0.00168369765511221,
                3291.38382252025);
        put(
                Salt.SODIUM_CARBONATE,
                5.45486543455015e-7,
                1.72154929405038e-7,
                -0.0825850207323492,
                0.00168822949783412,
                4705.39822185746);
        put(
                Salt.SODIUM_HYDROXIDE,
                319.020509469838,
                528.592358475315,
                -0.102197896602724,
                3.50420706415566e-4,
                765.970470238438);
        put(
                Salt.CALCIUM_CHLORIDE,
                -9.72893747074295,
                14.7005352975276,
                4.19033341468332,
                0.0397403624277021,
                2708.12778894614);
        put(
                Salt.MAGNESIUM_CHLORIDE,
                -0.0215001423271867,
                0.0441202083909434,
                1.53227586827304,
                -0.0098078506056196,
                -3478.36496883693);
        put(
                Salt.MAGNESIUM_SULFATE,
                98.1201663080777,
                59.265764731786,
                -0.0303404982114453,
                5.03619228557116e-4,
                1763.7594229147);
        put(
                Salt.POTASSIUM_CHLORIDE,
                -0.855928945959145,
                6.04073571306402,
                2.81787416217166,
                0.0253924645877338,
                2681.61723465886);
        put(
                Salt.AMMONIUM_CHLORIDE,
                16.8882196383907,
                318.560293047784,
                5.08655606958672,
                -0.0150616503055142,
                -1769.12237165588);
        put(
                Salt.SODIUM_NITRATE,
                22.3499264791804,
                66.4478689005725,
                0.989888301509443,
                0.00947165097909636,
                1971.5514625204);
        put(
                Salt.SODIUM_PHOSPHATE,
                1614.75236436149,
                1267.61449182737,
                0.331039480071181,
                0.00125354906642541,
                347.040108092145);
        put(
                Salt.ACETIC_ACID,
                647.289243971958,
                -1054.58226029586,
                -1.74610768626879,
                3.65566432763641e-4,
                -822.999507010544);
        COEFFICIENTS.put(Salt.CALCIUM_CHLORIDE_ANHYDROUS, COEFFICIENTS.get(Salt.CALCIUM_CHLORIDE));
    }

    private SolutionDensity() {}

    private static void put(Salt salt, double... coefficients) {
        COEFFICIENTS.put(salt, coefficients);
    }

    /** Whether a salt's own room in the solution is known. */
    static boolean knows(Salt salt) {
        return COEFFICIENTS.containsKey(salt);
    }

    /**
     * From shares of the mass.
     *
     * @param dryShares mass of each salt without its water of crystallisation in a mass of the solution
     * @param temperature t, ITS-90
     */
    @Unit("kg/m^3")
    static double ofShares(Map<Salt, Double> dryShares, double temperature) {
        double salts = dryShares.values().stream().mapToDouble(w -> w).sum();
        double volume = (1 - salts) / Density.ofSeawater(temperature, 0);
        for (Map.Entry<Salt, Double> part : dryShares.entrySet()) {
            double[] c = COEFFICIENTS.get(part.getKey());
            if (c != null) {
                volume += part.getValue()
                        * (salts + c[2] + c[3] * temperature)
                        / ((c[0] * salts + c[1]) * Math.exp(1e-6 * Math.pow(temperature + c[4], 2)));
            }
        }
        return 1 / volume;
    }

    /**
     * Of a solution of so many moles per volume.
     *
     * @param temperature t, ITS-90
     */
    @Unit("kg/m^3")
    public static double of(Solution solution, @Unit("degC") double temperature) {
        Bounds.within(temperature, "degC", 0, 40, "temperature of the solution", "is it in fahrenheit?");
        double density = Density.ofSeawater(temperature, 0) + 0.7 * solution.dryMass();
        for (int step = 0; step < STEPS; step++) {
            double guess = density;
            Map<Salt, Double> shares = new EnumMap<>(solution.content());
            shares.replaceAll((salt, amount) -> amount * salt.dryMolarMass() / guess);
            density = ofShares(shares, temperature);
            if (Math.abs(density - guess) < 1e-9) {
                break;
            }
        }
        return density;
    }

    /** Water in a volume of the solution, that of crystallisation included. */
    @Unit("kg/m^3")
    public static double water(Solution solution, @Unit("degC") double temperature) {
        return of(solution, temperature) - solution.dryMass();
    }
}
