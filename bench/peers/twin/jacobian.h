/* The Jacobian of the room's equations by differences, as sparse as it is: columns that meet in no row share one evaluation. */
#ifndef JACOBIAN_H
#define JACOBIAN_H

#include "room.h"

typedef struct {
    int entries;
    int column[STATES + 1];      /* where a column begins */
    int row[STATES * STATES];    /* in rising order */
    int colour[STATES], colours;
    double least[STATES];        /* size below which a state counts as nothing */
} jacobian;

/* The pattern, found by differences at a state by day and by night. */
jacobian *jacobian_of(room *r, const double *y, const double *least);

/* Writes the entries in the order of the pattern; returns the evaluations taken. */
int jacobian_at(const jacobian *j, room *r, double time, const double *y, const double *slopes, double *entries);

#endif
