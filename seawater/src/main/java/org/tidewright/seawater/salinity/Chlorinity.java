package org.tidewright.seawater.salinity;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * Chlorinity, the measure of salt before conductivity: grams of chloride, with bromide and iodide counted as the
 * chloride that would take up as much silver, per kilogram of seawater. The amounts of the other ions are tabulated
 * against it.
 */
public final class Chlorinity {
    private static final double SALINITY_PER_CHLORINITY = 1.80655;

    private Chlorinity() {}

    /**
     * Chlorinity of seawater of reference composition.
     *
     * <pre>Cl = S / 1.80655</pre>
     *
     * @param practicalSalinity PSS-78
     * @return chlorinity
     * @source Wooster, Lee and Dietrich 1969, Limnol. Oceanogr. 14, 437-438, the definition of salinity that PSS-78 was
     *     joined to at 35
     * @validity seawater in its natural proportions; a salt mix poor in chloride has another ratio
     * @checkvalue S = 35: 19.374 g/kg
     */
    @Unit("g/kg")
    public static double fromPractical(@Unit("1") double practicalSalinity) {
        Bounds.practicalSalinity(practicalSalinity);
        return practicalSalinity / SALINITY_PER_CHLORINITY;
    }

    /**
     * Practical salinity from chlorinity, the inverse of {@link #fromPractical}.
     *
     * @param chlorinity of the seawater
     * @return practical salinity, PSS-78
     * @source as {@link #fromPractical}
     * @validity as {@link #fromPractical}
     */
    @Unit("1")
    public static double toPractical(@Unit("g/kg") double chlorinity) {
        double highest = Bounds.SALTIEST_WATER / SALINITY_PER_CHLORINITY;
        Bounds.within(chlorinity, "g/kg", 0, highest, "chlorinity", "is it in mg/kg or mg/L?");
        return Math.min(Bounds.SALTIEST_WATER, chlorinity * SALINITY_PER_CHLORINITY);
    }
}
