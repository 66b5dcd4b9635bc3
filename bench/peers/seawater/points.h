/* The points that every peer is given: the same draws, bit by bit, as SeawaterPoints and gsw_times.py make. */
#ifndef POINTS_H
#define POINTS_H

#define POINTS 100000

typedef struct {
    double practical_salinity[POINTS], temperature[POINTS]; /* PSS-78; degC, ITS-90 */
    double alkalinity[POINTS], dic[POINTS];                 /* umol/kg */
    double phosphate[POINTS], silicate[POINTS], ammonia[POINTS]; /* umol/kg */
    double conductivity[POINTS];                            /* S/m */
} points;

void draw_points(points *into);

#endif
