package org.tidewright.seawater.teos10;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.range.FittedRange;
import org.tidewright.seawater.salinity.AbsoluteSalinity;
import org.tidewright.seawater.unit.TemperatureScale;
import org.tidewright.seawater.unit.Unit;

/**
 * Properties of seawater at one atmosphere as derivatives of the TEOS-10 Gibbs function, reference composition. In all
 * formulas
 *
 * <pre>x^2 = S_A / (40 x 35.16504/35 g/kg),  y = t / 40 degC</pre>
 *
 * and a subscript is a derivative of the Gibbs function: g_P that by pressure, g_TP that by temperature and pressure.
 */
public final class GibbsSeawater {
    /** The range of the standard at the sea surface; pure water is its limit. */
    public static final FittedRange FIT = new FittedRange(-6, 40, 0, 42);

    /** x^2 per g/kg of absolute salinity. */
    static final double SALINITY_SCALE = 0.0248826675584615;

    /** y per degC. */
    static final double TEMPERATURE_SCALE = 0.025;

    private GibbsSeawater() {}

    /**
     * Density.
     *
     * <pre>rho = 1 / g_P</pre>
     *
     * @param temperature in-situ temperature, ITS-90
     * @param practicalSalinity PSS-78
     * @return density of the seawater
     * @source Feistel 2003, Prog. Oceanogr. 58, 43-114, doi 10.1016/S0079-6611(03)00088-0 (water); Feistel 2008, Deep-Sea
     *     Res. I 55, 1639-1671, doi 10.1016/j.dsr.2008.07.004 (salt); IOC, SCOR and IAPSO 2010, appendices G and H
     * @validity -6 to 40 degC, S 0 to 42: {@link #FIT}; 2.7e-5 kg/m^3 from IAPWS-95 water
     * @checkvalue S_A = 35.16504 g/kg, 0 degC: 1028.10720 kg/m^3 (IAPWS R13-08, for IAPWS-95 water)
     */
    @Unit("kg/m^3")
    public static double density(@Unit("degC") double temperature, @Unit("1") double practicalSalinity) {
        double xx = scaledSalinity(practicalSalinity);
        double y = scaledTemperature(temperature);
        return 1e8 / byPressure(xx, Math.sqrt(xx), y);
    }

    /**
     * Specific heat at constant pressure.
     *
     * <pre>cp = -T g_TT</pre>
     *
     * @param temperature in-situ temperature, ITS-90
     * @param practicalSalinity PSS-78
     * @return specific heat, per kilogram of seawater
     * @source as {@link #density}
     * @validity as {@link #density}; 0.034 J/(kg K) from IAPWS-95 water
     * @checkvalue S_A = 35.16504 g/kg, 0 degC: 3986.48579 J/(kg K) (IAPWS R13-08, for IAPWS-95 water)
     */
    @Unit("J/(kg*K)")
    public static double specificHeat(@Unit("degC") double temperature, @Unit("1") double practicalSalinity) {
        double xx = scaledSalinity(practicalSalinity);
        double x = Math.sqrt(xx);
        double y = scaledTemperature(temperature);
        double ofWater = -569.531539542516 + y * 128.13429152494615;
        ofWater = 1160.5182516851419 + y * ofWater;
        ofWater = -1778.231237203896 + y * ofWater;
        ofWater = 4420.4472249096725 + y * ofWater;
        ofWater = -24715.571866078 + y * ofWater;
        double ofRoot = -86.1329351956084
                + x * (-137.1145018408982 + y * (296.20061691375236 + y * (-205.67709290374563 + y * 49.9394019139016)))
                + y * (-60.136422517125 + y * 10.50720794170734);
        double ofSalt = 1760.062705994408
                + x * ofRoot
                + y
                        * (-1351.605895580406
                                + y * (1097.1125373015109 + y * (-433.20648175062206 + y * 63.905091254154904)));
        double twiceByTemperature = TEMPERATURE_SCALE * TEMPERATURE_SCALE * (ofWater + xx * ofSalt);
        return -TemperatureScale.kelvin(temperature) * twiceByTemperature;
    }

