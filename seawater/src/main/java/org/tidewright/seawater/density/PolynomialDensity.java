package org.tidewright.seawater.density;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.range.FittedRange;
import org.tidewright.seawater.unit.Unit;

/**
 * Density at one atmosphere by the polynomial that ocean models use for TEOS-10: 28 of its 75 terms are left at the
 * surface. It is written in conservative temperature and absolute salinity, which such models carry anyway, and lies
 * within 0.00065 kg/m^3 of {@link Teos10} from S = 5 on, 0.0014 in fresh water. With in-situ temperature at hand
 * {@link Teos10#density} is both shorter and the standard.
 */
public final class PolynomialDensity {
    /** The range of the oceans, over which it was fitted. */
    public static final FittedRange FIT = new FittedRange(-2, 40, 0, 42);

    /** Absolute salinity at which S_A / (40 u_PS) is 1, in g/kg. */
    private static final double SALINITY_SCALE = 40 * 35.16504 / 35;

    /** Temperature at which y = 1, in degC. */
    private static final double TEMPERATURE_SCALE = 40;

    /** 24 g/kg over the salinity scale: keeps the root away from 0, where it is steep. */
    private static final double OFFSET = 24 / SALINITY_SCALE;

    private static final double SALTIEST = Bounds.SALTIEST_WATER * 35.16504 / 35;

    private PolynomialDensity() {}

    /**
     * Density of seawater from what the polynomial is written in.
     *
     * <pre>
     * 1 / rho = sum of v_ij s^i y^j,   s = [(S_A + 24 g/kg) / (40 x 35.16504/35 g/kg)]^(1/2),   y = Theta / 40 degC
     * </pre>
     *
     * @param conservativeTemperature of the seawater
     * @param absoluteSalinity grams of salt per kilogram of seawater
     * @return density of the seawater
     * @source Roquet, Madec, McDougall and Barker 2015, Ocean Model. 90, 29-43 (doi 10.1016/j.ocemod.2015.04.002), the
     *     75-term expression for specific volume, its terms without pressure
     * @validity the oceans, freezing point to 40 degC, S_A 0 to 42 g/kg: {@link #FIT}
     */
    @Unit("kg/m^3")
    public static double ofConservative(
            @Unit("degC") double conservativeTemperature, @Unit("g/kg") double absoluteSalinity) {
        return 1 / specificVolume(root(absoluteSalinity), scaled(conservativeTemperature));
    }

    /**
     * Density of seawater from what is measured.
     *
     * @param temperature in-situ temperature, ITS-90
     * @param practicalSalinity PSS-78
     * @return density of the seawater
     * @source {@link #ofConservative} of the {@link ConservativeTemperature} and reference-composition absolute
     *     salinity
     * @validity as {@link #ofConservative}
     */
    @Unit("kg/m^3")
    public static double ofSeawater(@Unit("degC") double temperature, @Unit("1") double practicalSalinity) {
        double y = ConservativeTemperature.fromInSitu(temperature, practicalSalinity) / TEMPERATURE_SCALE;
        return 1 / specificVolume(Math.sqrt(practicalSalinity / 40 + OFFSET), y);
    }

    /**
     * Thermal expansion by conservative temperature.
     *
     * <pre>alpha = (1/v) dv/dTheta</pre>
     *
     * @param conservativeTemperature of the seawater
     * @param absoluteSalinity grams of salt per kilogram of seawater
     * @return relative change of volume per kelvin of conservative temperature
     * @source Roquet, Madec, McDougall and Barker 2015, as {@link #ofConservative}, differentiated
     * @validity as {@link #ofConservative}
     */
    @Unit("1/K")
    public static double thermalExpansion(
            @Unit("degC") double conservativeTemperature, @Unit("g/kg") double absoluteSalinity) {
        double s = root(absoluteSalinity);
        double y = scaled(conservativeTemperature);
        return byTemperature(s, y) / TEMPERATURE_SCALE / specificVolume(s, y);
    }

