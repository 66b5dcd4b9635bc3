package org.tidewright.twin.law.light;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.law.gas.Q10;

/**
 * Oxygen that photosynthesis makes in light: in proportion while it is dim, no more than so much when bright. Harm by
 * too much light is left out.
 */
public final class PhotosynthesisLight {
    /** Temperature at which the rates of {@link Phototroph} hold. */
    @Unit("degC")
    public static final double REFERENCE_TEMPERATURE = 26;

    /** Oxygen made over inorganic carbon taken, usual; from memory. */
    @Unit("1")
    public static final double QUOTIENT_USUAL = 1.1;

    /** The same, low; from memory. */
    @Unit("1")
    public static final double QUOTIENT_LOW = 1.0;

    /** The same, high: growth on nitrate; from memory. */
    @Unit("1")
    public static final double QUOTIENT_HIGH = 1.4;

    private PhotosynthesisLight() {}

    /**
     * Oxygen made before respiration.
     *
     * <pre>P = P_max tanh(I/Ik)</pre>
     *
     * @param most P_max
     * @param light I
     * @param lightSaturation Ik, P_max over the initial slope
     * @return amount per area and time
     * @source Jassby and Platt 1976, Limnol. Oceanogr. 21, 540-547
     * @validity without harm by too much light
     */
    @Unit("mol/(m^2*s)")
    public static double gross(
            @Unit("mol/(m^2*s)") double most,
            @Unit("mol/(m^2*s)") double light,
            @Unit("mol/(m^2*s)") double lightSaturation) {
        Bounds.within(most, "mol/(m^2*s)", 0, 1, "largest photosynthesis");
        checkLight(light, lightSaturation);
        return most * Math.tanh(light / lightSaturation);
    }

    /**
     * Oxygen given to the water; negative in the dark.
     *
     * <pre>P - R</pre>
     *
     * @param gross P
     * @param respiration R of the same area
     * @return amount per area and time
     * @source definition
     * @validity respiration in light taken to be that in the dark, which is too low for corals
     */
    @Unit("mol/(m^2*s)")
    public static double net(@Unit("mol/(m^2*s)") double gross, @Unit("mol/(m^2*s)") double respiration) {
        Bounds.notNegative(gross, "mol/(m^2*s)", "gross photosynthesis");
        Bounds.notNegative(respiration, "mol/(m^2*s)", "respiration");
        return gross - respiration;
    }

    /**
     * Largest photosynthesis at another temperature. The initial slope, light's own, stays; so the light saturation
     * rises by the same factor.
     *
     * <pre>f = Q10^((T - 26 degC) / 10 K)</pre>
     *
     * @param temperature T of the water, ITS-90
     * @return factor on P_max and Ik
     * @source Q10 of {@link Q10#COMMUNITY}; slope free of temperature: Davison 1991, J. Phycol. 27, 2-8, from memory
     * @validity 20 to 30 degC; above the optimum, near 30, it falls in nature and not here
     */
    @Unit("1")
    public static double warmth(@Unit("degC") double temperature) {
        return Q10.factor(Q10.COMMUNITY, temperature, REFERENCE_TEMPERATURE);
    }

    /**
     * Inorganic carbon taken for the oxygen made. Alkalinity changes only by the nitrogen taken with it.
     *
     * <pre>C = P / PQ</pre>
     *
     * @param oxygen P
     * @param quotient PQ, {@link #QUOTIENT_USUAL}
     * @return the same unit as the oxygen's
     * @source definition of the photosynthetic quotient
     * @validity the mean of a day; through a day it drifts
     */
    @Unit("mol/(m^2*s)")
    public static double carbonTaken(@Unit("mol/(m^2*s)") double oxygen, @Unit("1") double quotient) {
        Bounds.finite(oxygen, "mol/(m^2*s)", "oxygen made");
        Bounds.within(quotient, "1", 0.5, 3, "photosynthetic quotient");
        return oxygen / quotient;
    }

    /**
     * Oxygen made in a day of light that rises in a straight line, holds and falls as it rose.
     *
     * <pre>
     * P_day = P_max [(L - 2 r) tanh(x) + 2 r ln(cosh x) / x],  x = I/Ik
     * </pre>
     *
     * @param most P_max
     * @param light I, the full light
     * @param lightSaturation Ik
     * @param duration L from first to last light
     * @param ramp r of each of the two; at most half of the duration counts
     * @return amount per area and day
     * @source integral of {@link #gross} over {@link Photoperiod#ramped}
     * @validity as {@link #gross}
     */
    @Unit("mol/m^2")
    public static double grossOfDay(
            @Unit("mol/(m^2*s)") double most,
            @Unit("mol/(m^2*s)") double light,
            @Unit("mol/(m^2*s)") double lightSaturation,
            @Unit("s") double duration,
            @Unit("s") double ramp) {
        Bounds.within(most, "mol/(m^2*s)", 0, 1, "largest photosynthesis");
        checkLight(light, lightSaturation);
        Photoperiod.check(duration, ramp);
        double slope = Photoperiod.effectiveRamp(duration, ramp);
        double x = light / lightSaturation;
        return most * ((duration - 2 * slope) * Math.tanh(x) + 2 * slope * meanOverRamp(x));
    }

    /** Mean of tanh from 0 to x: ln(cosh x)/x. */
    private static double meanOverRamp(double x) {
        if (x < 1e-3) {
            return x * (0.5 - x * x / 12);
        }
        return (x + Math.log1p(Math.exp(-2 * x)) - Math.log(2)) / x;
    }

    private static void checkLight(double light, double lightSaturation) {
        Bounds.within(light, "mol/(m^2*s)", 0, 0.1, "light", "is it in umol/(m^2 s)?");
        Bounds.within(lightSaturation, "mol/(m^2*s)", 1e-9, 0.1, "light saturation", "is it in umol/(m^2 s)?");
    }
}
