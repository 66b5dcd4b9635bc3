/* The harbour room: three waters, what lives in and on them, the room and its air. */
#ifndef ROOM_H
#define ROOM_H

#include "plan.h"

enum { DISPLAY, SUMP, REFUGIUM, WATERS };

/* Of each water; amounts in m3, kg, J and mol. */
enum { WATER, SALT, HEAT, OXYGEN, ALK, DIC, CA, MG, NH, NO2, NO3, PO4, OC, ON, OP, OF_WATER };

#define IN(water, what) ((water) * OF_WATER + (what))

enum {
    ROOM_HEAT = WATERS * OF_WATER,
    AIR_WATER, AIR_CARBON,
    RESERVOIR_WATER, RESERVOIR_HEAT, RESERVOIR_ALK, RESERVOIR_CA,
    BATTERY,
    GROUND_C, GROUND_N, GROUND_P,
    AMMONIA_CELLS_N, AMMONIA_CELLS_C,
    NITRITE_CELLS_N, NITRITE_CELLS_C,
    ROCK_P, ROCK_ALK,
    MEDIUM_P, MEDIUM_ALK,
    STOMACH_C, STOMACH_N, STOMACH_P,
    GUT_C, GUT_N, GUT_P,
    RESERVE_C,
    FISH_C, FISH_N, FISH_P,
    DEAD_C, DEAD_N, DEAD_P,
    CORALS_C,
    TISSUE_C, TISSUE_N, TISSUE_P,
    TURF_C,
    FREE_C, FREE_N, FREE_P,
    BED_C, BED_N, BED_P,
    DOSED_C,
    EATERS_C, EATERS_N, EATERS_P,
    SOCK_C, SOCK_N, SOCK_P,
    SKELETON_CA, SKELETON_MG, SKELETON_DIC, SKELETON_ALK,
    SCALE_CA, SCALE_MG, SCALE_DIC, SCALE_ALK,
    STATES
};

/* The name of a state: its stock and its body. */
typedef struct {
    const char *stock, *body;
} state_name;

extern const state_name state_names[STATES];

int state_named(const char *stock, const char *body); /* -1 where no equation touches it */

typedef struct room room;

room *room_of(const plan *p);

/* What holds until the next event: who is there, what is on by its clock. */
void room_at(room *r, double from, double to);
void room_people(room *r, double count);

/* Forgets where the last pH was, so that the same state gives the same slopes to the last bit. */
void room_forget(room *r);

void room_slopes(room *r, double time, const double *y, double *dy);

/* The circulation alone, and everything but the circulation. */
void room_circulation(room *r, const double *y, double *dy);
void room_without_circulation(room *r, double time, const double *y, double *dy);

/* Moves an amount of a water's volume out with all that is dissolved in it. */
void room_drain(const room *r, double *y, int water, double volume);

/* Share of a meal that is eaten. */
double room_eats(const room *r, const double *y, double carbon);

void room_thermostat(room *r, double temperature);
void room_mains(room *r, int on);
int room_has_mains(const room *r);

/* How long until the battery is empty or, after that, can serve again; and that it has come to that. */
double room_battery_turns(const room *r, const double *y);
void room_battery_turn(room *r);

double room_ph(room *r, const double *y, int water);
double room_temperature(const room *r, const double *y, int water);
double room_salinity(const room *r, const double *y, int water);
double room_air_carbon_dioxide(const room *r, const double *y);

#endif
