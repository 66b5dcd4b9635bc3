package org.tidewright.seawater.teos10;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.range.FittedRange;
import org.tidewright.seawater.salinity.AbsoluteSalinity;
import org.tidewright.seawater.unit.Unit;

/**
 * Density by the published polynomial of TEOS-10, what ocean models use: from the variables that mix conservatively, and
 * fast. Lies within 6.3e-4 kg/m^3 of the {@linkplain GibbsSeawater#density Gibbs function}.
 */
public final class PolynomialDensity {
    /** The range of the fit at the sea surface. */
    public static final FittedRange FIT = new FittedRange(-2, 40, 0, 42);

    /** Shifts the salinity so that the polynomial's root has no kink at zero: 24 g/kg of it. */
    private static final double OFFSET = 5.971840214030754e-1;

    private PolynomialDensity() {}

    /**
     * Density at sea-surface pressure from in-situ temperature and practical salinity.
     *
     * @param temperature in-situ temperature, ITS-90
     * @param practicalSalinity PSS-78, reference composition
     * @return density of the seawater
     * @source {@link #ofConservative} of {@link ConservativeTemperature#fromInSitu}
     * @validity as {@link #ofConservative}
     */
    @Unit("kg/m^3")
    public static double ofSeawater(@Unit("degC") double temperature, @Unit("1") double practicalSalinity) {
        return 1
                / specificVolume(
                        AbsoluteSalinity.fromPractical(practicalSalinity),
                        ConservativeTemperature.fromInSitu(temperature, practicalSalinity));
    }

    /**
     * Density at sea-surface pressure from absolute salinity and conservative temperature.
     *
     * <pre>
     * 1/rho = sum of v_ij s^i tau^j,  s^2 = (S_A + 24 g/kg) / (40 x 35.16504/35 g/kg),  tau = Theta / 40 degC
     * </pre>
     *
     * The 28 terms without pressure of the 75.
     *
     * @param absoluteSalinity grams of salt per kilogram of seawater
     * @param conservativeTemperature ITS-90
     * @return density of the seawater
     * @source Roquet, Madec, McDougall and Barker 2015, Ocean Model. 90, 29-43, doi 10.1016/j.ocemod.2015.04.002
     * @validity -2 to 40 degC, 0 to 42 g/kg: {@link #FIT}
     */
    @Unit("kg/m^3")
    public static double ofConservative(
            @Unit("g/kg") double absoluteSalinity, @Unit("degC") double conservativeTemperature) {
        Bounds.within(
                absoluteSalinity, "g/kg", 0, 1.01 * Bounds.SALTIEST_WATER, "absolute salinity", "is it in kg/kg?");
        Bounds.within(
                conservativeTemperature,
                "degC",
                Bounds.COLDEST_WATER - 5,
                Bounds.HOTTEST_WATER + 5,
                "conservative temperature",
                "is it in kelvin or fahrenheit?");
        return 1 / specificVolume(absoluteSalinity, conservativeTemperature);
    }

    /** One polynomial of temperature for each power of s: the seven do not wait for each other. */
    private static double specificVolume(double absoluteSalinity, double conservativeTemperature) {
        double s = Math.sqrt(GibbsSeawater.SALINITY_SCALE * absoluteSalinity + OFFSET);
        double t = GibbsSeawater.TEMPERATURE_SCALE * conservativeTemperature;
        double v0 = -8.0539615540e-7 + t * 2.0543094268e-7;
        v0 = 6.9111322702e-6 + t * v0;
        v0 = -1.6521159259e-5 + t * v0;
        v0 = 2.7762106484e-5 + t * v0;
        v0 = -1.5649734675e-5 + t * v0;
        v0 = 1.0769995862e-3 + t * v0;
        double v1 = -8.7595873154e-6 - t * 3.3052758900e-7;
        v1 = 2.4141479483e-5 + t * v1;
        v1 = -3.7435842344e-5 + t * v1;
        v1 = 3.5009599764e-5 + t * v1;
        v1 = -3.1038981976e-4 + t * v1;
        double v2 = -1.4353633048e-5 + t * 4.3703680598e-6;
        v2 = 3.5907822760e-5 + t * v2;
        v2 = -4.3592678561e-5 + t * v2;
        v2 = 6.6928067038e-4 + t * v2;
        double v3 = -8.5047933937e-4 + t * (3.4532461828e-5 + t * (-1.8698584187e-5 + t * 2.2863324556e-6));
        double v4 = 5.8086069943e-4 + t * (-1.1959409788e-5 + t * 3.8595339244e-6);
        double v5 = -2.1092370507e-4 + t * 1.3864594581e-6;
        double v6 = 3.1932457305e-5;
        return v0 + s * (v1 + s * (v2 + s * (v3 + s * (v4 + s * (v5 + s * v6)))));
    }
}
