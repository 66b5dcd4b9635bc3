package org.tidewright.twin.law.gas;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/** Gas that water exchanges with the air as it falls over an overflow. */
public final class WeirAeration {
    /** a of clean water; from memory: 1.8, slightly polluted 1.6, moderately 1.0, grossly 0.65. */
    @Unit("1")
    public static final double CLEAN_WATER = 1.8;

    /** b of a broad crest or a sheet along a wall: 0.6 to 0.8 of a free fall into a deep pool; from memory. */
    @Unit("1")
    public static final double ALONG_A_WALL = 0.7;

    private static final double HIGHEST_FALL = 5;

    private WeirAeration() {}

    /**
     * Oxygen deficit above the fall over that below it.
     *
     * <pre>r = 1 + 0.38 a b h (1 - 0.11 h) (1 + 0.046 T)</pre>
     *
     * @param quality a of the water, {@link #CLEAN_WATER}
     * @param form b of the fall, 1 for a free fall, {@link #ALONG_A_WALL}
     * @param height h of the fall
     * @param temperature T of the water, ITS-90
     * @return r, 1 where nothing is exchanged
     * @source Water Pollution Research Laboratory 1973, Notes on Water Pollution 61, after Gameson 1957, J. Inst. Water
     *     Eng. 11, 477-490; from memory
     * @validity falls up to 2 m of river water; seawater and small streams are an extrapolation
     */
    @Unit("1")
    public static double deficitRatio(
            @Unit("1") double quality,
            @Unit("1") double form,
            @Unit("m") double height,
            @Unit("degC") double temperature) {
        Bounds.within(height, "m", 0, HIGHEST_FALL, "fall");
        Bounds.waterTemperature(temperature);
        return 1 + 0.38 * quality * form * height * (1 - 0.11 * height) * (1 + 0.046 * temperature);
    }

    /**
     * The same exchange as a flow of water brought to rest with the air.
     *
     * <pre>Q (1 - 1/r)</pre>
     *
     * @param flow Q over the fall
     * @param deficitRatio r
     * @return volume per time
     * @source definition of r
     * @validity everywhere
     */
    @Unit("m^3/s")
    public static double conductance(@Unit("m^3/s") double flow, @Unit("1") double deficitRatio) {
        Bounds.within(deficitRatio, "1", 1, 100, "deficit ratio");
        return flow * (1 - 1 / deficitRatio);
    }
}
