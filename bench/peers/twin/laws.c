/* Written from the publications named beside each formula. */
#include "laws.h"

#include <math.h>

double clamp01(double value) {
    return value < 0 ? 0 : value > 1 ? 1 : value;
}

/* Millero et al. 2008, Deep-Sea Res. I 55, eq. 6.5 */
double practical_salinity_of(double salt_per_mass) {
    return salt_per_mass / (35.16504e-3 / 35);
}

/* Garcia and Gordon 1992, Limnol. Oceanogr. 37, 1307-1312, eq. 8, coefficients for Benson and Krause's measurements,
   times the density of Millero and Poisson 1981, Deep-Sea Res. 28A, 625-629; t on IPTS-68 (Saunders 1990) */
double oxygen_at_rest(double temperature, double salinity) {
    const double t = 1.00024 * temperature;
    const double s = salinity;
    const double x = log((298.15 - t) / (273.15 + t));
    const double of_water =
        5.80871 + x * (3.20291 + x * (4.17887 + x * (5.10006 + x * (-9.86643e-2 + x * 3.80369))));
    const double of_salt = -7.01577e-3 + x * (-7.70028e-3 + x * (-1.13864e-2 - x * 9.51519e-3));
    const double per_mass = exp(of_water + s * (of_salt - s * 2.75915e-7));
    const double water = 999.842594
        + t * (6.793952e-2 + t * (-9.095290e-3 + t * (1.001685e-4 + t * (-1.120083e-6 + t * 6.536332e-9))));
    const double a = 0.824493 + t * (-4.0899e-3 + t * (7.6438e-5 + t * (-8.2467e-7 + t * 5.3875e-9)));
    const double b = -5.72466e-3 + t * (1.0227e-4 - t * 1.6546e-6);
    return 1e-6 * per_mass * (water + s * (a + b * sqrt(s) + 4.8314e-4 * s));
}

/* Wanninkhof 2014, Limnol. Oceanogr. Methods 12, 351-362, table 1, S = 35 */
double schmidt_of_oxygen(double t) {
    return 1920.4 + t * (-135.6 + t * (5.2122 + t * (-0.10939 + t * 9.3777e-4)));
}

double schmidt_of_carbon_dioxide(double t) {
    return 2116.8 + t * (-136.25 + t * (4.7353 + t * (-0.092307 + t * 7.555e-4)));
}

/* Wagner and Pruss 1993, J. Phys. Chem. Ref. Data 22, 783-787, eq. 1; lowering by salt: Dickson, Sabine and Christian
   2007, PICES Special Publication 3, osmotic coefficient of Millero 1974 */
double vapour_pressure(double temperature, double salinity) {
    const double t = temperature + 273.15;
    const double tau = 1 - t / 647.096;
    const double root = sqrt(tau);
    const double t3 = tau * tau * tau;
    const double sum = -7.85951783 * tau + 1.84408259 * tau * root - 11.7866497 * t3 + 22.6807411 * t3 * root
        - 15.9618719 * t3 * tau + 1.80122502 * t3 * t3 * tau * root;
    const double m = 31.998 * salinity / (1000 - 1.005 * salinity);
    const double h = m / 2;
    const double phi = 0.90799 + h * (-0.08992 + h * (0.18458 + h * (-0.07395 - h * 0.00221)));
    return 22.064e6 * exp(sum * 647.096 / t - 0.018 * phi * m);
}

/* Sharqawy, Lienhard and Zubair 2010, Desalin. Water Treat. 16, 354-380, pure water, unrounded coefficients */
double latent_heat(double t) {
    return 2.5008991412e6
        + t * (-2.3691806479e3 + t * (2.6776439436e-1 + t * (-8.1027544602e-3 - t * 2.0799346624e-5)));
}

/* Stefan-Boltzmann law, constant of CODATA 2018, the difference of fourth powers factored */
double radiation_film(double emissivity, double one, double other) {
    const double a = one + 273.15;
    const double b = other + 273.15;
    return emissivity * 5.670374419e-8 * (a * a + b * b) * (a + b);
}

/* Monod 1949, Annu. Rev. Microbiol. 3, 371-394 */
double monod(double concentration, double half) {
    return concentration <= 0 ? 0 : concentration / (half + concentration);
}

/* A smooth gate through the limits of Moras et al. 2022, Biogeosciences 19, 3537-3557, and of Morse and He 1993, Mar.
   Chem. 41, 291-297 */
static double gate(double value, double closed, double open) {
    const double x = clamp01((value - closed) / (open - closed));
    return x * x * (3 - 2 * x);
}

double aragonite_surface(double saturation, double bare, double fine) {
    return bare + fine * gate(saturation, 7, 9) + 200 * gate(saturation, 16, 20);
}

/* Burton and Walter 1987, Geology 15, 111-114, in the fit of McCulloch et al. 2012, Nat. Clim. Change 2, 623-627 */
double aragonite_growth(double saturation, double temperature) {
    const double t = fmin(37, fmax(5, temperature));
    const double k = -0.0177 * t * t + 1.47 * t + 14.9;
    const double n = 0.0628 * t + 0.0985;
    return saturation <= 1 ? 0 : k * 1e-6 / 3600 * pow(saturation - 1, n);
}

/* Power of the excess over saturation (Langdon and Atkinson 2005; Chan and Connolly 2013), straight below 0.1, 1 at
   saturation 4 */
double skeleton_response(double saturation, double exponent) {
    if (saturation <= 1) {
        return 0;
    }
    const double e = saturation - 1;
    const double half = (exponent - 1) / 2;
    return e * pow(e * e + 0.01, half) / (3 * pow(9 + 0.01, half));
}
