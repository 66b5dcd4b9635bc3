#include "points.h"

#include <stdint.h>

/* The n-th draw of SplitMix64 (Steele, Lea and Flood 2014, OOPSLA) as a number from 0 to 1. */
static double draw(uint64_t n) {
    uint64_t z = UINT64_C(20240) + (n + 1) * UINT64_C(0x9E3779B97F4A7C15);
    z = (z ^ (z >> 30)) * UINT64_C(0xBF58476D1CE4E5B9);
    z = (z ^ (z >> 27)) * UINT64_C(0x94D049BB133111EB);
    z ^= z >> 31;
    return (double) (z >> 11) / 9007199254740992.0;
}

void draw_points(points *into) {
    for (uint64_t i = 0; i < POINTS; i++) {
        into->practical_salinity[i] = 30 + 8 * draw(7 * i);
        into->temperature[i] = 20 + 10 * draw(7 * i + 1);
        into->alkalinity[i] = 1900 + 700 * draw(7 * i + 2);
        into->dic[i] = into->alkalinity[i] * (0.82 + 0.13 * draw(7 * i + 3));
        into->phosphate[i] = 2 * draw(7 * i + 4);
        into->silicate[i] = 20 * draw(7 * i + 5);
        into->ammonia[i] = 2 * draw(7 * i + 6);
        /* Roughly what such water conducts, by 2 % at worst. */
        into->conductivity[i] =
            5.3 * (into->practical_salinity[i] / 35) * (1 + 0.02 * (into->temperature[i] - 25));
    }
}
