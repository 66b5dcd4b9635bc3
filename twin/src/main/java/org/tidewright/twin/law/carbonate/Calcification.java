package org.tidewright.twin.law.carbonate;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.law.nutrient.Limitation;

/**
 * Skeleton that corals and coralline algae lay down: a rate known in good conditions, times what each condition leaves
 * of it. The reference is a reef's day: saturation 4, the optimum of temperature, day and night together.
 *
 * <pre>G = g X f(omega) f(I) f(T) f(A)</pre>
 *
 * Dissolution of bare skeleton below saturation is left out.
 */
public final class Calcification {
    /** Molar mass of CaCO3. */
    @Unit("kg/mol")
    public static final double MOLAR_MASS = 100.087e-3;

    /** Saturation with aragonite at which the reference rates hold, a tropical reef's; from memory. */
    @Unit("1")
    public static final double REFERENCE_SATURATION = 4;

    /** Exponent of the response to saturation, usual: between the two sources beside it. */
    @Unit("1")
    public static final double EXPONENT_USUAL = 0.7;

    /** The same, low: 15 % for each unit of saturation, Chan and Connolly 2013. */
    @Unit("1")
    public static final double EXPONENT_LOW = 0.4;

    /** The same, high: in proportion, Langdon and Atkinson 2005. */
    @Unit("1")
    public static final double EXPONENT_HIGH = 1.0;

    /** Rate in saturating light over rate in the dark, usual; a review has 3 (Gattuso et al. 1999, from memory). */
    @Unit("1")
    public static final double LIGHT_RATIO_USUAL = 2.5;

    /** The same, low; from memory. */
    @Unit("1")
    public static final double LIGHT_RATIO_LOW = 1.5;

    /** The same, high; from memory. */
    @Unit("1")
    public static final double LIGHT_RATIO_HIGH = 4;

    /** Light at which the enhancement bends over, usual: as photosynthesis does; from memory. */
    @Unit("mol/(m^2*s)")
    public static final double LIGHT_SATURATION_USUAL = 180e-6;

    /** The same, low; from memory. */
    @Unit("mol/(m^2*s)")
    public static final double LIGHT_SATURATION_LOW = 80e-6;

    /** The same, high; from memory. */
    @Unit("mol/(m^2*s)")
    public static final double LIGHT_SATURATION_HIGH = 350e-6;

    /** Mean over the reference day of the enhancement's share: 10 to 12 hours of mostly saturating light. */
    @Unit("1")
    public static final double REFERENCE_LIT_SHARE = 0.4;

    /** Temperature of the fastest growth, usual; from memory. */
    @Unit("degC")
    public static final double OPTIMUM_USUAL = 27;

    /** The same, low; from memory. */
    @Unit("degC")
    public static final double OPTIMUM_LOW = 25.5;

    /** The same, high; from memory. */
    @Unit("degC")
    public static final double OPTIMUM_HIGH = 28.5;

    /**
     * Distance from the optimum at which 1/e of the rate is left, usual. With it the rate rises by 8 % for each kelvin
     * from 24 to 27 degC, inside the 5 to 10 % remembered, and falls by 18 % from 30 to 31.
     */
    @Unit("K")
    public static final double WIDTH_USUAL = 6;

    /** The same, low; a guess. */
    @Unit("K")
    public static final double WIDTH_LOW = 4;

    /** The same, high; a guess. */
    @Unit("K")
    public static final double WIDTH_HIGH = 8;

    /** Alkalinity at which half the rate is left: a guard for water run empty, not a measurement. */
    @Unit("mol/m^3")
    public static final double HALF_ALKALINITY = 0.1;

    /** Rate in an aquarium over that in the field, usual; fit it to the keeper's log. */
    @Unit("1")
    public static final double CAPTIVITY_USUAL = 0.5;

    /** The same, low; a guess. */
    @Unit("1")
    public static final double CAPTIVITY_LOW = 0.2;

