/* Laws of a tank, each a formula of the publication named in laws.c. SI units and degC. */
#ifndef LAWS_H
#define LAWS_H

#define CARBON_MASS 12.0107e-3 /* kg/mol, IUPAC 2005 */
#define NITROGEN_MASS 14.0067e-3
#define PHOSPHORUS_MASS 30.973762e-3
#define GAS 8.31446261815324
#define ATMOSPHERE 101325.0
#define DAY 86400.0

double practical_salinity_of(double salt_per_mass);       /* kg/kg */
double oxygen_at_rest(double temperature, double salinity); /* mol/m3 */
double schmidt_of_oxygen(double temperature);
double schmidt_of_carbon_dioxide(double temperature);
double vapour_pressure(double temperature, double salinity); /* Pa */
double latent_heat(double temperature);                      /* J/kg */
double radiation_film(double emissivity, double one, double other); /* W/(m2 K) */
double monod(double concentration, double half);
double aragonite_surface(double saturation, double bare, double fine); /* 1/m */
double aragonite_growth(double saturation, double temperature);        /* mol/(m2 s) */
double skeleton_response(double saturation, double exponent);
double clamp01(double value);

#endif
