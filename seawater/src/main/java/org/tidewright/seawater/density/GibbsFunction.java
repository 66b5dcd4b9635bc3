package org.tidewright.seawater.density;

import org.tidewright.seawater.range.Bounds;

/**
 * The Gibbs function of seawater at sea-surface pressure, from whose derivatives every thermodynamic property of
 * TEOS-10 follows: that of pure water of Feistel 2003, and that of sea salt of Feistel 2008.
 *
 * <pre>
 * g = sum of w_jk y^j z^k + x^2 (l_0 + l_1 y) ln x + sum of s_ijk x^i y^j z^k
 * x = (S / 40)^(1/2),   y = t / 40 degC,   z = sea pressure / 100 MPa,   g in J/kg
 * </pre>
 *
 * with S the practical salinity, which is what the papers' S_A / (40 x 35.16504/35 g/kg) comes to. Here z = 0, so only
 * the coefficients of z^0 and z^1 stand below; a whole factor before a coefficient is that of its derivative.
 */
final class GibbsFunction {
    /** Practical salinity of the saltiest water of the scaling, x = 1; also the temperature at which y = 1, in degC. */
    private static final double SCALE = 40;

    /** Pressure at which z = 1, in Pa. */
    private static final double PRESSURE_SCALE = 1e8;

    private GibbsFunction() {}

    /** x of a practical salinity. */
    static double x(double practicalSalinity) {
        Bounds.practicalSalinity(practicalSalinity);
        return Math.sqrt(practicalSalinity / SCALE);
    }

    /** y of a temperature. */
    static double y(double temperature) {
        Bounds.waterTemperature(temperature);
        return temperature / SCALE;
    }

    /** g_P, the specific volume, in m^3/kg. */
    static double byPressure(double x, double y) {
        double water = 397.968445406972 + y * (-194.618310617595 + y * (63.5113936641785 + y * -9.63108119393062));
        water = 100015.695367145 + y * (-270.983805184062 + y * (1455.0364540468 + y * (-672.50778314507 + y * water)));
        double salt2 = volumeOfSalt2(y);
        double salt3 = volumeOfSalt3(y);
        double salt4 = -54.7919133532887 + y * -22.6683558512829;
        double salt5 = 36.0284195611086;
        return (water + x * x * (salt2 + x * (salt3 + x * (salt4 + x * salt5)))) / PRESSURE_SCALE;
    }

    /** g_SP, by practical salinity, in m^3/kg. */
    static double bySalinityAndPressure(double x, double y) {
        double salt2 = volumeOfSalt2(y);
        double salt3 = volumeOfSalt3(y);
        double salt4 = -54.7919133532887 + y * -22.6683558512829;
        double salt5 = 36.0284195611086;
        return (2 * salt2 + x * (3 * salt3 + x * (4 * salt4 + x * 5 * salt5))) / (2 * SCALE * PRESSURE_SCALE);
    }

    /** g_TP, in m^3/(kg K). */
    static double byTemperatureAndPressure(double x, double y) {
        double water = 5 * -194.618310617595 + y * (6 * 63.5113936641785 + y * 7 * -9.63108119393062);
        water = -270.983805184062
                + y * (2 * 1455.0364540468 + y * (3 * -672.50778314507 + y * (4 * 397.968445406972 + y * water)));
        double salt2 =
                729.116529735046 + y * (2 * -860.764303783977 + y * (3 * 694.244814133268 + y * 4 * -297.728741987187));
        double salt3 =
                -175.292041186547 + y * (2 * 383.058066002476 + y * (3 * -460.319931801257 + y * 4 * 234.565187611355));
        double salt4 = -22.6683558512829;
        return (water + x * x * (salt2 + x * (salt3 + x * salt4))) / (SCALE * PRESSURE_SCALE);
    }

    /** g_TT, in J/(kg K^2); the logarithm has none. */
    static double byTemperatureTwice(double x, double y) {
        double water = 20 * 58.0259125842571 + y * (30 * -18.9843846514172 + y * 42 * 3.05081646487967);
        water = 2 * -12357.785933039 + y * (6 * 736.741204151612 + y * (12 * -148.185936433658 + y * water));
        double salt2 = 12 * 91.4260447751259 + y * (20 * -21.6603240875311 + y * 30 * 2.13016970847183);
        salt2 = 2 * 880.031352997204 + y * (6 * -225.267649263401 + y * salt2);
        double salt3 = 2 * -43.0664675978042 + y * (6 * -10.0227370861875 + y * 12 * 0.875600661808945);
        double salt4 = 2 * -68.5572509204491
                + y * (6 * 49.3667694856254 + y * (12 * -17.1397577419788 + y * 20 * 2.49697009569508));
        return (water + x * x * (salt2 + x * (salt3 + x * salt4))) / (SCALE * SCALE);
    }

    /**
     * g - S g_S, the chemical potential of the water, in J/kg. A term x^i y^j keeps the share 1 - i/2 of itself, so
     * that of x^2 drops out, and of the logarithm only -x^2 (l_0 + l_1 y) / 2 is left.
     */
    static double ofTheWater(double x, double y) {
        double water = -148.185936433658 + y * (58.0259125842571 + y * (-18.9843846514172 + y * 3.05081646487967));
        water = 101.342743139674 + y * (5.90578347909402 + y * (-12357.785933039 + y * (736.741204151612 + y * water)));
        double logarithm = 5812.81456626732 + y * 851.226734946706;
        double salt3 = -2432.14662381794
                + y * (-493.407510141682 + y * (-43.0664675978042 + y * (-10.0227370861875 + y * 0.875600661808945)));
        double salt4 = 49.3667694856254 + y * (-17.1397577419788 + y * 2.49697009569508);
        salt4 = 2025.80115603697 + y * (543.835333000098 + y * (-68.5572509204491 + y * salt4));
        double salt5 = -1091.66841042967 + y * -196.028306689776;
        double salt6 = 374.60123787784 + y * 36.7571622995805;
        double salt7 = -48.5891069025409;
        double salt = 1.5 * salt5 + x * (2 * salt6 + x * 2.5 * salt7);
        return water - x * x * (logarithm / 2 + x * (salt3 / 2 + x * (salt4 + x * salt)));
    }

    private static double volumeOfSalt2(double y) {
        return -3310.49154044839
                + y * (729.116529735046 + y * (-860.764303783977 + y * (694.244814133268 + y * -297.728741987187)));
    }

    private static double volumeOfSalt3(double y) {
        return 199.459603073901
                + y * (-175.292041186547 + y * (383.058066002476 + y * (-460.319931801257 + y * 234.565187611355)));
    }
}