    /**
     * Haline contraction at constant conservative temperature.
     *
     * <pre>beta = -(1/v) dv/dS_A</pre>
     *
     * @param conservativeTemperature of the seawater
     * @param absoluteSalinity grams of salt per kilogram of seawater
     * @return relative change of density per g/kg of absolute salinity
     * @source Roquet, Madec, McDougall and Barker 2015, as {@link #ofConservative}, differentiated
     * @validity as {@link #ofConservative}
     */
    @Unit("kg/g")
    public static double halineContraction(
            @Unit("degC") double conservativeTemperature, @Unit("g/kg") double absoluteSalinity) {
        double s = root(absoluteSalinity);
        double y = scaled(conservativeTemperature);
        return -byRoot(s, y) / (2 * s * SALINITY_SCALE) / specificVolume(s, y);
    }

    private static double root(double absoluteSalinity) {
        Bounds.within(absoluteSalinity, "g/kg", 0, SALTIEST, "absolute salinity", "is it in mg/kg?");
        return Math.sqrt(absoluteSalinity / SALINITY_SCALE + OFFSET);
    }

    private static double scaled(double conservativeTemperature) {
        Bounds.waterTemperature(conservativeTemperature);
        return conservativeTemperature / TEMPERATURE_SCALE;
    }

    private static double specificVolume(double s, double y) {
        double y0 = 5.8086069943e-4 + s * (-2.1092370507e-4 + s * 3.1932457305e-5);
        y0 = 1.0769995862e-3 + s * (-3.1038981976e-4 + s * (6.6928067038e-4 + s * (-8.5047933937e-4 + s * y0)));
        double y1 = 3.4532461828e-5 + s * (-1.1959409788e-5 + s * 1.3864594581e-6);
        y1 = -1.5649734675e-5 + s * (3.5009599764e-5 + s * (-4.3592678561e-5 + s * y1));
        double y2 = 2.7762106484e-5
                + s * (-3.7435842344e-5 + s * (3.5907822760e-5 + s * (-1.8698584187e-5 + s * 3.8595339244e-6)));
        double y3 = -1.6521159259e-5 + s * (2.4141479483e-5 + s * (-1.4353633048e-5 + s * 2.2863324556e-6));
        double y4 = 6.9111322702e-6 + s * (-8.7595873154e-6 + s * 4.3703680598e-6);
        double y5 = -8.0539615540e-7 + s * -3.3052758900e-7;
        double y6 = 2.0543094268e-7;
        return y0 + y * (y1 + y * (y2 + y * (y3 + y * (y4 + y * (y5 + y * y6)))));
    }

    private static double byTemperature(double s, double y) {
        double y1 = 3.4532461828e-5 + s * (-1.1959409788e-5 + s * 1.3864594581e-6);
        y1 = -1.5649734675e-5 + s * (3.5009599764e-5 + s * (-4.3592678561e-5 + s * y1));
        double y2 = 2.7762106484e-5
                + s * (-3.7435842344e-5 + s * (3.5907822760e-5 + s * (-1.8698584187e-5 + s * 3.8595339244e-6)));
        double y3 = -1.6521159259e-5 + s * (2.4141479483e-5 + s * (-1.4353633048e-5 + s * 2.2863324556e-6));
        double y4 = 6.9111322702e-6 + s * (-8.7595873154e-6 + s * 4.3703680598e-6);
        double y5 = -8.0539615540e-7 + s * -3.3052758900e-7;
        double y6 = 2.0543094268e-7;
        return y1 + y * (2 * y2 + y * (3 * y3 + y * (4 * y4 + y * (5 * y5 + y * 6 * y6))));
    }

    private static double byRoot(double s, double y) {
        double y0 = 4 * 5.8086069943e-4 + s * (5 * -2.1092370507e-4 + s * 6 * 3.1932457305e-5);
        y0 = -3.1038981976e-4 + s * (2 * 6.6928067038e-4 + s * (3 * -8.5047933937e-4 + s * y0));
        double y1 = 3.5009599764e-5
                + s
                        * (2 * -4.3592678561e-5
                                + s * (3 * 3.4532461828e-5 + s * (4 * -1.1959409788e-5 + s * 5 * 1.3864594581e-6)));
        double y2 = -3.7435842344e-5 + s * (2 * 3.5907822760e-5 + s * (3 * -1.8698584187e-5 + s * 4 * 3.8595339244e-6));
        double y3 = 2.4141479483e-5 + s * (2 * -1.4353633048e-5 + s * 3 * 2.2863324556e-6);
        double y4 = -8.7595873154e-6 + s * 2 * 4.3703680598e-6;
        double y5 = -3.3052758900e-7;
        return y0 + y * (y1 + y * (y2 + y * (y3 + y * (y4 + y * y5))));
    }
}
