#include "schedule.h"

#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

enum kind { MOVE, DRAIN, PEOPLE, MAINS, THERMOSTAT, FILL, LEAVE, TAKE, EMPTY };

typedef struct {
    enum kind kind;
    int state;     /* what gains or loses, or the body that is filled or cut, by its first state */
    double amount;
} deed;

typedef struct {
    double first, period;
    size_t from, to; /* its deeds */
    int meal, powered;
} event;

struct schedule {
    event *events;
    deed *deeds;
    size_t event_count, deed_count;
};

static int needed(const char *stock, const char *body) {
    const int state = state_named(stock, body);
    if (state < 0) {
        fprintf(stderr, "no equation for %s of %s\n", stock, body);
        exit(2);
    }
    return state;
}

static int same_body(int one, int other) {
    return strcmp(state_names[one].body, state_names[other].body) == 0;
}

static int first_of(const char *body) {
    for (int i = 0; i < STATES; i++) {
        if (strcmp(state_names[i].body, body) == 0) {
            return i;
        }
    }
    fprintf(stderr, "no equation for %s\n", body);
    exit(2);
}

static int deed_of(const plan_line *line, deed *d) {
    char *const *part = line->part;
    if (strcmp(part[0], "move") == 0) {
        const deed made = {MOVE, needed(part[1], part[3]), plan_value(part[4])};
        *d = made;
    } else if (strcmp(part[0], "water") == 0) {
        const deed made = {DRAIN, needed("WATER", part[1]), plan_value(part[3])};
        *d = made;
    } else if (strcmp(part[0], "set") == 0 && strcmp(part[1], "people in the room") == 0) {
        const deed made = {PEOPLE, 0, plan_value(part[2])};
        *d = made;
    } else if (strcmp(part[0], "set") == 0 && strcmp(part[1], "power") == 0) {
        const deed made = {MAINS, 0, plan_value(part[2])};
        *d = made;
    } else if (strcmp(part[0], "set") == 0 && strcmp(part[1], "room temperature") == 0) {
        const deed made = {THERMOSTAT, 0, plan_value(part[2])};
        *d = made;
    } else if (strcmp(part[0], "fill") == 0) {
        const deed made = {FILL, needed("WATER", part[1]), plan_value(part[2])};
        *d = made;
    } else if (strcmp(part[0], "leave") == 0) {
        const deed made = {LEAVE, needed("ORGANIC_CARBON", part[1]), plan_value(part[2])};
        *d = made;
    } else if (strcmp(part[0], "take") == 0) {
        const deed made = {TAKE, needed(part[1], part[2]), plan_value(part[3])};
        *d = made;
    } else if (strcmp(part[0], "empty") == 0) {
        const deed made = {EMPTY, first_of(part[1]), 0};
        *d = made;
    } else {
        return 0;
    }
    return 1;
}

schedule *schedule_of(const plan *p) {
    schedule *s = calloc(1, sizeof *s);
    s->events = calloc(p->count, sizeof *s->events);
    s->deeds = calloc(p->count, sizeof *s->deeds);
    for (size_t i = 0; i < p->count; i++) {
        const plan_line *line = &p->lines[i];
        if (line->parts > 0 && strcmp(line->part[0], "event") == 0) {
            const event e = {plan_value(line->part[2]), plan_value(line->part[3]), s->deed_count, s->deed_count, 0, 0};
            s->events[s->event_count++] = e;
        } else if (line->parts > 0 && s->event_count > 0 && strcmp(line->part[0], "powered") == 0) {
            s->events[s->event_count - 1].powered = 1;
        } else if (line->parts > 0 && s->event_count > 0 && deed_of(line, &s->deeds[s->deed_count])) {
            event *e = &s->events[s->event_count - 1];
            e->meal |= s->deeds[s->deed_count].kind == MOVE && s->deeds[s->deed_count].state == STOMACH_C;
            e->to = ++s->deed_count;
        }
    }
    return s;
}

static double next_of(const event *e, double after) {
    if (after < e->first) {
        return e->first;
    }
    return e->first + (floor((after - e->first) / e->period) + 1) * e->period;
}

double schedule_next(const schedule *s, double after) {
    double next = HUGE_VAL;
    for (size_t i = 0; i < s->event_count; i++) {
        next = fmin(next, next_of(&s->events[i], after));
    }
    return next;
}

/* All of a meal is told, in the parts that would be eaten and left by fish with room for it. */
static void eat(const event *e, const deed *deeds, const room *r, double *y) {
    double meal[3] = {0};
    for (size_t k = e->from; k < e->to; k++) {
        const int eaten = deeds[k].state >= STOMACH_C && deeds[k].state <= STOMACH_P;
        meal[deeds[k].state - (eaten ? STOMACH_C : IN(DISPLAY, OC))] += deeds[k].amount;
    }
    const double eaten = room_eats(r, y, meal[0]);
    for (int i = 0; i < 3; i++) {
        y[STOMACH_C + i] += eaten * meal[i];
        y[IN(DISPLAY, OC + i)] += (1 - eaten) * meal[i];
    }
}

static void perform(const event *e, const deed *deeds, room *r, double *y) {
    if (e->powered && !room_has_mains(r)) {
        return;
    }
    if (e->meal) {
        eat(e, deeds, r, y);
        return;
    }
    double factor = 1;
    for (size_t k = e->from; k < e->to; k++) {
        const deed *d = &deeds[k];
        switch (d->kind) {
            case MOVE:
                y[d->state] += factor * d->amount;
                break;
            case DRAIN:
                room_drain(r, y, d->state / OF_WATER, d->amount);
                break;
            case PEOPLE:
                room_people(r, d->amount);
                break;
            case MAINS:
                room_mains(r, d->amount > 0);
                break;
            case THERMOSTAT:
                room_thermostat(r, d->amount);
                break;
            case FILL: /* the moves after it fill the whole */
                factor = fmax(0, d->amount - y[d->state]) / d->amount;
                break;
            case LEAVE: {
                const double standing = y[d->state + 1];
                const double left = standing > d->amount ? d->amount / standing : 1;
                for (int i = 0; i < 3; i++) {
                    y[d->state + i] *= left;
                }
                break;
            }
            case TAKE:
                y[d->state] *= 1 - d->amount;
                break;
            case EMPTY:
                for (int i = d->state; i < STATES && same_body(i, d->state); i++) {
                    y[i] = 0;
                }
                break;
        }
    }
}

void schedule_do(const schedule *s, double time, room *r, double *y) {
    for (size_t i = 0; i < s->event_count; i++) {
        const event *e = &s->events[i];
        if (next_of(e, time - e->period / 2) == time || time == e->first) {
            perform(e, s->deeds, r, y);
        }
    }
}
