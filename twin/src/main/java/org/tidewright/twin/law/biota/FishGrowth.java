package org.tidewright.twin.law.biota;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * How a species grows with enough food: length nears its greatest, mass follows length.
 *
 * @param longest L_inf, total length it nears
 * @param rate K
 * @param massAtOneCentimetre a, of W = a (L/cm)^b
 * @param exponent b
 * @source von Bertalanffy 1938, Hum. Biol. 10, 181-213; coefficients by species in Morais and Bellwood 2018, Fish Fish.
 *     19, 874, and Morat et al. 2020, Sci. Data 7, 370, which differ by a factor of two to three; in captivity often
 *     slower (common practice)
 */
public record FishGrowth(
        @Unit("m") double longest,
        @Unit("1/s") double rate,
        @Unit("kg") double massAtOneCentimetre,
        @Unit("1") double exponent) {
    private static final double CENTIMETRE = 0.01; // m

    public FishGrowth {
        Bounds.within(longest, "m", 1e-3, 20, "greatest length");
        Bounds.within(rate, "1/s", 0, 1e-5, "rate of growth");
        Bounds.positive(massAtOneCentimetre, "kg", "mass at one centimetre");
        Bounds.within(exponent, "1", 2, 4, "exponent of mass with length");
    }

    /**
     * Length after a time.
     *
     * <pre>L(t) = L_inf - (L_inf - L_0) e^(-K t)</pre>
     *
     * @param start L_0, total length
     * @param time t
     * @return total length; a fish longer than L_inf stays as it is
     * @source von Bertalanffy 1938
     * @validity enough food
     */
    @Unit("m")
    public double length(@Unit("m") double start, @Unit("s") double time) {
        Bounds.within(start, "m", 0, 20, "length");
        Bounds.notNegative(time, "s", "time");
        return start >= longest ? start : start + (longest - start) * -Math.expm1(-rate * time);
    }

    /**
     * Mass of a length.
     *
     * <pre>W = a (L/cm)^b</pre>
     *
     * @param length L, total
     * @return live mass
     * @source allometry fitted by species, as FishBase compiles it
     * @validity ordinary condition
     */
    @Unit("kg")
    public double mass(@Unit("m") double length) {
        Bounds.within(length, "m", 0, 20, "length");
        return massAtOneCentimetre * Math.pow(length / CENTIMETRE, exponent);
    }

    /**
     * Length of a mass, the inverse of {@link #mass}.
     *
     * @param mass live
     * @return total length
     * @source as {@link #mass}
     * @validity as {@link #mass}
     */
    @Unit("m")
    public double lengthOf(@Unit("kg") double mass) {
        Bounds.within(mass, "kg", 0, 1000, "mass of the fish");
        return CENTIMETRE * Math.pow(mass / massAtOneCentimetre, 1 / exponent);
    }

    /**
     * Gain of mass with enough food.
     *
     * <pre>dW/dt = b K W (L_inf - L)/L, not below 0</pre>
     *
     * @param mass W, live
     * @return mass per time
     * @source derivative of {@link #length} and {@link #mass}
     * @validity as they are
     */
    @Unit("kg/s")
    public double potentialGain(@Unit("kg") double mass) {
        double length = lengthOf(mass);
        return length <= 0 || length >= longest ? 0 : exponent * rate * mass * (longest - length) / length;
    }

    /**
     * Gain of mass with the food there is: no more than the species can, no more than was retained.
     *
     * <pre>min(dW/dt, J / n)</pre>
     *
     * @param mass W, live
     * @param retained J, nitrogen retained from food
     * @return mass per time
     * @source Liebig's law; n is {@link BodyComposition#NITROGEN}
     * @validity ordinary condition: what a fish lays on or starves off without growing is left out
     */
    @Unit("kg/s")
    public double gain(@Unit("kg") double mass, @Unit("mol/s") double retained) {
        Bounds.finite(retained, "mol/s", "nitrogen retained");
        return Math.min(potentialGain(mass), Math.max(0, retained) / BodyComposition.NITROGEN);
    }

    /**
     * Nitrogen that a well-fed fish absorbs and has no use for, and so excretes after all.
     *
     * <pre>J - n dW/dt</pre>
     *
     * @param retained J, nitrogen retained from food
     * @param gain dW/dt, of {@link #gain}
     * @return amount per time, not below 0
     * @source mass balance
     * @validity as {@link #gain}
     */
    @Unit("mol/s")
    public double surplus(@Unit("mol/s") double retained, @Unit("kg/s") double gain) {
        Bounds.finite(retained, "mol/s", "nitrogen retained");
        Bounds.finite(gain, "kg/s", "gain");
        return Math.max(0, retained - gain * BodyComposition.NITROGEN);
    }
}
