#include "solver.h"

#include "jacobian.h"

#include <arkode/arkode_arkstep.h>
#include <arkode/arkode_erkstep.h>
#include <cvode/cvode.h>
#include <nvector/nvector_serial.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sunlinsol/sunlinsol_dense.h>
#include <sunlinsol/sunlinsol_klu.h>
#include <sunmatrix/sunmatrix_dense.h>
#include <sunmatrix/sunmatrix_sparse.h>
#include <sunnonlinsol/sunnonlinsol_fixedpoint.h>

#define LONGEST_STEP 7200.0
#define MOST_STEPS 100000000L

const char *const solver_names[SOLVERS] = {"bdf", "bdf-sparse", "adams", "dormand-prince", "imex-3", "imex-4"};

struct solver {
    solver_kind kind;
    room *room;
    SUNContext context;
    N_Vector y, absolute;
    SUNMatrix matrix;
    SUNLinearSolver linear;
    SUNNonlinearSolver fixed_point;
    jacobian *sparse;
    void *memory;
    double now;
    long evaluations, steps;
};

static void need(int flag, const char *what) {
    if (flag < 0) {
        fprintf(stderr, "%s failed with %d\n", what, flag);
        exit(2);
    }
}

static int slopes(realtype t, N_Vector y, N_Vector dy, void *of) {
    room_slopes(((solver *) of)->room, t, N_VGetArrayPointer(y), N_VGetArrayPointer(dy));
    return 0;
}

static int explicit_part(realtype t, N_Vector y, N_Vector dy, void *of) {
    room_without_circulation(((solver *) of)->room, t, N_VGetArrayPointer(y), N_VGetArrayPointer(dy));
    return 0;
}

static int implicit_part(realtype t, N_Vector y, N_Vector dy, void *of) {
    (void) t;
    room_circulation(((solver *) of)->room, N_VGetArrayPointer(y), N_VGetArrayPointer(dy));
    return 0;
}

static int is_cvode(const solver *s) {
    return s->kind == BDF || s->kind == BDF_SPARSE || s->kind == ADAMS;
}

static int sparse_jacobian(realtype t, N_Vector y, N_Vector dy, SUNMatrix matrix, void *of, N_Vector a, N_Vector b,
                           N_Vector c) {
    (void) a, (void) b, (void) c;
    solver *s = of;
    const jacobian *j = s->sparse;
    sunindextype *columns = SUNSparseMatrix_IndexPointers(matrix);
    sunindextype *rows = SUNSparseMatrix_IndexValues(matrix);
    for (int i = 0; i <= STATES; i++) {
        columns[i] = j->column[i];
    }
    for (int k = 0; k < j->entries; k++) {
        rows[k] = j->row[k];
    }
    s->evaluations += jacobian_at(j, s->room, t, N_VGetArrayPointer(y), N_VGetArrayPointer(dy),
                                  SUNSparseMatrix_Data(matrix));
    return 0;
}

static void cvode(solver *s, double relative) {
    s->memory = CVodeCreate(s->kind == ADAMS ? CV_ADAMS : CV_BDF, s->context);
    need(CVodeInit(s->memory, slopes, 0, s->y), "CVodeInit");
    need(CVodeSVtolerances(s->memory, relative, s->absolute), "CVodeSVtolerances");
    need(CVodeSetUserData(s->memory, s), "CVodeSetUserData");
    need(CVodeSetMaxNumSteps(s->memory, MOST_STEPS), "CVodeSetMaxNumSteps");
    need(CVodeSetMaxStep(s->memory, LONGEST_STEP), "CVodeSetMaxStep");
    if (s->kind != ADAMS) {
        need(CVodeSetLinearSolver(s->memory, s->linear, s->matrix), "CVodeSetLinearSolver");
        if (s->kind == BDF_SPARSE) {
            need(CVodeSetJacFn(s->memory, sparse_jacobian), "CVodeSetJacFn");
        }
    } else {
        s->fixed_point = SUNNonlinSol_FixedPoint(s->y, 0, s->context);
        need(CVodeSetNonlinearSolver(s->memory, s->fixed_point), "CVodeSetNonlinearSolver");
    }
}

static void erk(solver *s, double relative) {
    s->memory = ERKStepCreate(slopes, 0, s->y, s->context);
    need(ERKStepSVtolerances(s->memory, relative, s->absolute), "ERKStepSVtolerances");
    need(ERKStepSetUserData(s->memory, s), "ERKStepSetUserData");
    need(ERKStepSetTableNum(s->memory, ARKODE_DORMAND_PRINCE_7_4_5), "ERKStepSetTableNum");
    need(ERKStepSetMaxNumSteps(s->memory, MOST_STEPS), "ERKStepSetMaxNumSteps");
    need(ERKStepSetMaxStep(s->memory, LONGEST_STEP), "ERKStepSetMaxStep");
}

