/* The solvers of SUNDIALS, each with its usual settings, behind one face. */
#ifndef SOLVER_H
#define SOLVER_H

#include "room.h"

typedef enum { BDF, BDF_SPARSE, ADAMS, DORMAND_PRINCE, IMEX_3, IMEX_4, SOLVERS } solver_kind;

extern const char *const solver_names[SOLVERS];

typedef struct solver solver;

/* A solver of a room from a state, which is copied. */
solver *solver_new(solver_kind kind, room *r, const double *y, double relative, const double *absolute);

double *solver_state(solver *s);

/* Begins anew at a time, after the state or the room was changed at once. */
void solver_restart(solver *s, double time, double end);

/* Goes to a time, not beyond the end of the last restart; the state is then that of this time. */
void solver_to(solver *s, double time);

/* Evaluations of the equations, those for the Jacobian among them, and steps. */
void solver_effort(solver *s, long *evaluations, long *steps);

void solver_free(solver *s);

#endif