    /**
     * Thermal expansion at constant salinity, by in-situ temperature.
     *
     * <pre>alpha = g_TP / g_P</pre>
     *
     * @param temperature in-situ temperature, ITS-90
     * @param practicalSalinity PSS-78
     * @return relative growth of volume per kelvin; below 0 in cold, nearly fresh water
     * @source as {@link #density}
     * @validity as {@link #density}
     */
    @Unit("1/K")
    public static double thermalExpansion(@Unit("degC") double temperature, @Unit("1") double practicalSalinity) {
        double xx = scaledSalinity(practicalSalinity);
        double x = Math.sqrt(xx);
        double y = scaledTemperature(temperature);
        double ofWater = 381.06836198507096 - y * 67.41756835751434;
        ofWater = -973.091553087975 + y * ofWater;
        ofWater = 1591.873781627888 + y * ofWater;
        ofWater = -2017.52334943521 + y * ofWater;
        ofWater = 2910.0729080936 + y * ofWater;
        ofWater = -270.983805184062 + y * ofWater;
        double ofRoot = -175.292041186547
                - 22.6683558512829 * x
                + y * (766.116132004952 + y * (-1380.9597954037708 + y * 938.26075044542));
        double ofSalt = 729.116529735046
                + x * ofRoot
                + y * (-1721.528607567954 + y * (2082.7344423998043 - y * 1190.914967948748));
        return TEMPERATURE_SCALE * (ofWater + xx * ofSalt) / byPressure(xx, x, y);
    }

    /**
     * Haline contraction at constant in-situ temperature.
     *
     * <pre>beta = -g_SP / g_P</pre>
     *
     * @param temperature in-situ temperature, ITS-90
     * @param practicalSalinity PSS-78
     * @return relative rise of density per rise of absolute salinity
     * @source as {@link #density}
     * @validity as {@link #density}
     */
    @Unit("kg/g")
    public static double halineContraction(@Unit("degC") double temperature, @Unit("1") double practicalSalinity) {
        double xx = scaledSalinity(practicalSalinity);
        double x = Math.sqrt(xx);
        double y = scaledTemperature(temperature);
        double ofRoot = 598.378809221703
                + x * (-219.1676534131548 + x * 180.142097805543 - y * 90.6734234051316)
                + y * (-525.876123559641 + y * (1149.174198007428 + y * (-1380.9597954037708 + y * 703.695562834065)));
        double bySalinity = -6620.98308089678
                + x * ofRoot
                + y * (1458.233059470092 + y * (-1721.528607567954 + y * (1388.489628266536 - y * 595.457483974374)));
        return -SALINITY_SCALE * 0.5 * bySalinity / byPressure(xx, x, y);
    }

    /** g_P, the specific volume, in 1e-8 m^3/kg. */
    private static double byPressure(double xx, double x, double y) {
        double ofWater = 63.5113936641785 - y * 9.63108119393062;
        ofWater = -194.618310617595 + y * ofWater;
        ofWater = 397.968445406972 + y * ofWater;
        ofWater = -672.50778314507 + y * ofWater;
        ofWater = 1455.0364540468 + y * ofWater;
        ofWater = -270.983805184062 + y * ofWater;
        ofWater = 100015.695367145 + y * ofWater;
        double ofRoot = 199.459603073901
                + x * (-54.7919133532887 + x * 36.0284195611086 - y * 22.6683558512829)
                + y * (-175.292041186547 + y * (383.058066002476 + y * (-460.319931801257 + y * 234.565187611355)));
        double ofSalt = -3310.49154044839
                + x * ofRoot
                + y * (729.116529735046 + y * (-860.764303783977 + y * (694.244814133268 - y * 297.728741987187)));
        return ofWater + xx * ofSalt;
    }

    static double scaledSalinity(double practicalSalinity) {
        return SALINITY_SCALE * AbsoluteSalinity.fromPractical(practicalSalinity);
    }

    static double scaledTemperature(double temperature) {
        Bounds.waterTemperature(temperature);
        return TEMPERATURE_SCALE * temperature;
    }
}
