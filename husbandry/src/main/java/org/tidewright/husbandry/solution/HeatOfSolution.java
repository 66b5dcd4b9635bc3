package org.tidewright.husbandry.solution;

import org.tidewright.plan.model.Salt;
import org.tidewright.seawater.heat.SpecificHeat;
import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * How warm a batch gets while it is mixed, if no heat leaves it: a caution, not a thermometer.
 *
 * <pre>warming = -sum of n dH/(m_water c_water)</pre>
 *
 * <p>The heat is that of dissolving in very much water at 25 degC. A strong stock gives off some 5 to 10 % less (from
 * memory), and its heat capacity lies between 8 % below that of its water alone (magnesium chloride) and 4 % above (sodium
 * carbonate). So the warming is good to a tenth.
 *
 * @source table at {@link #of}
 * @validity stocks of up to 2 mol/L; salts as fresh as their formula
 */
public final class HeatOfSolution {
    /** Standard error of a warming, as a share of it. */
    @Unit("1")
    public static final double ERROR = 0.1;

    private HeatOfSolution() {}

    /**
     * Heat taken up by a mole that dissolves in very much water at 25 degC; below 0 it warms the water.
     *
     * @source uni-univalent salts: Parker 1965, NSRDS-NBS 2, as the CRC Handbook prints it (potassium chloride from
     *     memory). Others: enthalpies of formation of the salt, its ions and water in the CRC Handbook, after the NBS
     *     tables of Wagman et al. 1982, the hydrates' from copies of such tables; of magnesium chloride and monosodium
     *     phosphate from memory, -2499.0 and -1536.8 kJ/mol
     */
    @Unit("J/mol")
    public static double of(Salt salt) {
        return switch (salt) {
            case SODIUM_BICARBONATE -> 18_700;
            case SODIUM_CARBONATE -> -26_600;
            case SODIUM_HYDROXIDE -> -44_510;
            case CALCIUM_CHLORIDE -> -44_800;
            case CALCIUM_CHLORIDE_ANHYDROUS -> -81_800;
            case MAGNESIUM_CHLORIDE -> -17_100;
            case MAGNESIUM_SULFATE -> 11_900;
            case POTASSIUM_CHLORIDE -> 17_220;
            case CALCIUM_HYDROXIDE -> -17_600;
            case AMMONIUM_CHLORIDE -> 14_780;
            case SODIUM_NITRATE -> 20_500;
            case SODIUM_PHOSPHATE -> 400;
            case ACETIC_ACID -> -1_510;
        };
    }

    /**
     * Warming of a batch by its own heat, below 0 where it cools.
     *
     * @param temperature of water and salts before, ITS-90
     */
    @Unit("K")
    public static double warming(Solution solution, @Unit("degC") double temperature) {
        Bounds.within(temperature, "degC", 0, 35, "temperature of the water", "is it in fahrenheit?");
        double heat = -solution.total(HeatOfSolution::of);
        return heat / (SolutionDensity.water(solution, temperature) * SpecificHeat.ofSeawater(temperature, 0));
    }
}
