package org.tidewright.seawater.density;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.range.FittedRange;
import org.tidewright.seawater.unit.Unit;

/**
 * Conservative temperature of TEOS-10: the heat content of seawater, written as a temperature. Two waters that mix keep
 * its mean weighted by mass, which in-situ temperature does only nearly; the two differ by 0.04 degC at most at S = 35,
 * and by 2 degC in fresh water of 40 degC.
 */
public final class ConservativeTemperature {
    /**
     * The specific heat that turns heat content into conservative temperature. With it conservative and in-situ
     * temperature of seawater of S = 35 agree to 1e-5 degC at 0 and at 25 degC.
     *
     * @source IOC, SCOR and IAPSO 2010, eq. 3.3.3, exact by definition
     */
    @Unit("J/(kg*K)")
    public static final double SPECIFIC_HEAT = 3991.86795711963;

    /** As that of the Gibbs function behind it. */
    public static final FittedRange FIT = Teos10.FIT;

    private static final int MOST_STEPS = 20;

    private ConservativeTemperature() {}

    /**
     * Conservative temperature of seawater at the surface.
     *
     * <pre>
     * Theta = h / cp0,   h = sum of c_ij x^i y^j,   x = (S / 40)^(1/2),   y = t / 40 degC
     * </pre>
     *
     * with h the specific enthalpy at the surface, g - T g_T, and cp0 the {@linkplain #SPECIFIC_HEAT specific heat}
     * above.
     *
     * @param temperature in-situ temperature at the surface, ITS-90
     * @param practicalSalinity PSS-78
     * @return conservative temperature
     * @source IOC, SCOR and IAPSO 2010, Manuals and Guides 56, eq. 3.3.1 and 3.3.2, the enthalpy of the Gibbs function
     *     of {@link Teos10#density} multiplied out as in the TEOS-10 toolbox
     * @validity as {@link Teos10#density}
     */
    @Unit("degC")
    public static double fromInSitu(@Unit("degC") double temperature, @Unit("1") double practicalSalinity) {
        double x = GibbsFunction.x(practicalSalinity);
        double y = GibbsFunction.y(temperature);
        double water =
                -1536.6644434977543 + y * (545.7340497931629 + y * (-50.91091728474331 + y * -18.30489878927802));
        water = 61.01362420681071
                + y * (168776.46138048015 + y * (-2735.2785605119625 + y * (2574.2164453821433 + y * water)));
        double salt2 = 465.28655623826234 + y * (-0.6370820302376359 + y * -10.650848542359153);
        salt2 = 268.5520265845071
                + y * (-12019.028203559312 + y * (3734.858026725145 + y * (-2046.7671145057618 + y * salt2)));
        double salt3 = 937.2099110620707
                + y
                        * (588.1802812170108
                                + y * (248.39476522971285 + y * (-3.871557904936333 + y * -2.6268019854268356)));
        double salt4 = 369.4389437509002 + y * (-33.83664947895248 + y * -9.987880382780322);
        salt4 = -1687.914374187449 + y * (936.3206544460336 + y * (-942.7827304544439 + y * salt4));
        double salt5 = 246.9598888781377;
        double salt6 = 123.59576582457964;
        double salt7 = -48.5891069025409;
        double enthalpy = water + x * x * (salt2 + x * (salt3 + x * (salt4 + x * (salt5 + x * (salt6 + x * salt7)))));
        return enthalpy / SPECIFIC_HEAT;
    }

    /**
     * In-situ temperature at the surface, the inverse of {@link #fromInSitu}, by Newton's steps: the slope is c_p /
     * cp0.
     *
     * @param conservativeTemperature of the seawater
     * @param practicalSalinity PSS-78
     * @return in-situ temperature, ITS-90
     * @source as {@link #fromInSitu}
     * @validity as {@link #fromInSitu}
     */
    @Unit("degC")
    public static double toInSitu(@Unit("degC") double conservativeTemperature, @Unit("1") double practicalSalinity) {
        Bounds.within(
                conservativeTemperature,
                "degC",
                fromInSitu(Bounds.COLDEST_WATER, practicalSalinity),
                fromInSitu(Bounds.HOTTEST_WATER, practicalSalinity),
                "conservative temperature",
                "is it in kelvin or fahrenheit?");
        double t = clamp(conservativeTemperature);
        for (int step = 0; step < MOST_STEPS; step++) {
            double excess = fromInSitu(t, practicalSalinity) - conservativeTemperature;
            double next = clamp(t - excess * SPECIFIC_HEAT / Teos10.specificHeat(t, practicalSalinity));
            if (Math.abs(next - t) <= 1e-13 * Math.max(1, Math.abs(t))) {
                return next;
            }
            t = next;
        }
        return t;
    }

    private static double clamp(double temperature) {
        return Math.max(Bounds.COLDEST_WATER, Math.min(Bounds.HOTTEST_WATER, temperature));
    }
}
