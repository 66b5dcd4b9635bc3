package org.tidewright.seawater.salinity;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.range.FittedRange;
import org.tidewright.seawater.unit.Unit;

/**
 * Refractive index of seawater in the yellow light of sodium, relative to air, and the practical salinity behind it. A
 * salinity of 1 is 0.00018, and so is a warming of 2 degC the other way: without the temperature an index says little.
 */
public final class RefractiveIndex {
    /** The range of the measurements behind the equation. */
    public static final FittedRange FIT = new FittedRange(0, 30, 0, 35);

    /** Mean of the two sodium lines, in nm. */
    private static final double WAVELENGTH = 589.3;

    private RefractiveIndex() {}

    /**
     * Refractive index of seawater at 589.3 nm and one atmosphere, relative to air.
     *
     * <pre>
     * n = 1.31405 + (1.779e-4 - 1.05e-6 t + 1.6e-8 t^2) S - 2.02e-6 t^2
     *     + (15.868 + 0.01155 S - 0.00423 t) / lambda - 4382 / lambda^2 + 1.1455e6 / lambda^3
     * </pre>
     *
     * with lambda in nm.
     *
     * @param practicalSalinity PSS-78
     * @param temperature ITS-90
     * @return refractive index
     * @source Quan and Fry 1995, Appl. Opt. 34, 3477-3480 (doi 10.1364/AO.34.003477)
     * @validity 0 to 30 degC, S 0 to 35: {@link #FIT}; 1.5e-5 of the measurements, 0.08 in salinity, from memory
     */
    @Unit("1")
    public static double fromPractical(@Unit("1") double practicalSalinity, @Unit("degC") double temperature) {
        Bounds.practicalSalinity(practicalSalinity);
        return ofPureWater(temperature) + practicalSalinity * perSalinity(temperature);
    }

    /**
     * Practical salinity from the refractive index, the inverse of {@link #fromPractical}.
     *
     * @param refractiveIndex at 589.3 nm, relative to air
     * @param temperature of the drop, ITS-90
     * @return practical salinity
     * @source as {@link #fromPractical}
     * @validity as {@link #fromPractical}; refuses an index below that of pure water at the same temperature
     */
    @Unit("1")
    public static double toPractical(@Unit("1") double refractiveIndex, @Unit("degC") double temperature) {
        double fresh = ofPureWater(temperature);
        double slope = perSalinity(temperature);
        Bounds.within(
                refractiveIndex,
                "1",
                fresh,
                fresh + Bounds.SALTIEST_WATER * slope,
                "refractive index",
                "was it taken at this temperature, or corrected to 20 degC?");
        return Math.min(Bounds.SALTIEST_WATER, (refractiveIndex - fresh) / slope);
    }

    /** Index of pure water. */
    static double ofPureWater(double t) {
        Bounds.waterTemperature(t);
        return 1.31405
                - 2.02e-6 * t * t
                + (15.868 - 0.00423 * t) / WAVELENGTH
                - 4382 / (WAVELENGTH * WAVELENGTH)
                + 1.1455e6 / (WAVELENGTH * WAVELENGTH * WAVELENGTH);
    }

    /** Rise of the index with salinity, the same at every salinity. */
    static double perSalinity(double t) {
        return 1.779e-4 - 1.05e-6 * t + 1.6e-8 * t * t + 0.01155 / WAVELENGTH;
    }
}
