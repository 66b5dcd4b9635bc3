/* Properties of seawater at one atmosphere, over arrays. Temperature in degC on ITS-90, salinity on PSS-78. */
#ifndef PROPERTIES_H
#define PROPERTIES_H

#include <stddef.h>

/* kg/m3 */
void eos80_density(size_t n, const double *temperature, const double *practical_salinity, double *density);

/* umol/kg, under air saturated with water vapour */
void oxygen_solubility(size_t n, const double *temperature, const double *practical_salinity, double *oxygen);

/* From S/m; not a number below 2, where the scale as defined ends. */
void practical_salinity(size_t n, const double *conductivity, const double *temperature, double *salinity);

#endif
