/* Runs the room by a solver of SUNDIALS.

     twin check PLAN SOLVER TOLERANCE ALLOWED    against the course in the plan's file
     twin course PLAN SOLVER TOLERANCE           thirty days, on standard output
     twin time PLAN ROUNDS SOLVER:TOLERANCE ...  thirty days, median of the rounds, counted up to a year
     twin slopes PLAN                            the slopes at the start, one a line

   A tolerance is relative; absolute ones are those of the plan's file, which belong to 1e-4, as much closer as it is. */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>

#include "laws.h"
#include "plan.h"
#include "room.h"
#include "schedule.h"
#include "solver.h"

#define USUAL_TOLERANCE 1e-4
#define COURSE_DAYS 30
#define SAMPLES_A_DAY 4

typedef struct {
    const plan *plan;
    const schedule *schedule;
    double start[STATES], absolute[STATES];
    int column[STATES]; /* among the stocks of the file */
} given;

static given read(const char *file) {
    given g = {.plan = plan_read(file)};
    g.schedule = schedule_of(g.plan);
    for (int i = 0; i < STATES; i++) {
        const plan_line *line = plan_find(g.plan, "stock", state_names[i].stock, state_names[i].body);
        g.start[i] = plan_value(line->part[3]);
        g.absolute[i] = plan_value(line->part[4]);
        g.column[i] = plan_stock(g.plan, state_names[i].stock, state_names[i].body);
    }
    return g;
}

typedef void sampler(void *of, int sample, double time, room *r, const double *y);

/* A run with its events; sample times rise. */
static void run(const given *g, solver_kind kind, double tolerance, double end, const double *times, int samples,
                sampler *take, void *of, long *evaluations, long *steps) {
    room *r = room_of(g->plan);
    double absolute[STATES];
    for (int i = 0; i < STATES; i++) {
        absolute[i] = g->absolute[i] * tolerance / USUAL_TOLERANCE;
    }
    solver *s = solver_new(kind, r, g->start, tolerance, absolute);
    double *y = solver_state(s);
    double now = 0;
    int sample = 0;
    while (now < end) {
        const double turns = now + room_battery_turns(r, y);
        const double next = fmin(fmin(end, turns), schedule_next(g->schedule, now));
        room_at(r, now, next);
        solver_restart(s, now, next);
        for (; sample < samples && times[sample] < next; sample++) {
            solver_to(s, times[sample]);
            take(of, sample, times[sample], r, y);
        }
        solver_to(s, next);
        now = next;
        if (now == turns) {
            room_battery_turn(r);
        }
        schedule_do(g->schedule, now, r, y);
    }
    solver_effort(s, evaluations, steps);
    solver_free(s);
    free(r);
}

/* ---- check ---- */

typedef struct {
    const given *given;
    const plan_line *const *samples;
    double worst[STATES], largest[STATES], when[STATES];
    double ph, ph_largest, temperature, salinity, carbon, carbon_largest;
} comparison;

static void compare(void *of, int sample, double time, room *r, const double *y) {
    comparison *c = of;
    const double *theirs = c->samples[sample]->values;
    double other[STATES];
    for (int i = 0; i < STATES; i++) {
        other[i] = theirs[3 + c->given->column[i]];
        const double apart = fabs(y[i] - other[i]);
        if (apart > c->worst[i]) {
            c->worst[i] = apart;
            c->when[i] = time;
        }
        c->largest[i] = fmax(c->largest[i], fabs(other[i]));
    }
    c->ph = fmax(c->ph, fabs(room_ph(r, y, DISPLAY) - theirs[1]));
    c->carbon = fmax(c->carbon, fabs(room_air_carbon_dioxide(r, y) - theirs[2]));
    c->carbon_largest = fmax(c->carbon_largest, theirs[2]);
    for (int w = 0; w < WATERS; w++) {
        c->temperature = fmax(c->temperature, fabs(room_temperature(r, y, w) - room_temperature(r, other, w)));
        c->salinity = fmax(c->salinity, fabs(room_salinity(r, y, w) - room_salinity(r, other, w)));
    }
}

static int judge(const char *what, double apart, double allowed, double when) {
    const int good = apart <= allowed;
    printf("%-48s %9.2e  %5.1f h%s\n", what, apart, when / 3600, good ? "" : "  TOO FAR");
    return good;
}

