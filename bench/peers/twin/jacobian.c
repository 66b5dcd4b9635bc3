#include "jacobian.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>

#define ROOT_OF_ROUNDING 1.4901161193847656e-8
#define HOUR 3600.0

static double increment(const jacobian *j, const double *y, int state) {
    return ROOT_OF_ROUNDING * fmax(fabs(y[state]), j->least[state]);
}

static void note(const jacobian *j, room *r, double time, double *y, char *touched) {
    double before[STATES], after[STATES];
    room_at(r, time - 1, time + 1);
    room_forget(r);
    room_slopes(r, time, y, before);
    for (int c = 0; c < STATES; c++) {
        const double kept = y[c];
        y[c] += 1e3 * increment(j, y, c);
        room_forget(r);
        room_slopes(r, time, y, after);
        y[c] = kept;
        for (int i = 0; i < STATES; i++) {
            touched[c * STATES + i] |= before[i] != after[i];
        }
    }
}

static int meet(const char *touched, int one, int other) {
    for (int i = 0; i < STATES; i++) {
        if (touched[one * STATES + i] && touched[other * STATES + i]) {
            return 1;
        }
    }
    return 0;
}

static void paint(jacobian *j, const char *touched) {
    for (int c = 0; c < STATES; c++) {
        int colour = -1;
        int taken = 1;
        while (taken) {
            colour++;
            taken = 0;
            for (int before = 0; before < c && !taken; before++) {
                taken = j->colour[before] == colour && meet(touched, before, c);
            }
        }
        j->colour[c] = colour;
        j->colours = colour + 1 > j->colours ? colour + 1 : j->colours;
    }
}

jacobian *jacobian_of(room *r, const double *y, const double *least) {
    jacobian *j = calloc(1, sizeof *j);
    char *touched = calloc(STATES * STATES, 1);
    double full[STATES];
    memcpy(j->least, least, sizeof j->least);
    for (int i = 0; i < STATES; i++) {
        full[i] = fmax(y[i], 10 * least[i]);
        touched[i * STATES + i] = 1;
    }
    full[IN(SUMP, WATER)] *= 0.99; /* the top-off runs */
    full[BATTERY] *= 0.99; /* the charger too */
    full[FISH_N] *= 0.99; /* fish thin a little */
    note(j, r, 14 * HOUR, full, touched);
    note(j, r, 23 * HOUR, full, touched);
    full[IN(SUMP, HEAT)] *= 0.985; /* so do the heaters */
    note(j, r, 11.5 * HOUR, full, touched);
    for (int c = 0; c < STATES; c++) {
        j->column[c] = j->entries;
        for (int i = 0; i < STATES; i++) {
            if (touched[c * STATES + i]) {
                j->row[j->entries++] = i;
            }
        }
    }
    j->column[STATES] = j->entries;
    paint(j, touched);
    free(touched);
    return j;
}

int jacobian_at(const jacobian *j, room *r, double time, const double *y, const double *slopes, double *entries) {
    double moved[STATES], after[STATES];
    for (int colour = 0; colour < j->colours; colour++) {
        memcpy(moved, y, sizeof moved);
        for (int c = 0; c < STATES; c++) {
            if (j->colour[c] == colour) {
                moved[c] += increment(j, y, c);
            }
        }
        room_slopes(r, time, moved, after);
        for (int c = 0; c < STATES; c++) {
            if (j->colour[c] == colour) {
                for (int k = j->column[c]; k < j->column[c + 1]; k++) {
                    entries[k] = (after[j->row[k]] - slopes[j->row[k]]) / (moved[c] - y[c]);
                }
            }
        }
    }
    return j->colours;
}
