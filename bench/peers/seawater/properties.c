/* Written from the publications named beside each formula. */
#include "properties.h"

#include <math.h>

/* IPTS-68, on which these formulas were fitted: Saunders 1990, WOCE Newsletter 10 */
static double ipts68(double temperature) {
    return 1.00024 * temperature;
}

/* Millero and Poisson 1981, Deep-Sea Res. 28A, 625-629; pure water Bigg 1967, Br. J. Appl. Phys. 18, 521-537 */
void eos80_density(size_t n, const double *temperature, const double *practical_salinity, double *density) {
    for (size_t i = 0; i < n; i++) {
        const double t = ipts68(temperature[i]);
        const double s = practical_salinity[i];
        const double water = 999.842594
            + t * (6.793952e-2 + t * (-9.095290e-3 + t * (1.001685e-4 + t * (-1.120083e-6 + t * 6.536332e-9))));
        const double a = 0.824493 + t * (-4.0899e-3 + t * (7.6438e-5 + t * (-8.2467e-7 + t * 5.3875e-9)));
        const double b = -5.72466e-3 + t * (1.0227e-4 - t * 1.6546e-6);
        density[i] = water + s * (a + b * sqrt(s) + 4.8314e-4 * s);
    }
}

/* Garcia and Gordon 1992, Limnol. Oceanogr. 37, 1307-1312, eq. 8, coefficients for Benson and Krause's measurements */
void oxygen_solubility(size_t n, const double *temperature, const double *practical_salinity, double *oxygen) {
    for (size_t i = 0; i < n; i++) {
        const double t = ipts68(temperature[i]);
        const double s = practical_salinity[i];
        const double x = log((298.15 - t) / (273.15 + t));
        const double of_water =
            5.80871 + x * (3.20291 + x * (4.17887 + x * (5.10006 + x * (-9.86643e-2 + x * 3.80369))));
        const double of_salt = -7.01577e-3 + x * (-7.70028e-3 + x * (-1.13864e-2 - x * 9.51519e-3));
        oxygen[i] = exp(of_water + s * (of_salt - s * 2.75915e-7));
    }
}

/* Perkin and Lewis 1980, IEEE J. Ocean. Eng. 5, 9-16; UNESCO 1981, Tech. Pap. Mar. Sci. 36 */
void practical_salinity(size_t n, const double *conductivity, const double *temperature, double *salinity) {
    for (size_t i = 0; i < n; i++) {
        const double t = ipts68(temperature[i]);
        const double of_35 =
            0.6766097 + t * (2.00564e-2 + t * (1.104259e-4 + t * (-6.9698e-7 + t * 1.0031e-9)));
        const double x = sqrt(conductivity[i] / 4.2914 / of_35);
        const double a = 0.0080 + x * (-0.1692 + x * (25.3851 + x * (14.0941 + x * (-7.0261 + x * 2.7081))));
        const double b = 0.0005 + x * (-0.0056 + x * (-0.0066 + x * (-0.0375 + x * (0.0636 - x * 0.0144))));
        const double s = a + (t - 15) / (1 + 0.0162 * (t - 15)) * b;
        salinity[i] = s < 2 ? NAN : s;
    }
}