static int check(const given *g, solver_kind kind, double tolerance, double allowed) {
    const plan *p = g->plan;
    const plan_line **samples = malloc(p->count * sizeof *samples);
    double *times = malloc(p->count * sizeof *times);
    int count = 0;
    for (size_t i = 0; i < p->count; i++) {
        if (p->lines[i].values) {
            samples[count] = &p->lines[i];
            times[count++] = p->lines[i].values[0];
        }
    }
    if (count == 0) {
        fprintf(stderr, "the file has no course\n");
        return 0;
    }
    comparison c = {.given = g, .samples = samples};
    long evaluations, steps;
    run(g, kind, tolerance, times[count - 1] + 1800, times, count, compare, &c, &evaluations, &steps);
    printf("%s at %g: %d samples, %ld evaluations, %ld steps; largest difference over the quantity's largest value,\n"
           "allowed %g\n", solver_names[kind], tolerance, count, evaluations, steps, allowed);
    int good = 1;
    for (int i = 0; i < STATES; i++) {
        char name[96];
        snprintf(name, sizeof name, "%s, %s", state_names[i].body, state_names[i].stock);
        /* What is nothing in this plan is counted in its absolute tolerance. */
        good &= judge(name, c.worst[i] / fmax(c.largest[i], g->absolute[i]), allowed, c.when[i]);
    }
    good &= judge("waters, temperature over 25 K", c.temperature / 25, allowed, 0);
    good &= judge("waters, practical salinity over 35", c.salinity / 35, allowed, 0);
    good &= judge("display, pH over 8", c.ph / 8, allowed, 0);
    good &= judge("room, carbon dioxide", c.carbon / c.carbon_largest, allowed, 0);
    return good;
}

/* ---- courses and times ---- */

static void print(void *of, int sample, double time, room *r, const double *y) {
    (void) of;
    (void) sample;
    (void) r;
    printf("%.17g", time);
    for (int i = 0; i < STATES; i++) {
        printf("\t%.17g", y[i]);
    }
    printf("\n");
}

static void course(const given *g, solver_kind kind, double tolerance) {
    double times[COURSE_DAYS * SAMPLES_A_DAY];
    for (int i = 0; i < COURSE_DAYS * SAMPLES_A_DAY; i++) {
        times[i] = DAY / SAMPLES_A_DAY * (i + 0.3);
    }
    for (int i = 0; i < STATES; i++) {
        printf("\t%s %s", state_names[i].stock, state_names[i].body);
    }
    printf("\n");
    long evaluations, steps;
    run(g, kind, tolerance, COURSE_DAYS * DAY, times, COURSE_DAYS * SAMPLES_A_DAY, print, NULL, &evaluations, &steps);
}

static int by_size(const void *a, const void *b) {
    const double x = *(const double *) a, y = *(const double *) b;
    return (x > y) - (x < y);
}

/* Of the processor's time, so that what else runs on the machine is not counted. */
static double milliseconds(void) {
    struct timespec t;
    clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &t);
    return 1e3 * (double) t.tv_sec + 1e-6 * (double) t.tv_nsec;
}

static void time_days(const given *g, solver_kind kind, const char *tolerance, int rounds) {
    double *took = malloc((size_t) rounds * sizeof *took);
    long evaluations = 0, steps = 0;
    for (int i = 0; i < rounds; i++) {
        const double from = milliseconds();
        run(g, kind, strtod(tolerance, NULL), COURSE_DAYS * DAY, NULL, 0, NULL, NULL, &evaluations, &steps);
        took[i] = milliseconds() - from;
    }
    qsort(took, (size_t) rounds, sizeof *took, by_size);
    const double years = COURSE_DAYS / 365.0;
    printf("%s\t%s\t%.0f\t%.0f\t%.3f\n", solver_names[kind], tolerance, (double) evaluations / years,
           (double) steps / years, took[rounds / 2] / years);
    fflush(stdout);
    free(took);
}

static void slopes(const given *g) {
    room *r = room_of(g->plan);
    double d[STATES];
    room_at(r, 0, 1);
    room_slopes(r, 0, g->start, d);
    for (int i = 0; i < STATES; i++) {
        printf("%s\t%s\t%.17g\n", state_names[i].stock, state_names[i].body, d[i]);
    }
    free(r);
}

static solver_kind kind_of(const char *name) {
    for (int i = 0; i < SOLVERS; i++) {
        if (strcmp(solver_names[i], name) == 0) {
            return (solver_kind) i;
        }
    }
    fprintf(stderr, "no solver %s\n", name);
    exit(2);
}

int main(int count, char **arguments) {
    if (count == 3 && strcmp(arguments[1], "slopes") == 0) {
        const given g = read(arguments[2]);
        slopes(&g);
        return 0;
    }
    if (count < 5) {
        fprintf(stderr, "see the head of twin.c\n");
        return 2;
    }
    const given g = read(arguments[2]);
    if (strcmp(arguments[1], "check") == 0 && count == 6) {
        return check(&g, kind_of(arguments[3]), strtod(arguments[4], NULL), strtod(arguments[5], NULL)) ? 0 : 1;
    }
    if (strcmp(arguments[1], "course") == 0) {
        course(&g, kind_of(arguments[3]), strtod(arguments[4], NULL));
        return 0;
    }
    if (strcmp(arguments[1], "time") == 0) {
        for (int i = 4; i < count; i++) {
            char *tolerance = strchr(arguments[i], ':');
            if (!tolerance) {
                fprintf(stderr, "what is %s?\n", arguments[i]);
                return 2;
            }
            *tolerance++ = 0;
            time_days(&g, kind_of(arguments[i]), tolerance, (int) strtol(arguments[3], NULL, 10));
        }
        return 0;
    }
    fprintf(stderr, "see the head of twin.c\n");
    return 2;
}
