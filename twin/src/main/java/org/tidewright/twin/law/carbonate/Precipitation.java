package org.tidewright.twin.law.carbonate;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * Aragonite that grows without life where the water is over-saturated: slowly on the little bare carbonate of a settled
 * system, fast once fine particles offer new surface, at once when even clear water nucleates.
 *
 * <p>Weak points. The growth on a surface is measured; the surface is not. A film of life and phosphate shuts most of
 * it, which is why seawater and aquaria stay far above saturation for years: the usual bare surface is set so that a
 * settled tank loses less than is noticed. What opens between saturation 5 and 7, and between 16 and 20, is a smooth
 * gate through observed limits, not a rate law of nucleation; a runaway in nature also feeds itself with each crystal
 * and lasts after the saturation has fallen, which the gate does not remember.
 */
public final class Precipitation {
    /** Bare carbonate surface of a settled system, usual: nothing a keeper would notice. */
    @Unit("1/m")
    public static final double BARE_USUAL = 0.1;

    /** The same, low; a guess. */
    @Unit("1/m")
    public static final double BARE_LOW = 0.02;

    /** The same, high: new sand and rock, scaled heaters; a guess. */
    @Unit("1/m")
    public static final double BARE_HIGH = 1;

    /**
     * Fine surface of a runaway, usual: the 40 m^2 of 40 g of powder in a cubic metre; loses 2 mol of alkalinity for
     * each m^3 in a day at saturation 8 with all of it, half with the half that is there, inside the 1 to 5 of common
     * practice.
     */
    @Unit("1/m")
    public static final double FINE_USUAL = 40;

    /** The same, low; common practice. */
    @Unit("1/m")
    public static final double FINE_LOW = 20;

    /** The same, high; common practice. */
    @Unit("1/m")
    public static final double FINE_HIGH = 100;

    /** Surface of crystals born in clear water: the excess is gone within hours; from memory. */
    @Unit("1/m")
    public static final double SPONTANEOUS = 200;

    private static final double RUNAWAY_STARTS = 7; // Moras et al. 2022: none seen at 5, runaway above 7
    private static final double RUNAWAY = 9; // ours: phosphate and organics of a tank hold it back
    private static final double NUCLEATION_STARTS = 16;
    private static final double NUCLEATION = 20; // Morse and He 1993: 18 to 20
    private static final double MICROMOLE_PER_HOUR = 1e-6 / 3600; // mol/s

    private Precipitation() {}

    /**
     * Aragonite that grows on each area of clean aragonite.
     *
     * <pre>
     * R = k (omega - 1)^n
     * k = -0.0177 T^2 + 1.47 T + 14.9 umol/(m^2 h),  n = 0.0628 T + 0.0985
     * </pre>
     *
     * @param saturation omega with aragonite
     * @param temperature T, ITS-90; outside 5 to 37 degC the nearer end is taken
     * @return moles of carbonate per area and time, 0 below saturation
     * @source Burton and Walter 1987, Geology 15, 111-114, in the fit of McCulloch et al. 2012, Nat. Clim. Change 2,
     *     623-627, from memory; the fit meets the three temperatures of the source as open code has them
     * @validity 5 to 37 degC, omega up to about 15, seawater poor in phosphate and organics
     * @checkvalue 25 degC: k 40.6 umol/(m^2 h), n 1.7
     */
    @Unit("mol/(m^2*s)")
    public static double perSurface(@Unit("1") double saturation, @Unit("degC") double temperature) {
        Bounds.within(saturation, "1", 0, 1e9, "saturation with aragonite");
        Bounds.waterTemperature(temperature);
        if (saturation <= 1) {
            return 0;
        }
        double t = Math.max(5, Math.min(37, temperature));
        double k = 14.9 + t * (1.47 - 0.0177 * t);
        double n = 0.0628 * t + 0.0985;
        return k * MICROMOLE_PER_HOUR * Math.pow(saturation - 1, n);
    }

    /**
     * Surface per volume of water on which aragonite grows.
     *
     * <pre>
     * a = a_bare + a_fine s[(omega - 7) / 2] + 200 s[(omega - 16) / 4]
     * s(x) = x^2 (3 - 2 x), 0 below x = 0 and 1 above x = 1
     * </pre>
     *
     * @param saturation omega with aragonite
     * @param bare a_bare, {@link #BARE_USUAL}; add what powder was stirred in
     * @param fine a_fine, {@link #FINE_USUAL}
     * @return area per volume, without a jump
     * @source limits: Moras et al. 2022, Biogeosciences 19, 3537-3557 (none at omega 5, runaway above 7); Morse and He
     *     1993, Mar. Chem. 41, 291-297 (nucleation without particles, from memory). The gate is ours
     * @validity order of magnitude
     */
    @Unit("1/m")
    public static double surface(@Unit("1") double saturation, @Unit("1/m") double bare, @Unit("1/m") double fine) {
        Bounds.within(saturation, "1", 0, 1e9, "saturation with aragonite");
        Bounds.within(bare, "1/m", 0, 1e6, "bare carbonate surface per volume");
        Bounds.within(fine, "1/m", 0, 1e6, "fine surface per volume");
        return bare
                + fine * gate(saturation, RUNAWAY_STARTS, RUNAWAY)
                + SPONTANEOUS * gate(saturation, NUCLEATION_STARTS, NUCLEATION);
    }

    private static double gate(double value, double closed, double open) {
        double x = Math.max(0, Math.min(1, (value - closed) / (open - closed)));
        return x * x * (3 - 2 * x);
    }

    /**
     * Aragonite that leaves each volume of water; twice as much alkalinity does.
     *
     * <pre>r = R a</pre>
     *
     * @param saturation omega with aragonite
     * @param temperature ITS-90
     * @param bare see {@link #surface}
     * @param fine see {@link #surface}
     * @return moles of carbonate per volume and time
     * @source {@link #perSurface}, {@link #surface}
     * @validity order of magnitude
     */
    @Unit("mol/(m^3*s)")
    public static double perVolume(
            @Unit("1") double saturation,
            @Unit("degC") double temperature,
            @Unit("1/m") double bare,
            @Unit("1/m") double fine) {
        return perSurface(saturation, temperature) * surface(saturation, bare, fine);
    }
}
