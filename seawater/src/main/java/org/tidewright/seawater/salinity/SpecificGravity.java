package org.tidewright.seawater.salinity;

import org.tidewright.seawater.density.Density;
import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.range.FittedRange;
import org.tidewright.seawater.unit.Unit;

/**
 * Density and specific gravity of seawater turned into practical salinity. A specific gravity means nothing without its two
 * temperatures: that of the seawater and that of the pure water it is compared with. 35 is 1.0264 at 25/25 degC, 1.0266 at
 * 20/20 degC and 1.0269 at 60/60 degF.
 */
public final class SpecificGravity {
    /** The range of the density behind it. */
    public static final FittedRange FIT = Density.FIT;

    private static final int MOST_STEPS = 20;

    private SpecificGravity() {}

    /**
     * Specific gravity of seawater.
     *
     * <pre>d = rho(S, t) / rho_w(t_w)</pre>
     *
     * @param practicalSalinity PSS-78
     * @param temperature of the seawater, ITS-90
     * @param waterTemperature of the pure water it is compared with, ITS-90
     * @return ratio of the two densities
     * @source definition, with EOS-80: {@link Density}
     * @validity as {@link Density#ofSeawater}
     * @checkvalue S 35, 25/25 degC: 1.02637
     */
    @Unit("1")
    public static double fromPractical(
            @Unit("1") double practicalSalinity,
            @Unit("degC") double temperature,
            @Unit("degC") double waterTemperature) {
        return Density.ofSeawater(temperature, practicalSalinity) / Density.ofPureWater(waterTemperature);
    }

    /**
     * Practical salinity from specific gravity, the inverse of {@link #fromPractical}.
     *
     * @param specificGravity of the seawater at its temperature
     * @param temperature of the seawater, ITS-90
     * @param waterTemperature of the pure water it is compared with, ITS-90
     * @return practical salinity
     * @source as {@link #fromPractical}
     * @validity as {@link #fromPractical}
     */
    @Unit("1")
    public static double toPractical(
            @Unit("1") double specificGravity,
            @Unit("degC") double temperature,
            @Unit("degC") double waterTemperature) {
        return ofDensity(specificGravity * Density.ofPureWater(waterTemperature), temperature);
    }

    /**
     * Practical salinity from density, the inverse of {@link Density#ofSeawater}, by Newton's steps.
     *
     * @param density of the seawater at its temperature, at one atmosphere
     * @param temperature ITS-90
     * @return practical salinity
     * @source as {@link Density#ofSeawater}
     * @validity as {@link Density#ofSeawater}; refuses a density below that of pure water at the same temperature
     */
    @Unit("1")
    public static double ofDensity(@Unit("kg/m^3") double density, @Unit("degC") double temperature) {
        double fresh = Density.ofPureWater(temperature);
        double densest = Density.ofSeawater(temperature, Bounds.SALTIEST_WATER);
        Bounds.within(
                density, "kg/m^3", fresh, densest, "density", "is it of another temperature, or a ratio, or in g/mL?");
        double s = Math.min(Bounds.SALTIEST_WATER, Bounds.SALTIEST_WATER * (density - fresh) / (densest - fresh));
        for (int step = 0; step < MOST_STEPS; step++) {
            double excess = Density.ofSeawater(temperature, s) - density;
            double next = Math.min(Bounds.SALTIEST_WATER, Math.max(0, s - excess / slope(temperature, s)));
            if (Math.abs(next - s) <= 1e-13 * Math.max(1, s)) {
                return next;
            }
            s = next;
        }
        return s;
    }

    /** Rise of density with salinity, near enough for a step of Newton's: a difference over a thousandth. */
    private static double slope(double temperature, double s) {
        double low = Math.min(s, Bounds.SALTIEST_WATER - 1e-3);
        return (Density.ofSeawater(temperature, low + 1e-3) - Density.ofSeawater(temperature, low)) / 1e-3;
    }
}