static void ark(solver *s, double relative) {
    s->memory = ARKStepCreate(explicit_part, implicit_part, 0, s->y, s->context);
    need(ARKStepSetOrder(s->memory, s->kind == IMEX_3 ? 3 : 4), "ARKStepSetOrder");
    need(ARKStepSVtolerances(s->memory, relative, s->absolute), "ARKStepSVtolerances");
    need(ARKStepSetUserData(s->memory, s), "ARKStepSetUserData");
    need(ARKStepSetMaxNumSteps(s->memory, MOST_STEPS), "ARKStepSetMaxNumSteps");
    need(ARKStepSetMaxStep(s->memory, LONGEST_STEP), "ARKStepSetMaxStep");
    need(ARKStepSetLinearSolver(s->memory, s->linear, s->matrix), "ARKStepSetLinearSolver");
}

solver *solver_new(solver_kind kind, room *r, const double *y, double relative, const double *absolute) {
    solver *s = calloc(1, sizeof *s);
    s->kind = kind;
    s->room = r;
    need(SUNContext_Create(NULL, &s->context), "SUNContext_Create");
    s->y = N_VNew_Serial(STATES, s->context);
    s->absolute = N_VNew_Serial(STATES, s->context);
    if (kind == BDF_SPARSE) {
        s->sparse = jacobian_of(r, y, absolute);
        s->matrix = SUNSparseMatrix(STATES, STATES, s->sparse->entries, CSC_MAT, s->context);
        s->linear = SUNLinSol_KLU(s->y, s->matrix, s->context);
    } else {
        s->matrix = SUNDenseMatrix(STATES, STATES, s->context);
        s->linear = SUNLinSol_Dense(s->y, s->matrix, s->context);
    }
    memcpy(N_VGetArrayPointer(s->y), y, STATES * sizeof *y);
    memcpy(N_VGetArrayPointer(s->absolute), absolute, STATES * sizeof *absolute);
    if (is_cvode(s)) {
        cvode(s, relative);
    } else if (kind == DORMAND_PRINCE) {
        erk(s, relative);
    } else {
        ark(s, relative);
    }
    return s;
}

double *solver_state(solver *s) {
    return N_VGetArrayPointer(s->y);
}

/* Starting anew sets the counters back. */
static void count(solver *s) {
    long steps = 0, all = 0, more = 0;
    if (is_cvode(s)) {
        CVodeGetNumSteps(s->memory, &steps);
        CVodeGetNumRhsEvals(s->memory, &all);
        if (s->kind == BDF) {
            CVodeGetNumLinRhsEvals(s->memory, &more);
        }
    } else if (s->kind == DORMAND_PRINCE) {
        ERKStepGetNumSteps(s->memory, &steps);
        ERKStepGetNumRhsEvals(s->memory, &all);
    } else {
        long implicit;
        ARKStepGetNumSteps(s->memory, &steps);
        ARKStepGetNumRhsEvals(s->memory, &all, &implicit);
    }
    s->evaluations += all + more;
    s->steps += steps;
}

void solver_restart(solver *s, double time, double end) {
    count(s);
    double last = 0;
    if (is_cvode(s)) {
        need(CVodeReInit(s->memory, time, s->y), "CVodeReInit");
        need(CVodeSetStopTime(s->memory, end), "CVodeSetStopTime");
    } else if (s->kind == DORMAND_PRINCE) {
        ERKStepGetCurrentStep(s->memory, &last);
        need(ERKStepReInit(s->memory, slopes, time, s->y), "ERKStepReInit");
        need(ERKStepSetInitStep(s->memory, last), "ERKStepSetInitStep");
        need(ERKStepSetStopTime(s->memory, end), "ERKStepSetStopTime");
    } else {
        ARKStepGetCurrentStep(s->memory, &last);
        need(ARKStepReInit(s->memory, explicit_part, implicit_part, time, s->y), "ARKStepReInit");
        need(ARKStepSetInitStep(s->memory, last), "ARKStepSetInitStep");
        need(ARKStepSetStopTime(s->memory, end), "ARKStepSetStopTime");
    }
    s->now = time;
}

void solver_to(solver *s, double time) {
    if (time <= s->now) {
        return;
    }
    realtype reached = s->now;
    while (reached < time) {
        if (is_cvode(s)) {
            need(CVode(s->memory, time, s->y, &reached, CV_NORMAL), "CVode");
        } else if (s->kind == DORMAND_PRINCE) {
            need(ERKStepEvolve(s->memory, time, s->y, &reached, ARK_NORMAL), "ERKStepEvolve");
        } else {
            need(ARKStepEvolve(s->memory, time, s->y, &reached, ARK_NORMAL), "ARKStepEvolve");
        }
    }
    s->now = time;
}

void solver_effort(solver *s, long *evaluations, long *steps) {
    count(s);
    *evaluations = s->evaluations;
    *steps = s->steps;
}

void solver_free(solver *s) {
    if (is_cvode(s)) {
        CVodeFree(&s->memory);
    } else if (s->kind == DORMAND_PRINCE) {
        ERKStepFree(&s->memory);
    } else {
        ARKStepFree(&s->memory);
    }
    if (s->fixed_point) {
        SUNNonlinSolFree(s->fixed_point);
    }
    SUNLinSolFree(s->linear);
    SUNMatDestroy(s->matrix);
    N_VDestroy(s->y);
    N_VDestroy(s->absolute);
    SUNContext_Free(&s->context);
    free(s->sparse);
    free(s);
}
