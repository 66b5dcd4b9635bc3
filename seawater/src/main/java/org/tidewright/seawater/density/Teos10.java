package org.tidewright.seawater.density;

import org.tidewright.seawater.range.FittedRange;
import org.tidewright.seawater.unit.TemperatureScale;
import org.tidewright.seawater.unit.Unit;

/**
 * Properties of seawater at one atmosphere by TEOS-10, the thermodynamic equation of seawater of 2010. All come out of
 * one function, so that they agree with one another: it is the standard that {@link Density} and the other laws of the
 * 1970s and 1980s are held against.
 *
 * <p>Practical salinity stands for seawater of reference composition, 35.16504/35 g/kg for each unit.
 */
public final class Teos10 {
    /** The range of the oceans, for which the pure-water part was made. */
    public static final FittedRange FIT = new FittedRange(-2, 40, 0, 42);

    /** Reference-composition absolute salinity per unit of practical salinity, in g/kg. */
    private static final double ABSOLUTE_PER_PRACTICAL = 35.16504 / 35;

    private Teos10() {}

    /**
     * Density of seawater.
     *
     * <pre>rho = 1 / g_P</pre>
     *
     * @param temperature in-situ temperature, ITS-90
     * @param practicalSalinity PSS-78
     * @return density of the seawater
     * @source IOC, SCOR and IAPSO 2010, Manuals and Guides 56, eq. 2.8.1; pure water Feistel 2003, Prog. Oceanogr. 58,
     *     43-114 (doi 10.1016/S0079-6611(03)00088-0); salt Feistel 2008, Deep-Sea Res. I 55, 1639-1671 (doi
     *     10.1016/j.dsr.2008.07.004); IAPWS R13-08
     * @validity freezing point to 40 degC, S 0 to 42: {@link #FIT}
     * @checkvalue S = 35, 0 degC: 1028.10720 kg/m^3 (IAPWS R13-08, on IAPWS-95 water)
     */
    @Unit("kg/m^3")
    public static double density(@Unit("degC") double temperature, @Unit("1") double practicalSalinity) {
        return 1 / GibbsFunction.byPressure(GibbsFunction.x(practicalSalinity), GibbsFunction.y(temperature));
    }

    /**
     * Specific heat of seawater at constant pressure and salinity.
     *
     * <pre>c_p = -T g_TT</pre>
     *
     * @param temperature in-situ temperature, ITS-90
     * @param practicalSalinity PSS-78
     * @return specific heat, per kilogram of seawater
     * @source IOC, SCOR and IAPSO 2010, eq. 2.20.1, with the Gibbs function of {@link #density}
     * @validity as {@link #density}
     * @checkvalue S = 35, 0 degC: 3986.48579 J/(kg K) (IAPWS R13-08, on IAPWS-95 water)
     */
    @Unit("J/(kg*K)")
    public static double specificHeat(@Unit("degC") double temperature, @Unit("1") double practicalSalinity) {
        return -TemperatureScale.kelvin(temperature)
                * GibbsFunction.byTemperatureTwice(GibbsFunction.x(practicalSalinity), GibbsFunction.y(temperature));
    }

    /**
     * Thermal expansion of seawater: the share by which its volume grows with each kelvin of in-situ temperature. Below
     * 0 for fresh water colder than 4 degC.
     *
     * <pre>alpha = g_TP / g_P</pre>
     *
     * @param temperature in-situ temperature, ITS-90
     * @param practicalSalinity PSS-78
     * @return relative change of volume per kelvin at constant salinity
     * @source IOC, SCOR and IAPSO 2010, eq. 2.18.1, with the Gibbs function of {@link #density}
     * @validity as {@link #density}
     */
    @Unit("1/K")
    public static double thermalExpansion(@Unit("degC") double temperature, @Unit("1") double practicalSalinity) {
        double x = GibbsFunction.x(practicalSalinity);
        double y = GibbsFunction.y(temperature);
        return GibbsFunction.byTemperatureAndPressure(x, y) / GibbsFunction.byPressure(x, y);
    }

    /**
     * Haline contraction of seawater: the share by which its density grows with each gram of salt per kilogram.
     *
     * <pre>beta = -g_SP / g_P</pre>
     *
     * @param temperature in-situ temperature, ITS-90
     * @param practicalSalinity PSS-78
     * @return relative change of density per g/kg of absolute salinity at constant in-situ temperature
     * @source IOC, SCOR and IAPSO 2010, eq. 2.19.1, with the Gibbs function of {@link #density}
     * @validity as {@link #density}
     */
    @Unit("kg/g")
    public static double halineContraction(@Unit("degC") double temperature, @Unit("1") double practicalSalinity) {
        double x = GibbsFunction.x(practicalSalinity);
        double y = GibbsFunction.y(temperature);
        return -GibbsFunction.bySalinityAndPressure(x, y) / GibbsFunction.byPressure(x, y) / ABSOLUTE_PER_PRACTICAL;
    }

    /**
     * Chemical potential of the water in seawater: ice or vapour in equilibrium with it has the same. Salt lowers it.
     *
     * <pre>mu_w = g - S_A g_S</pre>
     *
     * @param temperature in-situ temperature, ITS-90
     * @param practicalSalinity PSS-78
     * @return chemical potential per kilogram of water; 0 near the triple point of pure water
     * @source IOC, SCOR and IAPSO 2010, section 2.9, with the Gibbs function of {@link #density}
     * @validity as {@link #density}
     */
    @Unit("J/kg")
    public static double chemicalPotentialOfWater(
            @Unit("degC") double temperature, @Unit("1") double practicalSalinity) {
        return GibbsFunction.ofTheWater(GibbsFunction.x(practicalSalinity), GibbsFunction.y(temperature));
    }
}