    /** The same, high; a guess. */
    @Unit("1")
    public static final double CAPTIVITY_HIGH = 1.0;

    /** Magnesium's share of stony coral's carbonate, 0.003 to 0.006; from memory. */
    @Unit("1")
    public static final double MAGNESIUM_IN_CORAL = 0.005;

    /** Magnesium's share of coralline algae's, 0.10 to 0.25, more in the warm (Kolesar 1978); from memory. */
    @Unit("1")
    public static final double MAGNESIUM_IN_CORALLINE = 0.15;

    static final double MILLIGRAM_PER_SQUARE_CENTIMETRE_AND_DAY = 1e-6 * 1e4 / MOLAR_MASS / 86_400; // mol/(m^2 s)

    /** Below this excess over saturation the response is taken straight, lest its slope be infinite. */
    private static final double STRAIGHT = 0.1;

    private Calcification() {}

    /**
     * Response to the saturation with aragonite.
     *
     * <pre>
     * f = phi(omega - 1) / phi(4 - 1) above saturation, 0 below
     * phi(e) = e (e^2 + 0.1^2)^((n - 1)/2), which is e^n but near zero
     * </pre>
     *
     * @param saturation omega
     * @param exponent n, {@link #EXPONENT_USUAL}
     * @return factor, 1 at {@link #REFERENCE_SATURATION}
     * @source n = 1: Langdon and Atkinson 2005, J. Geophys. Res. 110, C09S07; n = 0.4 for the 15 % a unit of Chan and
     *     Connolly 2013, Glob. Change Biol. 19, 282-290; both from memory
     * @validity omega 1 to 6; above, measurements are few and the rise may end
     */
    @Unit("1")
    public static double saturationResponse(@Unit("1") double saturation, @Unit("1") double exponent) {
        Bounds.within(saturation, "1", 0, 1e9, "saturation with aragonite");
        Bounds.within(exponent, "1", 0.1, 3, "exponent of the response to saturation");
        if (saturation <= 1) {
            return 0;
        }
        double excess = saturation - 1;
        double reference = REFERENCE_SATURATION - 1;
        double squares = (excess * excess + STRAIGHT * STRAIGHT) / (reference * reference + STRAIGHT * STRAIGHT);
        return excess / reference * Math.pow(squares, (exponent - 1) / 2);
    }

    /**
     * Response to light.
     *
     * <pre>f = [1 + (r - 1) tanh(I/Ik)] / [1 + (r - 1) 0.4]</pre>
     *
     * @param light I on the colony
     * @param lightSaturation Ik, {@link #LIGHT_SATURATION_USUAL}
     * @param ratio r, {@link #LIGHT_RATIO_USUAL}; 1 for one that does not care
     * @return factor, about 1 over the reference day
     * @source ratio: Gattuso, Allemand and Frankignoulle 1999, Am. Zool. 39, 160-183, from memory; form: Jassby and
     *     Platt 1976, Limnol. Oceanogr. 21, 540-547
     * @validity symbiotic corals and coralline algae; without harm by too much light
     */
    @Unit("1")
    public static double lightResponse(
            @Unit("mol/(m^2*s)") double light, @Unit("mol/(m^2*s)") double lightSaturation, @Unit("1") double ratio) {
        Bounds.within(light, "mol/(m^2*s)", 0, 0.1, "light", "is it in umol/(m^2 s)?");
        Bounds.within(lightSaturation, "mol/(m^2*s)", 1e-9, 0.1, "light saturation", "is it in umol/(m^2 s)?");
        Bounds.within(ratio, "1", 0, 1000, "ratio of calcification in light and dark");
        double more = ratio - 1;
        return (1 + more * Limitation.light(light, lightSaturation)) / (1 + more * REFERENCE_LIT_SHARE);
    }

