/* Times each function over the points, on one core: name, median and best nanoseconds a point, and the mean of the
   results, which shows that all peers computed the same. What is called lies in other translation units, so that the
   compiler cannot leave the work out. */
#include "co2_system.h"
#include "points.h"
#include "properties.h"

#include <stdio.h>
#include <stdlib.h>
#include <time.h>

#define ROUNDS 7
#define WARM_UP_SECONDS 1.0
#define ROUND_SECONDS 0.4

static points given;
static double result[POINTS];

static void run_eos80_density(void) {
    eos80_density(POINTS, given.temperature, given.practical_salinity, result);
}

static void run_oxygen_solubility(void) {
    oxygen_solubility(POINTS, given.temperature, given.practical_salinity, result);
}

static void run_practical_salinity(void) {
    practical_salinity(POINTS, given.conductivity, given.temperature, result);
}

static void run_co2_system(void) {
    for (size_t i = 0; i < POINTS; i++) {
        const co2_input input = {
            .practical_salinity = given.practical_salinity[i],
            .temperature = given.temperature[i],
            .phosphate = given.phosphate[i],
            .silicate = given.silicate[i],
            .ammonia = given.ammonia[i],
            .alkalinity = given.alkalinity[i],
            .dic = given.dic[i],
        };
        co2_state state;
        if (co2_solve(&input, &state) == 0) {
            fprintf(stderr, "point %zu has no solution\n", i);
            exit(1);
        }
        result[i] = state.ph_total;
    }
}

static double seconds(void) {
    struct timespec now;
    clock_gettime(CLOCK_MONOTONIC, &now);
    return (double) now.tv_sec + 1e-9 * (double) now.tv_nsec;
}

/* Nanoseconds a point, over at least so long. */
static double time_for(double least_seconds, void (*run)(void)) {
    const double began = seconds();
    double took;
    long passes = 0;
    do {
        run();
        passes++;
        took = seconds() - began;
    } while (took < least_seconds);
    return 1e9 * took / ((double) passes * POINTS);
}

static int by_size(const void *a, const void *b) {
    const double x = *(const double *) a;
    const double y = *(const double *) b;
    return (x > y) - (x < y);
}

static void time_function(const char *name, void (*run)(void)) {
    time_for(WARM_UP_SECONDS, run);
    double rounds[ROUNDS];
    for (int i = 0; i < ROUNDS; i++) {
        rounds[i] = time_for(ROUND_SECONDS, run);
    }
    qsort(rounds, ROUNDS, sizeof rounds[0], by_size);
    double sum = 0;
    for (size_t i = 0; i < POINTS; i++) {
        sum += result[i];
    }
    printf("%s,%.3f,%.3f,%.15g\n", name, rounds[ROUNDS / 2], rounds[0], sum / POINTS);
    fflush(stdout);
}

int main(void) {
    draw_points(&given);
    printf("name,ns_per_point,best_ns_per_point,mean_result\n");
    time_function("eos80_density", run_eos80_density);
    time_function("oxygen_solubility", run_oxygen_solubility);
    time_function("practical_salinity", run_practical_salinity);
    time_function("co2_system", run_co2_system);
    return 0;
}
