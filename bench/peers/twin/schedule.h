/* What happens at the times of the day: meals, doses, water changes, who comes and goes. */
#ifndef SCHEDULE_H
#define SCHEDULE_H

#include "plan.h"
#include "room.h"

typedef struct schedule schedule;

schedule *schedule_of(const plan *p);

/* The first time after another at which something happens. */
double schedule_next(const schedule *s, double after);

/* Does what is due at a time, in the order of the plan. */
void schedule_do(const schedule *s, double time, room *r, double *y);

#endif
