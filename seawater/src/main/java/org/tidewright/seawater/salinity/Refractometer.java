package org.tidewright.seawater.salinity;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * A hand refractometer: it feels the refractive index of a drop and shows it on a scale that is true for one salt at 20
 * degC. Three things come between its reading and the salinity: a scale made for table salt, what it was set on, and a
 * drop that is not at the temperature it was set at.
 *
 * @param scale what its marks stand for
 * @param compensated whether it takes away what temperature does to pure water (ATC). What temperature does to the
 *     salt's share stays: 0.3 too little at S 35 and 25 degC, set at 20 degC.
 * @param setSalinity practical salinity of the water it was set on, and the mark it was set to: 0 for pure water
 * @param setTemperature of that water, ITS-90
 */
public record Refractometer(
        Scale scale,
        boolean compensated,
        @Unit("1") double setSalinity,
        @Unit("degC") double setTemperature) {

    /** Where the marks of a scale are true. */
    private static final double SCALE_TEMPERATURE = 20; // degC

    private static final double ROUNDING = 1e-9;

    /** What the marks of a scale stand for; both are often printed as "ppt". */
    public enum Scale {
        /** Practical salinity of seawater. */
        SEAWATER,
        /**
         * Grams of sodium chloride per kilogram of solution, sold as "salinity" all the same. Set on pure water it
         * shows 36.5 in seawater of S 35, for sea salt bends light more than table salt does.
         */
        SODIUM_CHLORIDE;

        /**
         * Refractive index that a mark stands for, at 589.3 nm and 20 degC, relative to air.
         *
         * <pre>
         * seawater          n = n(S, 20 degC)
         * sodium chloride   n = 1.332988 + 1.755e-4 w
         * </pre>
         *
         * with w in grams of sodium chloride per kilogram of solution.
         *
         * @param mark on the scale
         * @return refractive index
         * @source {@link RefractiveIndex#fromPractical}; for sodium chloride a line through the table of the CRC
         *     Handbook of Chemistry and Physics, 102nd ed., within 4.5e-5, its own rounding (0.3 g/kg), from the index
         *     of water at 20 degC, Tilton and Taylor 1938, J. Res. NBS 20, 419, from memory
         * @validity 0 to 100 g/kg of sodium chloride; seawater as {@link RefractiveIndex#fromPractical}
         */
        @Unit("1")
        public double refractiveIndex(@Unit("1") double mark) {
            Bounds.within(mark, "1", 0, Bounds.SALTIEST_WATER, "mark on a refractometer");
            double water = this == SEAWATER ? RefractiveIndex.ofPureWater(SCALE_TEMPERATURE) : 1.332988;
            return water + mark * perMark();
        }

        private double perMark() {
            return this == SEAWATER ? RefractiveIndex.perSalinity(SCALE_TEMPERATURE) : 1.755e-4;
        }
    }

    public Refractometer {
        Bounds.practicalSalinity(setSalinity);
        Bounds.waterTemperature(setTemperature);
    }

    /** Set to 0 on pure water of 20 degC. */
    public static Refractometer zeroed(Scale scale, boolean compensated) {
        return new Refractometer(scale, compensated, 0, SCALE_TEMPERATURE);
    }

    /**
     * What it shows for a drop of seawater.
     *
     * <pre>r = S_0 + [n(S, t) - n(S_0, t_0)] / n'</pre>
     *
     * with n' the rise of the index from mark to mark and S_0, t_0 what it was set on; with compensation each n is less
     * that of pure water of the same temperature.
     *
     * @param practicalSalinity PSS-78
     * @param drop temperature of the drop, and of the prism, ITS-90
     * @return the reading, on its own scale; below 0 where the edge lies off the scale
     * @source Quan and Fry 1995: {@link RefractiveIndex#fromPractical}, and {@link Scale#refractiveIndex}
     * @validity as both; without compensation a degree is 0.5 to 0.6 in salinity
     */
    @Unit("1")
    public double reading(@Unit("1") double practicalSalinity, @Unit("degC") double drop) {
        return setSalinity + (seen(practicalSalinity, drop) - seen(setSalinity, setTemperature)) / scale.perMark();
    }

    /**
     * Practical salinity behind a reading, the inverse of {@link #reading}.
     *
     * @param reading on its own scale
     * @param drop temperature of the drop, and of the prism, ITS-90
     * @return practical salinity
     * @source as {@link #reading}
     * @validity as {@link #reading}; refuses a reading that no seawater of this temperature gives
     */
    @Unit("1")
    public double practicalSalinity(@Unit("1") double reading, @Unit("degC") double drop) {
        double seen = seen(setSalinity, setTemperature) + (reading - setSalinity) * scale.perMark();
        double salinity = (seen - seen(0, drop)) / RefractiveIndex.perSalinity(drop);
        Bounds.within(
                salinity,
                "1",
                -ROUNDING,
                Bounds.SALTIEST_WATER + ROUNDING,
                "practical salinity behind the reading " + reading,
                "is it a specific gravity, or was the drop of another temperature?");
        return Math.max(0, Math.min(Bounds.SALTIEST_WATER, salinity));
    }

    private double seen(double practicalSalinity, double temperature) {
        double index = RefractiveIndex.fromPractical(practicalSalinity, temperature);
        return compensated ? index - RefractiveIndex.ofPureWater(temperature) : index;
    }
}
