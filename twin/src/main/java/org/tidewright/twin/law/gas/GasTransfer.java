package org.tidewright.twin.law.gas;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/** Exchange of a gas through the water's surface. */
public final class GasTransfer {
    /** Exponent of a rippled surface. */
    @Unit("1")
    public static final double RIPPLED = 0.5;

    /** Exponent of a smooth surface, 2/3. */
    @Unit("1")
    public static final double SMOOTH = 2.0 / 3;

    /** Schmidt number that k600 stands for: carbon dioxide in fresh water at 20 degC. */
    private static final double REFERENCE_SCHMIDT = 600;

    private GasTransfer() {}

    /**
     * Transfer velocity of a gas from the one normalised to a Schmidt number of 600.
     *
     * <pre>k = k600 (600 / Sc)^n</pre>
     *
     * @param k600 normalised velocity; still 1.4e-6 to 5.6e-6 m/s (0.5 to 2 cm/h), running reef ten times that
     * @param schmidt Schmidt number of the gas at the water's temperature
     * @param exponent n, {@link #RIPPLED} or {@link #SMOOTH}
     * @return transfer velocity of the gas
     * @source Jaehne et al. 1987, J. Geophys. Res. 92, 1937-1949; Wanninkhof 2014, Limnol. Oceanogr. Methods 12,
     *     351-362
     * @validity Sc 50 to 3000
     */
    @Unit("m/s")
    public static double velocity(@Unit("m/s") double k600, @Unit("1") double schmidt, @Unit("1") double exponent) {
        Bounds.within(k600, "m/s", 0, 0.1, "transfer velocity k600");
        Bounds.within(schmidt, "1", 1, 1e5, "Schmidt number");
        Bounds.within(exponent, "1", 0.4, 0.8, "exponent of the Schmidt number");
        return k600 * Math.pow(REFERENCE_SCHMIDT / schmidt, exponent);
    }

    /**
     * Gas that enters the water through each area of surface; negative when it leaves.
     *
     * <pre>J = k (C* - C)</pre>
     *
     * @param velocity k of the gas
     * @param saturation C*, in equilibrium with the air
     * @param concentration C in the water
     * @return amount per area and time
     * @source thin-film model, Liss and Slater 1974, Nature 247, 181-184
     * @validity gases the water resists: O2, N2, CO2
     */
    @Unit("mol/(m^2*s)")
    public static double flux(
            @Unit("m/s") double velocity, @Unit("mol/m^3") double saturation, @Unit("mol/m^3") double concentration) {
        Bounds.within(velocity, "m/s", 0, 0.1, "transfer velocity");
        Bounds.within(saturation, "mol/m^3", 0, 100, "saturation");
        Bounds.within(concentration, "mol/m^3", 0, 100, "concentration");
        return velocity * (saturation - concentration);
    }
}
