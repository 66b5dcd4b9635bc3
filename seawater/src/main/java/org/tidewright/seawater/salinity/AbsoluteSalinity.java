package org.tidewright.seawater.salinity;

import org.tidewright.seawater.density.Density;
import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * Mass of dissolved salt in seawater of reference composition, the composition of the North Atlantic. A salt mix with
 * other proportions carries a slightly different mass at the same conductivity.
 *
 * <p>Grams per kilogram are parts per thousand by mass. The "ppt" on a hydrometer or a refractometer means either this
 * or practical salinity, seldom saying which: at 35 the two are 0.165 apart. Grams per litre are more again: {@link
 * #saltPerVolume}.
 */
public final class AbsoluteSalinity {
    /** Absolute salinity of reference-composition seawater per unit of practical salinity, u_PS. */
    private static final double PER_PRACTICAL_SALINITY = 35.16504 / 35;

    private AbsoluteSalinity() {}

    /**
     * Reference-composition absolute salinity from practical salinity.
     *
     * <pre>S_R = (35.16504 / 35) g/kg S_P</pre>
     *
     * @param practicalSalinity PSS-78
     * @return grams of anhydrous salt per kilogram of seawater
     * @source Millero et al. 2008, Deep-Sea Res. I 55, 50-72 (doi 10.1016/j.dsr.2007.10.001); IOC, SCOR and IAPSO 2010,
     *     eq. 2.4.1
     * @validity S 2 to 42, the range of PSS-78; linear, so any
     * @checkvalue S_P = 34.5487: 34.711611927085727 g/kg (TEOS-10 toolbox)
     */
    @Unit("g/kg")
    public static double fromPractical(@Unit("1") double practicalSalinity) {
        Bounds.practicalSalinity(practicalSalinity);
        return practicalSalinity * PER_PRACTICAL_SALINITY;
    }

    /**
     * Practical salinity from reference-composition absolute salinity, the inverse of {@link #fromPractical}.
     *
     * @param absoluteSalinity grams of anhydrous salt per kilogram of seawater
     * @return practical salinity, PSS-78
     * @source Millero et al. 2008, Deep-Sea Res. I 55, 50-72
     * @validity as {@link #fromPractical}
     */
    @Unit("1")
    public static double toPractical(@Unit("g/kg") double absoluteSalinity) {
        double practicalSalinity = absoluteSalinity / PER_PRACTICAL_SALINITY;
        Bounds.practicalSalinity(practicalSalinity);
        return practicalSalinity;
    }

    /**
     * Mass of anhydrous salt in a volume of seawater; the same number in grams per litre.
     *
     * <pre>m / V = rho S_R</pre>
     *
     * @param temperature in-situ temperature, ITS-90
     * @param practicalSalinity PSS-78
     * @return kilograms of anhydrous salt per cubic metre of seawater
     * @source the two definitions above with EOS-80 density
     * @validity as {@link Density#ofSeawater}
     */
    @Unit("kg/m^3")
    public static double saltPerVolume(@Unit("degC") double temperature, @Unit("1") double practicalSalinity) {
        return Density.ofSeawater(temperature, practicalSalinity) * fromPractical(practicalSalinity) / 1000;
    }
}
