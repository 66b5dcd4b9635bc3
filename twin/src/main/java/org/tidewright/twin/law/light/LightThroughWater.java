package org.tidewright.twin.law.light;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * What water lets through to a depth, and what a day of light adds up to. In an aquarium distance from the lamp and the
 * spread of its beam matter more than the water; they are not here.
 */
public final class LightThroughWater {
    /** Attenuation of an aquarium's water, usual; from memory. */
    @Unit("1/m")
    public static final double ATTENUATION_USUAL = 0.3;

    /** The same, low: polished with carbon, a clear reef's; Hochberg et al. 2020 have 0.04 to 0.15 on reefs. */
    @Unit("1/m")
    public static final double ATTENUATION_LOW = 0.1;

    /** The same, high: yellow after months without carbon; from memory. */
    @Unit("1/m")
    public static final double ATTENUATION_HIGH = 0.6;

    private LightThroughWater() {}

    /**
     * Share of the light left at a depth.
     *
     * <pre>exp(-K z)</pre>
     *
     * @param attenuation K of the light from 400 to 700 nm
     * @param depth z
     * @return share, 0 to 1
     * @source Lambert's law
     * @validity one attenuation for all colours: red goes sooner, blue later
     */
    @Unit("1")
    public static double left(@Unit("1/m") double attenuation, @Unit("m") double depth) {
        return Math.exp(-opticalDepth(attenuation, depth));
    }

    /**
     * Mean of the share left over a layer from the surface down.
     *
     * <pre>[1 - exp(-K h)] / (K h)</pre>
     *
     * @param attenuation K
     * @param depth h of the layer's bottom
     * @return share, 1 where there is no water
     * @source integral of Lambert's law
     * @validity as {@link #left}
     */
    @Unit("1")
    public static double meanLeft(@Unit("1/m") double attenuation, @Unit("m") double depth) {
        double thickness = opticalDepth(attenuation, depth);
        return thickness < 1e-12 ? 1 : -Math.expm1(-thickness) / thickness;
    }

    /**
     * Attenuation from the depth at which one per cent of the light is left.
     *
     * <pre>K = ln(100) / z</pre>
     *
     * @param depth z
     * @return attenuation
     * @source Lambert's law
     * @validity as {@link #left}
     */
    @Unit("1/m")
    public static double attenuationFromOnePercent(@Unit("m") double depth) {
        Bounds.within(depth, "m", 0.01, 1000, "depth of one per cent of the light");
        return Math.log(100) / depth;
    }

    /**
     * Mean light over the area of a tank's floor.
     *
     * <pre>I = Phi T c / A exp(-K z)</pre>
     *
     * @param lampFlux Phi of the lamps
     * @param throughSurface T, the share that passes the surface, 0.90 to 0.98
     * @param keptByWalls c, the share the walls throw back in, 0.7 to 0.9
     * @param area A of the floor
     * @param left exp(-K z), see {@link #left}
     * @return light
     * @source light budget, common practice
     * @validity a lamp over the whole tank; the middle is brighter and the corners darker by a factor of two
     */
    @Unit("mol/(m^2*s)")
    public static double areaMean(
            @Unit("mol/s") double lampFlux,
            @Unit("1") double throughSurface,
            @Unit("1") double keptByWalls,
            @Unit("m^2") double area,
            @Unit("1") double left) {
        Bounds.within(lampFlux, "mol/s", 0, 10, "photon flux of the lamps", "is it in umol/s?");
        Bounds.within(throughSurface, "1", 0, 1, "share of light through the surface");
        Bounds.within(keptByWalls, "1", 0, 1, "share of light kept by the walls");
        Bounds.within(area, "m^2", 1e-6, 1e6, "area of the floor");
        Bounds.within(left, "1", 0, 1, "share of light left by the water");
        return lampFlux * throughSurface * keptByWalls / area * left;
    }

    /**
     * Light a day of it adds up to, the daily light integral.
     *
     * <pre>DLI = I (L - r)</pre>
     *
     * @param light I, the full light
     * @param duration L from first to last light
     * @param ramp r of each of the two ramps; see {@link Photoperiod#ramped}
     * @return photons per area and day
     * @source definition
     * @validity straight ramps
     */
    @Unit("mol/m^2")
    public static double dailyIntegral(
            @Unit("mol/(m^2*s)") double light, @Unit("s") double duration, @Unit("s") double ramp) {
        Bounds.within(light, "mol/(m^2*s)", 0, 0.1, "light", "is it in umol/(m^2 s)?");
        return light * Photoperiod.DAY * Photoperiod.meanOfRamped(duration, ramp);
    }

    private static double opticalDepth(double attenuation, double depth) {
        Bounds.within(attenuation, "1/m", 0, 1000, "attenuation of light");
        Bounds.within(depth, "m", 0, 1000, "depth");
        return attenuation * depth;
    }
}
