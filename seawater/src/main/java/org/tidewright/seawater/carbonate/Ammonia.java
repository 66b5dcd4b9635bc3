package org.tidewright.seawater.carbonate;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.range.FittedRange;
import org.tidewright.seawater.unit.Unit;

/**
 * How much of the ammonia in the water is un-ionised NH3, the form that passes through gills and poisons. A test kit
 * measures NH3 and NH4+ together; the share rises tenfold per unit of pH and by 7 % per degree.
 */
public final class Ammonia {
    /** The range of the model behind {@link #dissociation}. */
    public static final FittedRange FIT = new FittedRange(-2, 40, 0, 45);

    private Ammonia() {}

    /**
     * Dissociation constant of ammonium, NH4+ = NH3 + H+, on the total scale.
     *
     * <pre>
     * pKa = 9.244605 - 2729.33 (1/298.15 - 1/T) + (0.04203362 - 11.24742/T) S^0.25
     *       + (-13.6416 + 1.176949 T^0.5 - 0.02860785 T + 545.4834/T) S^0.5
     *       + (-0.1462507 + 0.0090226468 T^0.5 - 0.0001471361 T + 10.5425/T) S^1.5
     *       + (0.004669309 - 0.0001691742 T^0.5 - 0.5677934/T) S^2 + (-2.354039e-5 + 0.009698623/T) S^2.5
     * Ka = 10^-pKa (1 - 0.001005 S)
     * </pre>
     *
     * The source's constant is per kilogram of water; the last factor brings it to seawater, as the total scale counts.
     * Code that leaves it out finds 3 to 4 % more NH3.
     *
     * @param temperature ITS-90
     * @param practicalSalinity PSS-78
     * @return Ka per kilogram of seawater
     * @source Clegg and Whitfield 1995, Geochim. Cosmochim. Acta 59, 2403-2421, eq. 18, doi
     *     10.1016/0016-7037(95)00135-2
     * @validity -2 to 40 degC, S 0 to 45: {@link #FIT}; 5 % of the share, in the authors' words
     */
    @Unit("mol/kg")
    public static double dissociation(@Unit("degC") double temperature, @Unit("1") double practicalSalinity) {
        Conditions c = Conditions.at(temperature, practicalSalinity);
        return kPerWater(c) * c.waterShare;
    }

    /**
     * Share of the total ammonia that is un-ionised.
     *
     * <pre>NH3 / (NH3 + NH4+) = 1 / (1 + [H+]/Ka)</pre>
     *
     * @param temperature ITS-90
     * @param practicalSalinity PSS-78
     * @param phTotal on the total scale; an NBS-type probe reads about 0.13 more, which would be a third more NH3
     * @return share from 0 to 1
     * @source {@link #dissociation}
     * @validity as {@link #dissociation}; within 7 % of other published laws
     * @checkvalue S = 0, 25 degC, pH 8: 0.0539
     */
    @Unit("1")
    public static double unionisedShare(
            @Unit("degC") double temperature, @Unit("1") double practicalSalinity, @Unit("1") double phTotal) {
        Bounds.within(phTotal, "1", 0, 14, "pH");
        double h = Math.pow(10, -phTotal);
        double k = dissociation(temperature, practicalSalinity);
        return k / (k + h);
    }

    /**
     * pKa of ammonium by a short formula of other authors, to compare with: close to a probe's NBS-type reading, but
     * stated on the scale of its sources.
     *
     * <pre>pKa = 10.0423 - 0.0315536 t + 0.003071 S</pre>
     *
     * @param temperature ITS-90
     * @param practicalSalinity PSS-78
     * @return pKa
     * @source Bell, Johnson, Jickells and Liss 2008, Environ. Chem. 5, 258
     * @validity as its sources, seawater of 0 to 40 degC from memory
     */
    @Unit("1")
    public static double pkaBell(@Unit("degC") double temperature, @Unit("1") double practicalSalinity) {
        Bounds.waterTemperature(temperature);
        Bounds.practicalSalinity(practicalSalinity);
        return 10.0423 - 0.0315536 * temperature + 0.003071 * practicalSalinity;
    }

    /** Ka per kilogram of water. */
    static double kPerWater(Conditions c) {
        double rootT = Math.sqrt(c.kelvin);
        double q = Math.sqrt(c.rootS);
        double a = 0.04203362 - 11.24742 * c.perKelvin;
        double b = -13.6416 + 1.176949 * rootT - 0.02860785 * c.kelvin + 545.4834 * c.perKelvin;
        double d = -0.1462507 + 0.0090226468 * rootT - 0.0001471361 * c.kelvin + 10.5425 * c.perKelvin;
        double e = 0.004669309 - 0.0001691742 * rootT - 0.5677934 * c.perKelvin;
        double f = -2.354039e-5 + 0.009698623 * c.perKelvin;
        double pk = 9.244605
                - 2729.33 * (1 / 298.15 - c.perKelvin)
                + a * q
                + c.rootS * (b + c.s * (d + c.rootS * (e + c.rootS * f)));
        return Math.exp(-Math.log(10) * pk);
    }
}