    /**
     * Response to temperature.
     *
     * <pre>f = exp{-[(T - T_opt) / w]^2}</pre>
     *
     * @param temperature T of the water, ITS-90
     * @param optimum T_opt, {@link #OPTIMUM_USUAL}
     * @param width w, {@link #WIDTH_USUAL}
     * @return factor, 1 at the optimum
     * @source bell shape: Marshall and Clode 2004, Coral Reefs 23, 218-224, from memory; that warmth beyond it harms,
     *     by 0.12 to 0.40 g/cm^2 a year for each kelvin: Carricart-Ganivet et al. 2012, PLoS ONE 7, e32859
     * @validity 20 to 31 degC; death is another law's
     */
    @Unit("1")
    public static double temperatureResponse(
            @Unit("degC") double temperature, @Unit("degC") double optimum, @Unit("K") double width) {
        Bounds.waterTemperature(temperature);
        Bounds.waterTemperature(optimum);
        Bounds.within(width, "K", 0.5, 50, "width of the response to temperature");
        double distance = (temperature - optimum) / width;
        return Math.exp(-distance * distance);
    }

    /**
     * What alkalinity near exhaustion leaves of the rate.
     *
     * <pre>f = A^2 / (A^2 + 0.1^2)</pre>
     *
     * @param alkalinity A; at or below zero nothing is laid down
     * @return factor, 0.998 at 2.3 mol/m^3
     * @source a guard, common practice; the saturation does the same in nature
     * @validity any water
     */
    @Unit("1")
    public static double alkalinityLeft(@Unit("mol/m^3") double alkalinity) {
        Bounds.within(alkalinity, "mol/m^3", -1e4, 1e4, "alkalinity");
        if (alkalinity <= 0) {
            return 0;
        }
        double square = alkalinity * alkalinity;
        return square / (square + HALF_ALKALINITY * HALF_ALKALINITY);
    }

    /**
     * Carbonate laid down by an area. It takes two of alkalinity, one of inorganic carbon, and {@link #calciumShare}
     * and the rest of calcium and magnesium.
     *
     * <pre>G = g X f</pre>
     *
     * @param referenceRate g, {@link Calcifier#rate} times the factor for captivity
     * @param area X of plan, or of tissue where the rate is for tissue
     * @param response f, the product of the responses
     * @return moles of carbonate per time
     * @source as the responses
     * @validity as the responses
     */
    @Unit("mol/s")
    public static double rate(
            @Unit("mol/(m^2*s)") double referenceRate, @Unit("m^2") double area, @Unit("1") double response) {
        Bounds.within(referenceRate, "mol/(m^2*s)", 0, 1, "reference rate of calcification");
        Bounds.within(area, "m^2", 0, 1e6, "area of calcifiers");
        Bounds.within(response, "1", 0, 1e9, "response of calcification");
        return referenceRate * area * response;
    }

    /**
     * Calcium for each mole of carbonate laid down; magnesium makes up the rest.
     *
     * <pre>1 - f</pre>
     *
     * @param magnesiumShare f
     * @return moles of calcium per mole of carbonate
     * @source charge balance
     * @validity calcium and magnesium the only metals
     */
    @Unit("1")
    public static double calciumShare(@Unit("1") double magnesiumShare) {
        return 1 - Bounds.within(magnesiumShare, "1", 0, 1, "magnesium's share of the carbonate");
    }

    /**
     * Plan area that colonies effectively have when they overlap and shade each other.
     *
     * <pre>X = X_max [1 - exp(-X_sum / X_max)]</pre>
     *
     * @param sum X_sum of all colonies, each alone
     * @param most X_max, 0.6 of the floor; a guess
     * @return area
     * @source random overlap (Poisson)
     * @validity colonies placed without regard to each other
     */
    @Unit("m^2")
    public static double crowded(@Unit("m^2") double sum, @Unit("m^2") double most) {
        Bounds.within(sum, "m^2", 0, 1e9, "sum of the plan areas");
        Bounds.within(most, "m^2", 0, 1e9, "largest plan area");
        return most <= 0 ? 0 : -most * Math.expm1(-sum / most);
    }
}
