package org.tidewright.twin.law.carbonate;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * Clear solution of calcium hydroxide. Each mole brings one of calcium and two of alkalinity, nothing else, and takes
 * up two of carbon dioxide on its way to bicarbonate.
 */
public final class Limewater {
    /** Saturated solution at 25 degC: 0.0203 mol/L; Bates, Bower and Smith 1956. */
    @Unit("mol/m^3")
    public static final double SATURATED_AT_25 = 20.3;

    /** Strength over saturation of a settled reservoir, usual. */
    @Unit("1")
    public static final double STRENGTH_USUAL = 1;

    /** The same, low: a crust on the surface, the powder nearly spent; common practice. */
    @Unit("1")
    public static final double STRENGTH_LOW = 0.8;

    /** The same, high: 1.665 g/L of the older handbooks over 1.504, from memory; or some powder still adrift. */
    @Unit("1")
    public static final double STRENGTH_HIGH = 1.1;

    /** Molar mass of Ca(OH)2. */
    @Unit("kg/mol")
    public static final double MOLAR_MASS = 74.093e-3;

    private static final double SLOPE = -8.278e-3; // 1/K, of the handbook's six rows, least squares, 1 at 25 degC
    private static final double CURVATURE = -1.184e-4; // 1/K^2

    private Limewater() {}

    /**
     * Calcium hydroxide in a saturated solution. Unlike most solids it dissolves better in the cold.
     *
     * <pre>c = 20.3 mol/m^3 [1 - 8.278e-3 (t - 25) - 1.184e-4 (t - 25)^2]</pre>
     *
     * @param temperature t of the reservoir, ITS-90; outside 0 to 40 degC the nearer end is taken
     * @return amount per volume of solution
     * @source value at 25 degC: Bates, Bower and Smith 1956, J. Res. NBS 56, 305-312. Change with temperature: an older
     *     handbook's rows, from memory, which stand 10 % higher at 25 degC; only their ratio is used
     * @validity 0 to 40 degC, 5 %
     * @checkvalue 25 degC: 0.0203 mol/L, 1.504 g/L
     */
    @Unit("mol/m^3")
    public static double saturated(@Unit("degC") double temperature) {
        Bounds.waterTemperature(temperature);
        double from25 = Math.max(0, Math.min(40, temperature)) - 25;
        return SATURATED_AT_25 * (1 + from25 * (SLOPE + from25 * CURVATURE));
    }

    /**
     * Calcium hydroxide in a solution made of a known dose of powder: all of it, or as much as dissolves.
     *
     * <pre>c = min(p m / (M V), c_saturated)</pre>
     *
     * @param dose m/V, powder per volume of water
     * @param purity p of the powder
     * @param temperature of the reservoir, ITS-90
     * @return amount per volume of solution
     * @source mass balance; M of {@link #MOLAR_MASS}
     * @validity stirred once, settled, kept from air
     */
    @Unit("mol/m^3")
    public static double dissolved(
            @Unit("kg/m^3") double dose, @Unit("1") double purity, @Unit("degC") double temperature) {
        Bounds.notNegative(dose, "kg/m^3", "powder per volume");
        Bounds.within(purity, "1", 0, 1, "purity of the powder", "is it in percent?");
        return Math.min(purity * dose / MOLAR_MASS, saturated(temperature));
    }

    /**
     * Alkalinity of a solution.
     *
     * <pre>A = 2 c</pre>
     *
     * @param hydroxide c, moles of Ca(OH)2 per volume; as many of calcium
     * @return moles of charge per volume
     * @source stoichiometry
     * @validity clear solution
     */
    @Unit("mol/m^3")
    public static double alkalinity(@Unit("mol/m^3") double hydroxide) {
        Bounds.notNegative(hydroxide, "mol/m^3", "calcium hydroxide");
        return 2 * hydroxide;
    }

    /**
     * Calcium of a solution.
     *
     * <pre>Ca = c</pre>
     *
     * @param hydroxide c, moles of Ca(OH)2 per volume
     * @return moles per volume
     * @source stoichiometry
     * @validity clear solution
     */
    @Unit("mol/m^3")
    public static double calcium(@Unit("mol/m^3") double hydroxide) {
        return Bounds.notNegative(hydroxide, "mol/m^3", "calcium hydroxide");
    }

    /**
     * pH of a saturated solution, the most that limewater can have: a caution for eyes and skin, not for dosing.
     *
     * <pre>pH = 12.45 - 0.033 (t - 25)</pre>
     *
     * @param temperature t, ITS-90
     * @return pH
     * @source Bates, Bower and Smith 1956, J. Res. NBS 56, 305-312: 12.45 at 25 degC; slope from memory
     * @validity 0 to 40 degC
     */
    @Unit("1")
    public static double saturatedPh(@Unit("degC") double temperature) {
        Bounds.waterTemperature(temperature);
        return 12.45 - 0.033 * (temperature - 25);
    }
}
