package org.tidewright.seawater.salinity;

import org.tidewright.seawater.density.Density;
import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * A floating hydrometer whose scale is a specific gravity. It is right at its own temperature; elsewhere the water has
 * another density, and the glass another volume.
 *
 * @param temperature it was marked for, ITS-90; the first of the pair on its scale
 * @param waterTemperature of the pure water its scale is compared with, ITS-90; the second of the pair
 * @param expansion of its volume with temperature
 */
public record Hydrometer(
        @Unit("degC") double temperature,
        @Unit("degC") double waterTemperature,
        @Unit("1/K") double expansion) {
    /**
     * Cubic expansion of the soda-lime glass that hydrometers are made of.
     *
     * @source ISO 649-1, (25 +- 2)e-6 per degC, from memory
     */
    @Unit("1/K")
    public static final double GLASS = 25e-6;

    /** No solid an instrument is made of expands more. */
    private static final double MOST_EXPANSION = 1e-3;

    public Hydrometer {
        Bounds.waterTemperature(temperature);
        Bounds.waterTemperature(waterTemperature);
        Bounds.within(expansion, "1/K", 0, MOST_EXPANSION, "expansion of a hydrometer");
    }

    /** Of glass. */
    public static Hydrometer ofGlass(@Unit("degC") double temperature, @Unit("degC") double waterTemperature) {
        return new Hydrometer(temperature, waterTemperature, GLASS);
    }

    /**
     * What it shows in water.
     *
     * <pre>d = rho(S, t) (1 + gamma (t - t_h)) / rho_w(t_w)</pre>
     *
     * @param practicalSalinity PSS-78
     * @param water temperature of the water it floats in, ITS-90
     * @return the reading, a specific gravity on its own scale
     * @source Archimedes' principle: it displaces its mass, of a volume that grew
     * @validity as {@link Density#ofSeawater}; surface tension of dirty glass, 0.0005 and more from memory, is not in it
     */
    @Unit("1")
    public double reading(@Unit("1") double practicalSalinity, @Unit("degC") double water) {
        return Density.ofSeawater(water, practicalSalinity) * grown(water) / Density.ofPureWater(waterTemperature);
    }

    /**
     * Practical salinity from a reading, the inverse of {@link #reading}.
     *
     * @param reading a specific gravity on its own scale
     * @param water temperature of the water it floats in, ITS-90
     * @return practical salinity
     * @source as {@link #reading}
     * @validity as {@link #reading}
     */
    @Unit("1")
    public double practicalSalinity(@Unit("1") double reading, @Unit("degC") double water) {
        return SpecificGravity.ofDensity(reading * Density.ofPureWater(waterTemperature) / grown(water), water);
    }

    private double grown(double water) {
        return 1 + expansion * (water - temperature);
    }
}
