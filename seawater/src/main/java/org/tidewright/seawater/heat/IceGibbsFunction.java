package org.tidewright.seawater.heat;

import org.tidewright.seawater.unit.TemperatureScale;

/**
 * The Gibbs function of ice at one atmosphere, IAPWS-06.
 *
 * <pre>
 * g = g_00 - s_0 T_t tau + T_t Re sum r_k [(t_k - tau) ln(t_k - tau) + (t_k + tau) ln(t_k + tau)
 *                                          - 2 t_k ln t_k - tau^2 / t_k],    tau = T / T_t
 * </pre>
 *
 * with T_t the triple point, and r_k and t_k complex.
 */
final class IceGibbsFunction {
    private static final double TRIPLE_POINT = 273.16; // K

    private IceGibbsFunction() {}

    /** g, in J/kg, of a temperature in degC on ITS-90. */
    static double value(double temperature) {
        double tau = TemperatureScale.kelvin(temperature) / TRIPLE_POINT;
        double first = term(tau, 4.47050716285388e1, 6.56876847463481e1, 3.68017112855051e-2, 5.10878114959572e-2);
        double second = term(tau, -7.25974574329220e1, -7.81008427112870e1, 3.37315741065416e-1, 3.35449415919309e-1);
        return -6.32020233335886e5 + TRIPLE_POINT * (3.32733756492168e3 * tau + first + second);
    }

    /** Real part of one term of the sum, r = a + b i and t = c + d i. */
    private static double term(double tau, double a, double b, double c, double d) {
        double square = tau * tau / (c * c + d * d);
        double real = realTimesLog(c - tau, d) + realTimesLog(c + tau, d) - 2 * realTimesLog(c, d) - square * c;
        double imaginary = imaginaryTimesLog(c - tau, d)
                + imaginaryTimesLog(c + tau, d)
                - 2 * imaginaryTimesLog(c, d)
                + square * d;
        return a * real - b * imaginary;
    }

    /** Real part of z ln z, z = c + d i. */
    private static double realTimesLog(double c, double d) {
        return c * Math.log(Math.hypot(c, d)) - d * Math.atan2(d, c);
    }

    private static double imaginaryTimesLog(double c, double d) {
        return d * Math.log(Math.hypot(c, d)) + c * Math.atan2(d, c);
    }
}
