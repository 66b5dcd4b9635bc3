/* The equations of the room. What the formulas are taken from is said beside each; all numbers of the plan come from its
   file. Alkalinity follows charge: Wolf-Gladrow et al. 2007, Mar. Chem. 106, 287-300, eq. 32. */
#include "room.h"

#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "../seawater/co2_system.h"
#include "laws.h"

#define FRESH_DENSITY 997.05
#define VAPOUR_MASS 18.01528e-3
#define GRAVITY 9.80665
#define PARTS 4 /* of a wave programme */

/* A whole fish: 0.27 of it dry, of that a tenth nitrogen and 0.45 carbon; phosphorus 0.36 % of it */
#define FISH_NITROGEN (0.27 * 0.10 / NITROGEN_MASS)
#define FISH_CARBON (0.27 * 0.45 / CARBON_MASS)
#define FISH_PHOSPHORUS (0.0036 / PHOSPHORUS_MASS)

/* Cells of bacteria on fresh food: 0.4 of the carbon they eat, of C:N 5 and N:P 8 by mass */
#define CELL_YIELD 0.4
#define CELL_CARBON (5 / CARBON_MASS * NITROGEN_MASS) /* per nitrogen */
#define CELL_PHOSPHORUS (NITROGEN_MASS / PHOSPHORUS_MASS / 8)

typedef struct {
    double starts, daily, ramp, full, power, to_water;
    double share; /* where it has no ramp, until the next event */
} lamp;

typedef struct {
    double retained, excreted, faeces;
} shares;

typedef struct {
    double breathing, ratio, saturation, shedding, scarce, tissue, lit_day;
} community;

typedef struct {
    double rate, exponent, ratio, extent, magnesium;
} skeleton;

typedef struct {
    double growth, decay, half, oxygen_half, inhibition, yield, oxygen; /* the guild */
    double factor, affinity, most, per_kelvin;
} nitrifier;

typedef struct {
    double from, lasts, speed, running;
} part;

typedef struct {
    double power, speed;
    part parts[PARTS];
    int count;
    double share; /* of its power, until the next event */
} stream;

typedef struct {
    double solids, floor, rocks, rocks_top; /* upright walls, what displaces water evenly up to a height */
    double area, around, rim, bottom, pane, pane_exponent, pane_per_kelvin, wall;
    double still_activity, moved_activity, still, moved, usual_schmidt;
    double stirring, all_stirring; /* power now, with all at full speed */
    double pumps, rot, phosphorus_rot, settle;
} vessel;

typedef struct {
    double flow, held, slope, least;
    int upper, lower;
} loop;

typedef struct {
    double standard, air, passes; /* water that passes once through where they rise */
} bubbles;

struct room {
    double density, heat_per_volume;
    vessel of[WATERS];
    loop loops[2];
    lamp display_lamp, refugium_lamp;
    stream streams[2];
    double room_solids, envelope, outdoors, house, house_most, house_temperature;
    double changes, air_volume, vapour_outdoors, carbon_outdoors;
    int mains, battery_on, stone_runs;
    double idle, passes, capacity, full;
    double air_pump, stone_stirs, return_stirs;
    double heater_power[3], heater_top[3], heater_band[3];
    bubbles stone, column;
    double fall_flow, fall_height, fall_form;
    double top_full, top_play, top_flow;
    double lime_flow, lime_from, lime_lasts, lime_heat, lime_alk, lime_ca;
    int liming;
    double people, breath, moisture;
    double skimmate, skimmed;
    double strained, sock_rot, sock_phosphorus;
    double eaters_growth, eaters_death, system_volume;
    double medium_mass, medium_flow, medium_usable;
    double rock_ratio, rock_exchange;
    nitrifier ammonia, nitrite;
    double ground_rot, ground_phosphorus;
    double denitrified, nitrate_half;
    shares carbon, nitrogen, phosphorus;
    double fish_mass, resting, stage, ammonia_share, labile, fasting, uneaten, lethal, carrion_half;
    community corals, turf;
    double bed_growth, bed_loss, bed_saturation, bed_greatest;
    double free_growth, free_death, free_clearance, depth, attenuation;
    skeleton coral_lime, coralline_lime;
    double bare, fine;
    double ln_h[WATERS]; /* of the last solution: the next is near */
};

#define W(water, body) \
    {"WATER", body}, {"SALT", body}, {"HEAT", body}, {"OXYGEN", body}, {"ALKALINITY", body}, \
    {"INORGANIC_CARBON", body}, {"CALCIUM", body}, {"MAGNESIUM", body}, {"AMMONIA", body}, {"NITRITE", body}, \
    {"NITRATE", body}, {"PHOSPHATE", body}, {"ORGANIC_CARBON", body}, {"ORGANIC_NITROGEN", body}, \
    {"ORGANIC_PHOSPHORUS", body}
#define CNP(body) {"ORGANIC_CARBON", body}, {"ORGANIC_NITROGEN", body}, {"ORGANIC_PHOSPHORUS", body}
#define LIME(body) {"CALCIUM", body}, {"MAGNESIUM", body}, {"INORGANIC_CARBON", body}, {"ALKALINITY", body}

const state_name state_names[STATES] = {
    W(DISPLAY, "display"), W(SUMP, "sump"), W(REFUGIUM, "refugium"),
    {"HEAT", "room"},
    {"WATER", "air of the room"}, {"INORGANIC_CARBON", "air of the room"},
    {"WATER", "reservoir"}, {"HEAT", "reservoir"}, {"ALKALINITY", "reservoir"}, {"CALCIUM", "reservoir"},
    {"HEAT", "battery"},
    CNP("waste on the ground"),
    {"ORGANIC_NITROGEN", "ammonia oxidisers"}, {"ORGANIC_CARBON", "ammonia oxidisers"},
    {"ORGANIC_NITROGEN", "nitrite oxidisers"}, {"ORGANIC_CARBON", "nitrite oxidisers"},
    {"PHOSPHATE", "phosphate on rock and sand"}, {"ALKALINITY", "phosphate on rock and sand"},
    {"PHOSPHATE", "medium of the phosphate reactor"}, {"ALKALINITY", "medium of the phosphate reactor"},
    CNP("stomachs of the fish"),
    CNP("guts of the fish"),
    {"ORGANIC_CARBON", "reserves of the fish"},
    CNP("fish"),
    CNP("dead animals"),
    {"ORGANIC_CARBON", "reserves of the corals"},
    CNP("new tissue of the corals"),
    {"ORGANIC_CARBON", "reserves of the turf"},
    CNP("free algae"),
    CNP("algae in the refugium"),
    {"ORGANIC_CARBON", "dosed carbon"},
    CNP("bacteria on dosed carbon"),
    CNP("held by the filter sock"),
    LIME("skeletons"),
    LIME("scale"),
};

int state_named(const char *stock, const char *body) {
    for (int i = 0; i < STATES; i++) {
        if (strcmp(state_names[i].stock, stock) == 0 && strcmp(state_names[i].body, body) == 0) {
            return i;
        }
    }
    return -1;
}

/* ---- clocks ---- */

static double since(double time, double start) {
    const double s = fmod(time - start, DAY);
    return s < 0 ? s + DAY : s;
}

static double share_of(const lamp *l, double time) {
    if (l->ramp <= 0) {
        return l->share;
    }
    const double s = since(time, l->starts);
    if (s >= l->daily) {
        return 0;
    }
    const double ramp = fmin(l->ramp, l->daily / 2);
    const double nearer = fmin(s, l->daily - s);
    return nearer >= ramp ? 1 : nearer / ramp;
}

/* ---- what the plan says ---- */

static const char *const names[WATERS] = {"display", "sump", "refugium"};

static lamp lamp_over(const plan *p, const char *water) {
    const size_t m = plan_mechanism(p, "LampHeat", "water", water);
    const double strength = plan_of(p, m, "lamp.strength");
    const lamp l = {
        .starts = plan_of(p, m, "lamp.starts"), .daily = plan_of(p, m, "lamp.daily"),
        .ramp = plan_of(p, m, "lamp.ramp"), .full = strength * plan_of(p, m, "lamp.full"),
        .power = strength * plan_of(p, m, "power"), .to_water = plan_of(p, m, "toWater"),
    };
    return l;
}

static shares shares_of(const plan *p, size_t m, const char *element) {
    static const char *const what[4] = {"retained", "excreted", "faeces", "uneaten"};
    double value[4];
    for (int i = 0; i < 4; i++) {
        char path[64] = "diet.";
        strcat(strcat(strcat(path, element), "."), what[i]);
        value[i] = plan_of(p, m, path);
    }
    const double eaten = 1 - value[3];
    const shares s = {value[0] / eaten, value[1] / eaten, value[2] / eaten};
    return s;
}

/* Mean of what light lets go at 288 moments of a day of the lamp */
static double lit_day(const lamp *l, double saturation) {
    double sum = 0;
    for (int i = 0; i < 288; i++) {
        sum += tanh(l->full * share_of(l, DAY * (i + 0.5) / 288) / saturation);
    }
    return sum / 288;
}

static community community_of(const plan *p, const char *reserve, const lamp *l) {
    const size_t m = plan_mechanism(p, "LitCommunity", "places.reserve", reserve);
    const double saturation = plan_of(p, m, "rates.saturation");
    const community c = {
        plan_of(p, m, "extent") * plan_of(p, m, "rates.breathing"), plan_of(p, m, "rates.ratio"), saturation,
        plan_of(p, m, "rates.shedding"), plan_of(p, m, "rates.scarce"),
        plan_has(p, m, "growth.share") ? plan_of(p, m, "growth.share") : 0, lit_day(l, saturation),
    };
    return c;
}

static stream stream_of(const plan *p, size_t m) {
    stream s = {.power = plan_of(p, m, "power"), .speed = plan_of(p, m, "programme.factor")};
    static const char *const what[4] = {"from", "lasts", "speed", "running"};
    for (; s.count < PARTS; s.count++) {
        double value[4];
        for (int i = 0; i < 4; i++) {
            char path[64];
            snprintf(path, sizeof path, "programme.parts.%d.%s", s.count, what[i]);
            if (!plan_has(p, m, path)) {
                return s;
            }
            value[i] = plan_of(p, m, path);
        }
        const part each = {value[0], value[1], value[2], value[3]};
        s.parts[s.count] = each;
    }
    return s;
}

/* ASCE/EWRI 2-06: oxygen into clean water at 20 degC over its saturation, alpha 0.95 */
static bubbles bubbles_in(const plan *p, const char *water) {
    const size_t m = plan_mechanism(p, "BubbleGases", "water", water);
    const double air = plan_of(p, m, "airFlow");
    const double share = fmin(1, plan_of(p, m, "efficiency") * plan_of(p, m, "depth"));
    const bubbles b = {
        .standard = 0.95 * air * 0.279 * share / 9.09e-3, .air = air, .passes = plan_of(p, m, "waterFlow"),
    };
    return b;
}

static skeleton skeleton_of(const plan *p, size_t m, double magnesium) {
    const skeleton s = {
        plan_of(p, m, "rate"), plan_of(p, m, "exponent"), plan_of(p, m, "lightRatio"), plan_of(p, m, "extent"), magnesium,
    };
    return s;
}

/* Constants of Helder and De Vries 1983 and from memory; C5H7O2N of 113.115 g/mol; the usual values */
static nitrifier nitrifier_of(const plan *p, const char *step) {
    const size_t m = plan_mechanism(p, "Nitrification", "step", step);
    const int first = strcmp(step, "AMMONIA") == 0;
    const double per_mass = 1e-3 / NITROGEN_MASS;
    const double oxygen_per_mass = 1e-3 / 31.9988e-3;
    const double yield = (first ? 0.12 : 0.05) * NITROGEN_MASS / 113.115e-3;
    const nitrifier n = {
        .growth = (first ? 0.5 : 0.38) / DAY, .decay = 0.03 / DAY,
        .half = (first ? 0.10 : 0.15) * per_mass, .oxygen_half = (first ? 0.5 : 0.9) * oxygen_per_mass,
        .inhibition = 0.5 * per_mass, .yield = yield,
        .oxygen = first ? 1.5 - 5 * yield : 0.5 - 6.5 * yield,
        .factor = plan_of(p, m, "growth"), .affinity = plan_of(p, m, "affinity"),
        .most = plan_of(p, m, "greatestCapacity"), .per_kelvin = plan_of(p, m, "perKelvin"),
    };
    return n;
}

static void vessels(const plan *p, room *r) {
    for (int w = 0; w < WATERS; w++) {
        vessel *v = &r->of[w];
        v->solids = plan_number(p, "body", names[w]);
        const plan_line *shape = plan_find(p, "shape", names[w], NULL);
        v->floor = plan_value(shape->part[2]);
        v->rocks = plan_value(shape->part[3]);
        v->rocks_top = plan_value(shape->part[4]);
        size_t m = plan_mechanism(p, "WallLoss", "water", names[w]);
        v->pane = plan_of(p, m, "pane.atOneKelvin");
        v->pane_exponent = plan_of(p, m, "pane.exponent");
        v->pane_per_kelvin = plan_of(p, m, "pane.perKelvin");
        v->around = plan_of(p, m, "around");
        v->rim = plan_of(p, m, "rim");
        v->bottom = plan_of(p, m, "bottom");
        v->wall = plan_of(p, m, "factor");
        m = plan_mechanism(p, "OpenSurface", "water", names[w]);
        v->area = plan_of(p, m, "area");
        v->still_activity = plan_of(p, m, "still");
        v->moved_activity = plan_of(p, m, "moved");
        m = plan_mechanism(p, "SurfaceGases", "water", names[w]);
        v->still = plan_of(p, m, "still");
        v->moved = plan_of(p, m, "stirred");
        v->usual_schmidt = plan_of(p, m, "usualSchmidt");
        m = plan_mechanism(p, "Decay", "matter", names[w]);
        v->rot = plan_of(p, m, "rate");
        v->phosphorus_rot = plan_of(p, m, "phosphorusFactor");
        v->settle = plan_of(p, plan_mechanism(p, "Settling", "water", names[w]), "rate");
        for (m = plan_next_mechanism(p, "DeviceHeat", "water", names[w], 0); m;
             m = plan_next_mechanism(p, "DeviceHeat", "water", names[w], m)) {
            v->pumps += plan_of(p, m, "share") * plan_of(p, m, "power"); /* all or nothing */
            r->air_pump += (1 - plan_of(p, m, "share")) * plan_of(p, m, "power");
        }
    }
    static const int upper[2] = {DISPLAY, REFUGIUM};
    for (int i = 0; i < 2; i++) {
        const size_t m = plan_mechanism(p, "Circulation", "upper", names[upper[i]]);
        const loop l = {
            plan_of(p, m, "flow"), plan_of(p, m, "held"), plan_of(p, m, "slope"), plan_of(p, m, "least"), upper[i], SUMP,
        };
        r->loops[i] = l;
    }
}

static void surroundings(const plan *p, room *r) {
    r->room_solids = plan_number(p, "body", "room");
    size_t m = plan_mechanism(p, "RoomEnvelope", "room", "room");
    r->outdoors = plan_of(p, m, "weather");
    r->envelope = plan_of(p, m, "conductance");
    m = plan_mechanism(p, "HouseHeating", "room", "room");
    r->house = plan_of(p, m, "running") * plan_of(p, m, "strength");
    r->house_most = plan_of(p, m, "running") * plan_of(p, m, "most");
    r->house_temperature = plan_of(p, m, "temperature");
    m = plan_mechanism(p, "Ventilation", "room.room", "room");
    r->air_volume = plan_of(p, m, "room.volume");
    r->changes = plan_of(p, m, "changes");
    r->vapour_outdoors = plan_of(p, m, "vapourOutdoors");
    r->carbon_outdoors = plan_of(p, m, "carbonDioxideOutdoors");
    m = plan_mechanism(p, "Battery", "store", "battery");
    r->mains = plan_of(p, m, "mains.on") > 0;
    r->battery_on = plan_of(p, m, "on") > 0;
    r->idle = plan_of(p, m, "idle");
    r->capacity = plan_of(p, m, "capacity");
    r->full = r->capacity * plan_of(p, m, "usable");
    r->passes = plan_number(p, "parameter", "share the inverter passes on");
    m = plan_mechanism(p, "People", "air", "air of the room");
    r->breath = plan_of(p, m, "carbonDioxide");
    r->moisture = plan_of(p, m, "vapour");
}

static void devices(const plan *p, room *r) {
    r->display_lamp = lamp_over(p, "display");
    r->refugium_lamp = lamp_over(p, "refugium");
    size_t m = 0;
    for (int i = 0; i < 3; i++) {
        m = plan_next_mechanism(p, "HeldHeater", "water", "sump", m);
        r->heater_power[i] = plan_of(p, m, "power");
        r->heater_band[i] = plan_of(p, m, "band");
        r->heater_top[i] = plan_of(p, m, "setpoint") + r->heater_band[i] / 2;
    }
    m = 0;
    for (int i = 0; i < 2; i++) {
        m = plan_next_mechanism(p, "StreamPump", "water", "display", m);
        r->streams[i] = stream_of(p, m);
    }
    r->stone = bubbles_in(p, "display");
    r->column = bubbles_in(p, "sump");
    m = plan_mechanism(p, "BubbleGases", "water", "display");
    r->stone_stirs = 1023 * GRAVITY * r->stone.air * plan_of(p, m, "depth");
    /* The nozzles are not told, only what their jets spend. */
    r->return_stirs = plan_of(p, plan_mechanism(p, "SurfaceGases", "water", "sump"), "stirring.stirrers.0.full");
    r->of[DISPLAY].all_stirring =
        0.25 * (r->streams[0].power + r->streams[1].power) + r->stone_stirs + r->return_stirs;
    r->of[SUMP].all_stirring = r->return_stirs;
    r->of[REFUGIUM].all_stirring = r->return_stirs;
    m = plan_mechanism(p, "FallGases", "water", "display");
    r->fall_flow = plan_of(p, m, "flow");
    r->fall_height = plan_of(p, m, "height");
    r->fall_form = plan_of(p, m, "form");
    m = plan_mechanism(p, "TopOffFloat", "watched", "sump");
    r->top_full = plan_of(p, m, "full");
    r->top_flow = plan_of(p, m, "flow");
    r->top_play = fmax(plan_of(p, m, "play"), 1800 * r->top_flow);
    m = plan_mechanism(p, "SteadyDose", "pouring.into", "sump");
    r->lime_from = plan_of(p, m, "from");
    r->lime_lasts = plan_of(p, m, "lasts");
    r->lime_flow = plan_of(p, m, "mean") * DAY / r->lime_lasts;
    r->lime_heat = plan_of(p, m, "pouring.HEAT");
    r->lime_alk = plan_of(p, m, "pouring.ALKALINITY");
    r->lime_ca = plan_of(p, m, "pouring.CALCIUM");
    m = plan_mechanism(p, "Skimmer", "water", "sump");
    const double strength = plan_of(p, m, "strength");
    const double volume = plan_of(p, m, "systemVolume");
    const double by_flow =
        strength * plan_of(p, m, "flow") * plan_of(p, m, "singlePass") * plan_of(p, m, "skimmable") / volume;
    const double by_matter = strength * plan_of(p, m, "most");
    r->skimmed = by_flow * by_matter / (by_flow + by_matter) * volume;
    r->skimmate = strength * plan_of(p, m, "skimmate");
    m = plan_mechanism(p, "Strainer", "water", "sump");
    /* What it can catch beside the rot of 0.2 a day that it competes with, and a pass of the particles */
    const double particles = plan_of(p, m, "wasteCaught");
    const double past = volume / (plan_of(p, m, "flow") * fmin(1, plan_of(p, m, "heldBack")) * particles);
    r->strained = plan_of(p, m, "strength") * volume / (past + DAY / 0.2 * (1 - particles) / particles);
    m = plan_mechanism(p, "PhosphateMedium", "water", "sump");
    r->medium_mass = plan_of(p, m, "mass");
    r->medium_flow = plan_of(p, m, "flow") * plan_of(p, m, "singlePass");
    r->medium_usable = plan_of(p, m, "usable");
}

static void life(const plan *p, room *r) {
    r->ammonia = nitrifier_of(p, "AMMONIA");
    r->nitrite = nitrifier_of(p, "NITRITE");
    size_t m = plan_mechanism(p, "Decay", "matter", "waste on the ground");
    r->ground_rot = plan_of(p, m, "rate");
    r->ground_phosphorus = plan_of(p, m, "phosphorusFactor");
    m = plan_mechanism(p, "Decay", "matter", "held by the filter sock");
    r->sock_rot = plan_of(p, m, "rate");
    r->sock_phosphorus = plan_of(p, m, "phosphorusFactor");
    m = plan_mechanism(p, "CarbonFedBacteria", "water", "display");
    r->eaters_growth = plan_of(p, m, "growth");
    r->eaters_death = plan_of(p, m, "loss");
    r->system_volume = plan_of(p, m, "systemVolume");
    m = plan_mechanism(p, "Denitrification", "water", "display");
    r->denitrified = plan_of(p, m, "full");
    r->nitrate_half = plan_of(p, m, "halfSaturation");
    m = plan_mechanism(p, "RockPhosphate", "water", "display");
    r->rock_ratio = plan_of(p, m, "ratio");
    r->rock_exchange = plan_of(p, m, "exchange");
    m = plan_mechanism(p, "Fish", "places.water", "display");
    r->carbon = shares_of(p, m, "carbon");
    r->nitrogen = shares_of(p, m, "nitrogen");
    r->phosphorus = shares_of(p, m, "phosphorus");
    /* Sums over single fish of the plan */
    r->fish_mass = plan_of(p, m, "shoal.mass");
    r->uneaten = plan_of(p, m, "diet.carbon.uneaten");
    r->resting = plan_of(p, m, "activity") * plan_of(p, m, "shoal.resting");
    r->fasting = plan_of(p, m, "shoal.fasting");
    r->stage = plan_of(p, m, "stage");
    r->ammonia_share = plan_of(p, m, "ammoniaShare");
    r->labile = plan_of(p, m, "labileShare");
    r->lethal = plan_of(p, plan_mechanism(p, "Starvation", "flesh", "fish"), "lethal");
    r->carrion_half = plan_of(p, plan_mechanism(p, "CarrionDecay", "carrion", "dead animals"), "halfTime");
    r->corals = community_of(p, "reserves of the corals", &r->display_lamp);
    r->turf = community_of(p, "reserves of the turf", &r->display_lamp);
    m = plan_mechanism(p, "Macroalgae", "water", "refugium");
    r->bed_growth = plan_of(p, m, "growth") / 0.5; /* while lit, measured over days of twelve hours */
    r->bed_loss = plan_of(p, m, "loss");
    r->bed_saturation = plan_of(p, m, "lightSaturation");
    r->bed_greatest = plan_of(p, m, "greatest") * plan_of(p, m, "litArea");
    m = plan_mechanism(p, "FreeAlgae", "water", "display");
    r->free_growth = plan_of(p, m, "growth");
    r->free_death = plan_of(p, m, "death");
    r->free_clearance = plan_of(p, m, "grazers") * plan_of(p, m, "clearance");
    r->depth = plan_of(p, m, "depth");
    r->attenuation = plan_of(p, m, "attenuation");
    m = plan_mechanism(p, "SkeletonGrowth", "water", "display");
    r->coral_lime = skeleton_of(p, m, 0.005);
    m = plan_next_mechanism(p, "SkeletonGrowth", "water", "display", m);
    r->coralline_lime = skeleton_of(p, m, 0.15);
    m = plan_mechanism(p, "Scaling", "water", "display");
    r->bare = plan_of(p, m, "bare");
    r->fine = plan_of(p, m, "fine");
}

room *room_of(const plan *p) {
    room *r = calloc(1, sizeof *r);
    r->density = plan_number(p, "number", "density");
    r->heat_per_volume = r->density * plan_number(p, "number", "specificHeat");
    r->people = plan_number(p, "setting", "people in the room");
    vessels(p, r);
    surroundings(p, r);
    devices(p, r);
    life(p, r);
    room_forget(r);
    return r;
}

void room_forget(room *r) {
    for (int w = 0; w < WATERS; w++) {
        r->ln_h[w] = -8.1 * 2.302585092994045684;
    }
}

/* ---- what holds for a while ---- */

/* Affinity laws: power by the cube of the speed */
static double share_of_power(const stream *s, double time) {
    for (int i = 0; i < s->count; i++) {
        if (since(time, s->parts[i].from) < s->parts[i].lasts) {
            const double speed = fmin(1, s->speed * s->parts[i].speed);
            return speed * speed * speed * s->parts[i].running;
        }
    }
    const double speed = fmin(1, s->speed);
    return speed * speed * speed;
}

void room_at(room *r, double from, double to) {
    const double middle = (from + to) / 2;
    r->liming = r->mains && since(middle, r->lime_from) < r->lime_lasts;
    r->refugium_lamp.share = since(middle, r->refugium_lamp.starts) < r->refugium_lamp.daily;
    r->display_lamp.share = since(middle, r->display_lamp.starts) < r->display_lamp.daily;
    r->stone_runs = r->mains || r->battery_on;
    double streams = 0;
    for (int i = 0; i < 2; i++) {
        r->streams[i].share = r->mains ? share_of_power(&r->streams[i], middle) : 0;
        streams += 0.25 * r->streams[i].power * r->streams[i].share;
    }
    const double jets = r->mains ? r->return_stirs : 0;
    r->of[DISPLAY].stirring = streams + jets + (r->stone_runs ? r->stone_stirs : 0);
    r->of[SUMP].stirring = jets;
    r->of[REFUGIUM].stirring = jets;
}

/* Stomachs hold 3 % of live mass in dry food, 0.45 of that carbon. */
double room_eats(const room *r, const double *y, double carbon) {
    const double live = y[FISH_N] / FISH_NITROGEN;
    const double left = 0.03 * 0.45 / CARBON_MASS * live - y[STOMACH_C];
    return fmin(1 - r->uneaten, fmax(0, left) / carbon);
}

void room_thermostat(room *r, double temperature) {
    r->house_temperature = temperature;
}

void room_mains(room *r, int on) {
    r->mains = on;
}

int room_has_mains(const room *r) {
    return r->mains;
}

void room_people(room *r, double count) {
    r->people = count;
}

/* From the battery while it stands in for the mains */
static double battery_load(const room *r) {
    return r->idle + r->air_pump / r->passes;
}

/* In five hours of its nominal capacity, less and less over the last fifth */
static double charging(const room *r, const double *y) {
    const double missing = r->full - y[BATTERY];
    return missing <= 0 ? 0 : r->capacity / (5 * 3600) * fmin(1, missing / (0.2 * r->full));
}

double room_battery_turns(const room *r, const double *y) {
    if (r->mains) {
        return r->battery_on ? HUGE_VAL : (0.1 * r->full - y[BATTERY]) / charging(r, y);
    }
    return r->battery_on ? y[BATTERY] / battery_load(r) : HUGE_VAL;
}

void room_battery_turn(room *r) {
    r->battery_on = !r->battery_on;
}

/* ---- a water as it is now ---- */

typedef struct {
    double volume, temperature, salinity;
    double warmth;   /* 2^((T - 25)/10) */
    double c[OF_WATER]; /* per volume, never below none */
    double oxygen_rest;
    double h, k1, k2; /* mol/kg */
    double co2, co2_per_atm; /* mol/m3, mol/(m3 atm) */
    double aragonite, free_ammonia;
} water;

double room_temperature(const room *r, const double *y, int w) {
    return y[IN(w, HEAT)] / (r->heat_per_volume * y[IN(w, WATER)] + r->of[w].solids);
}

double room_salinity(const room *r, const double *y, int w) {
    return practical_salinity_of(y[IN(w, SALT)] / y[IN(w, WATER)] / r->density);
}

static double h_of(room *r, const water *a, int w, co2_constants *k) {
    co2_constants_of_water(a->salinity, a->temperature, k);
    const double per_mass = 1 / r->density;
    double ln_h = r->ln_h[w];
    if (co2_hydrogen_near(fmax(1e-9, a->c[ALK] * per_mass), fmax(1e-9, a->c[DIC] * per_mass), a->c[PO4] * per_mass,
                          a->c[NH] * per_mass, k, &ln_h)) {
        r->ln_h[w] = ln_h;
    }
    return exp(ln_h);
}

static void amounts(const room *r, const double *y, int w, water *a) {
    const double *of = y + IN(w, 0);
    a->volume = of[WATER];
    const double per_volume = 1 / of[WATER];
    for (int i = OXYGEN; i < OF_WATER; i++) {
        a->c[i] = fmax(0, of[i] * per_volume);
    }
    a->temperature = room_temperature(r, y, w);
    a->salinity = practical_salinity_of(of[SALT] * per_volume / r->density);
}

static void look(room *r, const double *y, int w, water *a) {
    amounts(r, y, w, a);
    a->warmth = exp2((a->temperature - 25) / 10);
    a->oxygen_rest = oxygen_at_rest(a->temperature, a->salinity);
    co2_constants k;
    const double h = h_of(r, a, w, &k);
    const double dic = fmax(1e-9, a->c[DIC] / r->density);
    const double carbon = 1 / (h * h + k.k1 * h + k.k1 * k.k2);
    a->h = h;
    a->k1 = k.k1;
    a->k2 = k.k2;
    a->co2 = dic * h * h * carbon * r->density;
    a->co2_per_atm = k.fugacity_factor * k.k0 * r->density;
    a->aragonite = a->c[CA] / r->density * dic * k.k1 * k.k2 * carbon / k.ksp_aragonite;
    a->free_ammonia = k.knh4 / (k.knh4 + h);
}

double room_ph(room *r, const double *y, int w) {
    water a;
    amounts(r, y, w, &a);
    co2_constants k;
    return -log10(h_of(r, &a, w, &k));
}

static double air_pressure(const room *r, const double *y, double amount) {
    return amount * GAS * (y[ROOM_HEAT] / r->room_solids + 273.15) / r->air_volume;
}

double room_air_carbon_dioxide(const room *r, const double *y) {
    return air_pressure(r, y, fmax(0, y[AIR_CARBON])) / ATMOSPHERE;
}

/* ---- what changes a water with its charge ---- */

static void gain_ammonia(double *d, int w, double rate) {
    d[IN(w, NH)] += rate;
    d[IN(w, ALK)] += rate;
}

static void gain_anion(double *d, int w, int what, double rate) {
    d[IN(w, what)] += rate;
    d[IN(w, ALK)] -= rate;
}

static void breathe(double *d, int w, double carbon, double oxygen) {
    d[IN(w, DIC)] += carbon;
    d[IN(w, OXYGEN)] -= oxygen;
}

/* ---- water ---- */

/* Water that goes from one place to another carries what is dissolved in it, and its heat. */
static void carry(const room *r, const double *y, double *d, int from, int to, double rate, double temperature) {
    const double turnover = rate / y[IN(from, WATER)];
    for (int i = SALT; i < OF_WATER; i++) {
        if (i != HEAT) {
            const double moved = turnover * y[IN(from, i)];
            d[IN(from, i)] -= moved;
            d[IN(to, i)] += moved;
        }
    }
    const double heat = rate * r->heat_per_volume * temperature;
    d[IN(from, HEAT)] -= heat;
    d[IN(to, HEAT)] += heat;
    d[IN(from, WATER)] -= rate;
    d[IN(to, WATER)] += rate;
}

void room_circulation(room *r, const double *y, double *d) {
    memset(d, 0, STATES * sizeof *d);
    for (int i = 0; i < 2; i++) {
        const loop *l = &r->loops[i];
        const double drawn = clamp01((y[IN(l->lower, WATER)] - l->least) / 1e-3);
        const double lifted = r->mains ? l->flow * drawn : 0;
        const double falling = fmax(0, lifted + l->slope * (y[IN(l->upper, WATER)] - l->held));
        carry(r, y, d, l->lower, l->upper, lifted, room_temperature(r, y, l->lower));
        carry(r, y, d, l->upper, l->lower, falling, room_temperature(r, y, l->upper));
    }
}

void room_drain(const room *r, double *y, int w, double volume) {
    const double share = volume / y[IN(w, WATER)];
    const double heat = volume * r->heat_per_volume * room_temperature(r, y, w);
    for (int i = SALT; i < OF_WATER; i++) {
        y[IN(w, i)] -= i == HEAT ? heat : share * y[IN(w, i)];
    }
    y[IN(w, WATER)] -= volume;
}

static void top_off(const room *r, const double *y, double *d, const water *sump) {
    const double volume = y[RESERVOIR_WATER];
    const double left = clamp01(volume / 0.2e-3);
    const double flow = left * clamp01((r->top_full - sump->volume) / r->top_play) * r->top_flow;
    if (r->mains && flow > 0) {
        const double share = flow / volume;
        const int of_reservoir[4] = {RESERVOIR_WATER, RESERVOIR_HEAT, RESERVOIR_ALK, RESERVOIR_CA};
        const int of_sump[4] = {WATER, HEAT, ALK, CA};
        for (int i = 0; i < 4; i++) {
            const double moved = share * y[of_reservoir[i]];
            d[of_reservoir[i]] -= moved;
            d[IN(SUMP, of_sump[i])] += moved;
        }
    }
}

static void limewater(const room *r, double *d) {
    if (r->liming) {
        d[IN(SUMP, WATER)] += r->lime_flow;
        d[IN(SUMP, HEAT)] += r->lime_flow * r->lime_heat;
        d[IN(SUMP, ALK)] += r->lime_flow * r->lime_alk;
        d[IN(SUMP, CA)] += r->lime_flow * r->lime_ca;
    }
}

/* Foam takes in series what passes the column and what turns into what foam can take, and a little water with all in it. */
static void skim(const room *r, const double *y, double *d, const water *sump) {
    if (!r->mains) {
        return;
    }
    const double share = r->skimmate / sump->volume;
    for (int i = SALT; i < OF_WATER; i++) {
        d[IN(SUMP, i)] -=
            i == HEAT ? r->skimmate * r->heat_per_volume * sump->temperature : share * y[IN(SUMP, i)];
    }
    d[IN(SUMP, WATER)] -= r->skimmate;
    for (int i = OC; i <= OP; i++) {
        d[IN(SUMP, i)] -= r->skimmed * sump->c[i];
    }
}

/* The return pump sends the water through a sock. */
static void strain(const room *r, double *d, const water *sump) {
    for (int i = 0; r->mains && i < 3; i++) {
        d[IN(SUMP, OC + i)] -= r->strained * sump->c[OC + i];
        d[SOCK_C + i] += r->strained * sump->c[OC + i];
    }
}

/* ---- heat and gases of a water ---- */

/* Height of the surface; what lies in the water displaces it evenly up to a height */
static double level(const vessel *v, double volume) {
    const double among = v->floor * v->rocks_top - v->rocks;
    return v->rocks != 0 && volume < among ? volume * v->rocks_top / among : (volume + v->rocks) / v->floor;
}

/* Carrier's equation, ASHRAE Handbook, HVAC Applications, natatoriums, in still air; Bowen 1926, Phys. Rev. 27, 779-787 */
static void surface_heat(const room *r, double *d, const water *a, int w, double room_temperature, double vapour) {
    const vessel *v = &r->of[w];
    const double difference = a->temperature - room_temperature;
    const double at_water = vapour_pressure(a->temperature, fmin(115, a->salinity));
    const double latent = latent_heat(a->temperature);
    const double drive = at_water - vapour;
    const double per_pascal = (v->stirring > 0 ? v->moved_activity : v->still_activity) * 0.089;
    const double convection = drive <= 0 ? 2 * difference : per_pascal * 65 * difference;
    const double radiation = radiation_film(0.95, a->temperature, room_temperature) * difference;
    const double wet = clamp01(fmin(a->volume / 1e-3, (115 - a->salinity) / (115 - 90)));
    const double evaporated = wet * v->area * per_pascal * drive / latent;
    const double liquid = evaporated / FRESH_DENSITY;
    d[IN(w, HEAT)] -= evaporated * latent + liquid * r->heat_per_volume * a->temperature;
    d[IN(w, WATER)] -= liquid;
    d[AIR_WATER] += liquid;
    const double dry = v->area * (convection + radiation);

    /* Panes: a power of the difference fitted to the films of Churchill and Chu 1975 and radiation */
    const double transmittance = v->pane * pow(fmax(0.5, fabs(difference)), v->pane_exponent)
        * (1 + v->pane_per_kelvin * ((a->temperature + room_temperature) / 2 - 22.5));
    const double wetted = v->around * fmin(v->rim, level(v, a->volume));
    const double through = v->wall * (wetted * transmittance + v->bottom) * difference;
    d[IN(w, HEAT)] -= dry + through;
    d[ROOM_HEAT] += dry + through;
}

/* Oxygen and carbon dioxide by a flow of water brought to rest with the air. */
static void exchange(double *d, const water *a, int w, double of_oxygen, double of_carbon, double pressure) {
    d[IN(w, OXYGEN)] += of_oxygen * (a->oxygen_rest - a->c[OXYGEN]);
    const double carbon = of_carbon * (a->co2_per_atm * pressure - a->co2);
    d[IN(w, DIC)] += carbon;
    d[AIR_CARBON] -= carbon;
}

/* Hoover and Berkshire 1969, J. Geophys. Res. 74, 456-464; hydration by Johnson 1982, Limnol. Oceanogr. 27, 849-855, and
   Schulz et al. 2006, Mar. Chem. 100, 53-65; diffusion by Jaehne, Heinz and Dietrich 1987, J. Geophys. Res. 92, 10767-10776 */
static double help_of_chemistry(const water *a, double velocity) {
    const double kelvin = a->temperature + 273.15;
    const double s = a->salinity;
    const double with_water = exp(1246.98 - 6.19e4 / kelvin - 183.0 * log(kelvin));
    const double with_hydroxide =
        499002.24 * exp(4.2986e-4 * s * s + 5.75499e-5 * s - 90166.83 / (8.31451 * kelvin)) / a->h;
    const double diffusion = 5019e-9 * exp(-19.51e3 / (GAS * kelvin));
    const double tau = 1 + a->h * a->h / (a->k1 * a->k2 + a->k1 * a->h);
    const double qz = sqrt((with_water + with_hydroxide) * tau / diffusion) * diffusion / velocity;
    return tau / (tau - 1 + tanh(qz) / qz);
}

/* Stirred surface, exponent 1/2, still 2/3: Jaehne et al. 1987, J. Geophys. Res. 92, 1937-1949; renewal by the fourth root
   of the power spent: Lamont and Scott 1970, AIChE J. 16, 513-519. Gives the ratio of the gases at a stirred one. */
static void surface_gases(const room *r, double *d, const water *a, int w, double pressure, double *schmidt_ratio) {
    const vessel *v = &r->of[w];
    const double of_oxygen = schmidt_of_oxygen(a->temperature);
    const double ratio = of_oxygen / schmidt_of_carbon_dioxide(a->temperature);
    *schmidt_ratio = sqrt(ratio);
    const double stirred = v->moved * pow(v->stirring / v->all_stirring, 0.25);
    if (stirred > v->still) {
        const double velocity = stirred * sqrt(v->usual_schmidt / of_oxygen);
        exchange(d, a, w, v->area * velocity, v->area * velocity * *schmidt_ratio, pressure);
    } else {
        const double velocity = v->still * pow(v->usual_schmidt / of_oxygen, 2.0 / 3);
        const double of_carbon = velocity * pow(ratio, 2.0 / 3);
        exchange(d, a, w, v->area * velocity, v->area * of_carbon * help_of_chemistry(a, of_carbon), pressure);
    }
}

/* Plug flow of the water too; all of it comes to rest with enough air */
static double passing(const bubbles *b, double exchanged) {
    return isinf(b->passes) ? exchanged : -b->passes * expm1(-exchanged / b->passes);
}

/* Carbon dioxide off bubbles in plug flow: Matter-Mueller, Gujer and Giger 1981, Water Res. 15, 1271-1279, eq. 8 */
static void bubble_gases(double *d, const water *a, int w, const bubbles *b, double schmidt_ratio, double pressure) {
    const double of_oxygen = b->standard * pow(1.024, a->temperature - 20);
    const double most = b->air * ATMOSPHERE / (GAS * (a->temperature + 273.15)) / a->co2_per_atm;
    const double of_carbon = -most * expm1(-of_oxygen * schmidt_ratio / most);
    exchange(d, a, w, passing(b, of_oxygen), passing(b, of_carbon), pressure);
}

/* Water Pollution Research Laboratory 1973, Notes on Water Pollution 61, after Gameson 1957; clean water, a = 1.8 */
static void fall_gases(const room *r, double *d, const water *a, double schmidt_ratio, double pressure) {
    const double h = r->fall_height;
    const double ratio = 1 + 0.38 * 1.8 * r->fall_form * h * (1 - 0.11 * h) * (1 + 0.046 * a->temperature);
    const double flow = r->fall_flow * (1 - 1 / ratio);
    exchange(d, a, DISPLAY, flow, schmidt_ratio * flow, pressure);
}

/* ---- the room ---- */

static void surroundings_of(const room *r, const double *y, double *d, double temperature, double vapour) {
    const double asked = r->house * (r->house_temperature - temperature);
    d[ROOM_HEAT] += r->envelope * (r->outdoors - temperature) + fmax(-r->house_most, fmin(r->house_most, asked));
    if (r->mains) {
        const double charged = charging(r, y);
        d[BATTERY] += charged;
        d[ROOM_HEAT] += charged / 0.9 - charged + r->air_pump;
    } else if (r->battery_on) {
        d[BATTERY] -= battery_load(r);
        d[ROOM_HEAT] += battery_load(r);
    }
    const double per_pascal = r->air_volume / (GAS * (temperature + 273.15));
    const double come = fmin(r->vapour_outdoors, vapour_pressure(fmax(-40, r->outdoors), 0));
    const double liquid = (come - vapour) * per_pascal * VAPOUR_MASS / FRESH_DENSITY;
    d[AIR_WATER] += r->changes * liquid + r->people * r->moisture;
    d[AIR_CARBON] += r->changes * (r->carbon_outdoors * per_pascal - y[AIR_CARBON]) + r->people * r->breath;
}

static void devices_of(const room *r, double *d, const water *sump, double display_share, double refugium_share) {
    if (!r->mains) {
        return;
    }
    for (int i = 0; i < 3; i++) {
        d[IN(SUMP, HEAT)] += r->heater_power[i] * clamp01((r->heater_top[i] - sump->temperature) / r->heater_band[i]);
    }
    for (int i = 0; i < 2; i++) {
        d[IN(DISPLAY, HEAT)] += r->streams[i].power * r->streams[i].share;
    }
    for (int w = 0; w < WATERS; w++) {
        d[IN(w, HEAT)] += r->of[w].pumps;
    }
    const double display = display_share * r->display_lamp.power;
    const double refugium = refugium_share * r->refugium_lamp.power;
    d[IN(DISPLAY, HEAT)] += display * r->display_lamp.to_water;
    d[IN(REFUGIUM, HEAT)] += refugium * r->refugium_lamp.to_water;
    d[ROOM_HEAT] += display * (1 - r->display_lamp.to_water) + refugium * (1 - r->refugium_lamp.to_water);
}

/* ---- bacteria and matter ---- */

/* Ammonia first: half of what is wanted is taken from it at 1 umol/L; the rest is nitrate as far as it is found. */
static double by_ammonia(const water *a) {
    return monod(a->c[NH], 1e-3);
}

static double by_nitrate(const water *a, double half) {
    return (1 - by_ammonia(a)) * monod(a->c[NO3], half);
}

/* Nitrogen that becomes part of what lives; nitrate is reduced first and leaves two of oxygen. */
static void build_in(double *d, int w, double ammonia, double nitrate) {
    gain_ammonia(d, w, -ammonia);
    gain_anion(d, w, NO3, -nitrate);
    d[IN(w, OXYGEN)] += 2 * nitrate;
}

/* First order, Q10 of 2, slower without oxygen, when nothing is burnt; 118/106 oxygen per carbon (Anderson 1995); what
   the cells lack they take from the water */
static void rot(double *d, const water *a, int w, const double *matter, double *change, double rate,
                double phosphorus_factor, double growing) {
    const double carbon = matter[0];
    if (!(carbon > 0)) {
        return;
    }
    const double aerobic = monod(a->c[OXYGEN], 0.010);
    const double full = rate * a->warmth;
    const double specific = full * (0.3 + 0.7 * aerobic);
    const double burnt = (1 - growing * CELL_YIELD) * full * aerobic * carbon;
    change[0] -= burnt;
    breathe(d, w, burnt, 118.0 / 106 * burnt);

    const double asked = growing * CELL_YIELD / CELL_CARBON * specific * carbon;
    const double nitrogen = specific * fmax(0, matter[1]) - asked;
    if (nitrogen >= 0) {
        change[1] -= nitrogen;
        gain_ammonia(d, w, nitrogen);
    } else {
        const double of_ammonia = -nitrogen * by_ammonia(a);
        const double of_nitrate = -nitrogen * by_nitrate(a, 1e-3);
        change[1] += of_ammonia + of_nitrate;
        build_in(d, w, of_ammonia, of_nitrate);
    }
    const double phosphorus = phosphorus_factor * specific * fmax(0, matter[2]) - CELL_PHOSPHORUS * asked;
    const double given = phosphorus >= 0 ? phosphorus : phosphorus * monod(a->c[PO4], 5e-5);
    change[2] -= given;
    gain_anion(d, w, PO4, given);
}

/* Monod growth on acetate, one oxygen a carbon; what dies is waste afloat. */
static void eaters(const room *r, const double *y, double *d, const water *a) {
    const double cells = fmax(0, y[EATERS_C]);
    if (cells <= 0) {
        return;
    }
    const double growth = r->eaters_growth * a->warmth * monod(y[DOSED_C] / r->system_volume, 0.05)
        * monod(a->c[NH] + a->c[NO3], 1e-3) * monod(a->c[PO4], 5e-5) * monod(a->c[OXYGEN], 0.010);
    const double wanted = growth * cells / CELL_CARBON; /* nitrogen */
    const double of_ammonia = wanted * by_ammonia(a);
    const double of_nitrate = wanted * by_nitrate(a, 1e-3);
    const double grown = (of_ammonia + of_nitrate) * CELL_CARBON;
    const double burnt = (1 - CELL_YIELD) / CELL_YIELD * grown;
    d[DOSED_C] -= grown + burnt;
    breathe(d, DISPLAY, burnt, burnt);
    build_in(d, DISPLAY, of_ammonia, of_nitrate);
    d[EATERS_C] += grown;
    d[EATERS_N] += grown / CELL_CARBON;
    d[EATERS_P] += grown / CELL_CARBON * CELL_PHOSPHORUS;
    gain_anion(d, DISPLAY, PO4, -grown / CELL_CARBON * CELL_PHOSPHORUS);
    for (int i = 0; i < 3; i++) {
        const double dead = r->eaters_death * a->warmth * y[EATERS_C + i];
        d[EATERS_C + i] -= dead;
        d[IN(DISPLAY, OC + i)] += dead;
    }
}

static void settle(const room *r, const double *y, double *d, int w) {
    for (int i = 0; i < 3; i++) {
        const double moved = r->of[w].settle * y[IN(w, OC + i)];
        d[IN(w, OC + i)] -= moved;
        d[GROUND_C + i] += moved;
    }
}

/* Monod growth with a logistic bound: Monod 1949, Verhulst 1838; inhibition after Anthonisen et al. 1976 */
static double nitrify(double *d, const nitrifier *n, double cells, double activity, double warmth, int n_place, int c_place) {
    const double capacity = n->growth * fmax(0, cells) / n->yield;
    const double share = warmth * n->factor * activity;
    const double oxidised = capacity * share;
    const double net = n->growth * share - n->decay;
    const double grown = net > 0 ? net * capacity * (1 - capacity / n->most) : net * capacity;
    const double dead = n->yield * oxidised - n->yield * grown / n->growth;
    d[n_place] += n->yield * oxidised - dead;
    d[c_place] += 5 * (n->yield * oxidised - dead);
    d[GROUND_N] += dead;
    d[GROUND_C] += 5 * dead;
    d[IN(DISPLAY, OXYGEN)] -= n->oxygen * oxidised;
    d[IN(DISPLAY, DIC)] -= 5 * n->yield * oxidised;
    return oxidised;
}

static void nitrification(const room *r, const double *y, double *d, const water *a) {
    const nitrifier *first = &r->ammonia;
    const nitrifier *second = &r->nitrite;
    const double degrees = fmin(32, fmax(15, a->temperature)) - 25;
    const double warmth = pow(first->per_kelvin, degrees);
    const double of_ammonia =
        monod(first->affinity * a->c[NH], first->half) * monod(a->c[OXYGEN], first->oxygen_half);
    const double free = a->c[NH] * a->free_ammonia;
    const double of_nitrite = monod(second->affinity * a->c[NO2], second->half)
        * monod(a->c[OXYGEN], second->oxygen_half) * second->inhibition / (second->inhibition + free);
    const double one = nitrify(d, first, y[AMMONIA_CELLS_N], of_ammonia, warmth, AMMONIA_CELLS_N, AMMONIA_CELLS_C);
    gain_ammonia(d, DISPLAY, -(1 + first->yield) * one);
    gain_anion(d, DISPLAY, NO2, one);
    const double two = nitrify(d, second, y[NITRITE_CELLS_N], of_nitrite, warmth, NITRITE_CELLS_N, NITRITE_CELLS_C);
    gain_anion(d, DISPLAY, NO2, -(1 + second->yield) * two);
    gain_anion(d, DISPLAY, NO3, two);
}

/* 5 CH2O + 4 NO3- + 4 H+ = 5 CO2 + 2 N2 + 7 H2O; full rate in water of 0.2 mol/m3 of oxygen */
static void denitrification(const room *r, const double *y, double *d, const water *a) {
    const double oxygen = (0.1 / (0.1 + a->c[OXYGEN])) / (0.1 / (0.1 + 0.2));
    const double rate = r->denitrified * monod(a->c[NO3], r->nitrate_half) * oxygen * a->warmth
        * monod(fmax(0, y[GROUND_C]), 1e-3);
    gain_anion(d, DISPLAY, NO3, -rate);
    if (y[GROUND_C] > 0) { /* what is burnt gives back what else it holds */
        const double share = 1.25 * rate / y[GROUND_C];
        d[GROUND_C] -= 1.25 * rate;
        d[IN(DISPLAY, DIC)] += 1.25 * rate;
        d[GROUND_N] -= share * y[GROUND_N];
        gain_ammonia(d, DISPLAY, share * y[GROUND_N]);
        d[GROUND_P] -= share * y[GROUND_P];
        gain_anion(d, DISPLAY, PO4, share * y[GROUND_P]);
    }
}

/* Golterman 1995, Hydrobiologia 315, 59, exponent 1/3; 10 mg/g at 0.3 mg/L; driving force of Glueckauf 1955 */
static void phosphate(const room *r, const double *y, double *d, const water *sump) {
    const double part = fmax(0, y[MEDIUM_P]) / r->medium_mass / (r->medium_usable * 10e-3 / PHOSPHORUS_MASS);
    const double rest = 0.3e-3 / PHOSPHORUS_MASS * part * part * part;
    const double taken = r->medium_flow * (sump->c[PO4] - rest);
    gain_anion(d, SUMP, PO4, -taken);
    d[MEDIUM_P] += taken;
    d[MEDIUM_ALK] -= taken;
    const double held = r->rock_exchange * (r->rock_ratio * y[IN(DISPLAY, PO4)] - y[ROCK_P]);
    gain_anion(d, DISPLAY, PO4, -held);
    d[ROCK_P] += held;
    d[ROCK_ALK] -= held;
}

/* ---- life ---- */

static double q10(double factor, const water *a) {
    return pow(factor, (a->temperature - 25) / 10);
}

/* Michaelis and Menten 1913; 1 in water of 0.2 mol/m3 */
static double of_aired(const water *a) {
    return monod(a->c[OXYGEN], 0.047) / monod(0.2, 0.047);
}

/* Fat over that of an ordinary fish; lean flesh has 3.8 carbon a nitrogen */
static double fat(const double *flesh) {
    const double lean = 3.8;
    const double x = (flesh[0] / flesh[1] - lean) / (FISH_CARBON / FISH_NITROGEN - lean);
    return fmin(10, fmax(0, x));
}

/* Flesh over that of an ordinary fish of the same bones, which hold half its phosphorus */
static double thinness(const double *flesh) {
    const double soft = 0.5 * FISH_PHOSPHORUS / FISH_NITROGEN * flesh[1];
    const double bones = flesh[2] - soft;
    return bones <= soft ? 1 : soft / bones;
}

/* Two equal stages of first order; shares of what leaves the second; breath off a reserve of a day, and off fat and flesh
   where that is too little: Q10 of Clarke and Johnston 1999, shares of what burns of Caloin 2004 */
static void fish(const room *r, const double *y, double *d, const water *a) {
    const double passing = r->stage * q10(1.7, a);
    double leaving[3];
    for (int i = 0; i < 3; i++) {
        const double swallowed = passing * y[STOMACH_C + i];
        leaving[i] = passing * y[GUT_C + i];
        d[STOMACH_C + i] -= swallowed;
        d[GUT_C + i] += swallowed - leaving[i];
    }
    const shares *of[3] = {&r->carbon, &r->nitrogen, &r->phosphorus};
    for (int i = 0; i < 3; i++) {
        const double dropped = leaving[i] * of[i]->faeces;
        d[IN(DISPLAY, OC + i)] += r->labile * dropped;
        d[GROUND_C + i] += (1 - r->labile) * dropped;
    }
    const double *flesh = y + FISH_C;
    if (flesh[1] <= 0) {
        return;
    }
    const double x = fat(flesh);
    const double bone_per_flesh = FISH_PHOSPHORUS / FISH_NITROGEN;
    const double kept_carbon = leaving[0] * r->carbon.retained * fmin(1, x);
    const double kept_nitrogen = leaving[1] * r->nitrogen.retained * fmin(1, x);
    const double of_use = kept_nitrogen * bone_per_flesh * (0.5 + 0.5 * clamp01(10 * (thinness(flesh) - 0.9)));
    const double kept_phosphorus = fmin(leaving[2] * r->phosphorus.retained, of_use);
    d[FISH_C] += kept_carbon;
    d[FISH_N] += kept_nitrogen;
    d[FISH_P] += kept_phosphorus;
    d[RESERVE_C] += leaving[0] * (r->carbon.excreted + r->carbon.retained) - kept_carbon;
    const double excreted = leaving[1] * (r->nitrogen.excreted + r->nitrogen.retained) - kept_nitrogen;
    gain_ammonia(d, DISPLAY, r->ammonia_share * excreted);
    d[IN(DISPLAY, ON)] += (1 - r->ammonia_share) * excreted;
    const double phosphate = leaving[2] * (r->phosphorus.excreted + r->phosphorus.retained) - kept_phosphorus;
    gain_anion(d, DISPLAY, PO4, phosphate);

    const double able = q10(2.4, a) * of_aired(a);
    const double given = fmax(0, y[RESERVE_C]) / DAY * able;
    const double rest = r->resting * flesh[1] / (r->fish_mass * FISH_NITROGEN) * able;
    const double laid_on = fmax(0, given - rest) * fmax(0, 1 - x);
    d[RESERVE_C] -= given;
    d[FISH_C] += laid_on;
    const double lack = fmax(0, rest - given);
    const double lean_share = fmin(1, 3.8 * r->fasting / r->resting);
    const double of_flesh = lack / (1 + (1 / lean_share - 1) * x) / 3.8;
    d[FISH_C] -= lack;
    d[FISH_N] -= of_flesh;
    gain_ammonia(d, DISPLAY, of_flesh);
    d[FISH_P] -= 0.5 * bone_per_flesh * of_flesh;
    gain_anion(d, DISPLAY, PO4, 0.5 * bone_per_flesh * of_flesh);
    breathe(d, DISPLAY, given - laid_on + lack, given - laid_on + lack);
}

/* Thinner and thinner they die; half-time of the dead after Chidami and Amyot 2008 */
static void dying(const room *r, const double *y, double *d, const water *a) {
    if (y[FISH_N] > 0) {
        const double hunger = pow((1 - thinness(y + FISH_C)) / (1 - r->lethal), 8);
        const double rate = 0.2 / DAY * hunger / (1 + hunger) * q10(2.4, a);
        for (int i = 0; i < 3; i++) {
            d[FISH_C + i] -= rate * y[FISH_C + i];
            d[STOMACH_C + i] -= rate * y[STOMACH_C + i];
            d[GUT_C + i] -= rate * y[GUT_C + i];
            d[DEAD_C + i] += rate * (y[FISH_C + i] + y[STOMACH_C + i] + y[GUT_C + i]);
        }
        d[RESERVE_C] -= rate * y[RESERVE_C];
        d[DEAD_C] += rate * y[RESERVE_C];
    }
    const double falling = log(2) / r->carrion_half * q10(3, a);
    for (int i = 0; i < 3; i++) {
        d[DEAD_C + i] -= falling * y[DEAD_C + i];
        d[IN(DISPLAY, OC + i)] += falling * y[DEAD_C + i];
    }
}

static double carbon_left(const water *a) {
    const double carbon = a->c[DIC] * a->c[DIC];
    return carbon / (carbon + 0.02 * 0.02);
}

/* Nitrogen that a plant finds of what it wants, with the phosphorus that belongs to it */
static double take_up(double *d, const water *a, int w, double wanted, double phosphorus) {
    const double of_ammonia = wanted * by_ammonia(a);
    const double of_nitrate = wanted * by_nitrate(a, 1e-4);
    build_in(d, w, of_ammonia, of_nitrate);
    gain_anion(d, w, PO4, -(of_ammonia + of_nitrate) * phosphorus);
    return of_ammonia + of_nitrate;
}

/* Production by Jassby and Platt 1976, Limnol. Oceanogr. 21, 540-547, so much that a day makes its share of a day's breath;
   26 degC, Q10 of 2; tissue of C:N 7 and N:P 20 */
static void lit(const community *of, const double *y, double *d, const water *a, double light, int place, int tissue) {
    const double breath = of->breathing * a->warmth * exp2(-0.1);
    const double reserve = fmax(0, y[place]);
    const double best = fmin(8, of->ratio / of->lit_day);
    const double made = breath * best * tanh(light / of->saturation) * carbon_left(a);
    const double burnt = breath * of_aired(a) * reserve / (reserve + of->scarce * of->breathing);
    const double surplus = of->shedding * reserve;
    d[place] += made - burnt - surplus;
    breathe(d, DISPLAY, burnt - made, burnt - made);
    d[IN(DISPLAY, OC)] += surplus;
    if (tissue >= 0) {
        const double wanted = surplus * of->tissue * monod(a->c[NH] + a->c[NO3], 1e-3) * monod(a->c[PO4], 1e-4);
        const double nitrogen = take_up(d, a, DISPLAY, wanted / 7, 1.0 / 20);
        d[IN(DISPLAY, OC)] -= 7 * nitrogen;
        d[tissue] += 7 * nitrogen;
        d[tissue + 1] += nitrogen;
        d[tissue + 2] += nitrogen / 20;
    }
}

/* Growth by a mole of nitrogen, as long as there is carbon and nitrogen */
static void grow(double *d, const water *a, int w, int plant, double plenty, double carbon, double phosphorus) {
    const double rate = take_up(d, a, w, plenty * carbon_left(a), phosphorus);
    breathe(d, w, -rate * carbon, -rate * carbon);
    d[plant] += rate * carbon;
    d[plant + 1] += rate;
    d[plant + 2] += rate * phosphorus;
}

static void die(double *d, int plant, double rate, double carbon, double phosphorus) {
    const double of[3] = {carbon, 1, phosphorus};
    for (int i = 0; i < 3; i++) {
        d[plant + i] -= rate * of[i];
        d[GROUND_C + i] += rate * of[i];
    }
}

/* Logistic growth (Verhulst 1838) of a mat on light, nitrogen and phosphorus; bell of Lehman, Botkin and Likens 1975 */
static void bed(const room *r, const double *y, double *d, const water *a, double light) {
    const double per_dry = 0.025 / NITROGEN_MASS;
    const double carbon = 0.30 / CARBON_MASS / per_dry;
    const double phosphorus = 0.0025 / PHOSPHORUS_MASS / per_dry;
    const double nitrogen = fmax(0, y[BED_N]);
    const double lost = nitrogen * r->bed_loss * a->warmth / 2;
    const double burnt = lost * of_aired(a);
    gain_ammonia(d, REFUGIUM, burnt);
    gain_anion(d, REFUGIUM, PO4, burnt * phosphorus);
    breathe(d, REFUGIUM, burnt * carbon, burnt * carbon);
    d[BED_C] -= burnt * carbon;
    d[BED_N] -= burnt;
    d[BED_P] -= burnt * phosphorus;
    die(d, BED_C, lost, carbon, phosphorus);
    if (light > 0) {
        const double off = (a->temperature - 25) / (a->temperature < 25 ? 9 : 6);
        const double allowed = exp(-off * off) * tanh(light / r->bed_saturation)
            * monod(a->c[NH] + a->c[NO3], 2e-3) * monod(a->c[PO4], 0.2e-3);
        const double room_left = fmax(0, 1 - nitrogen / per_dry / r->bed_greatest);
        grow(d, a, REFUGIUM, BED_C, r->bed_growth * allowed * nitrogen * room_left, carbon, phosphorus);
    }
}

/* Redfield cells under Lambert and Beer's mean light; warmth of Eppley 1972; grazers of Holling's second type */
static void free_algae(const room *r, const double *y, double *d, const water *a, double surface) {
    const double carbon = 106.0 / 16;
    const double phosphorus = 1.0 / 16;
    const double nitrogen = fmax(0, y[FREE_N]);
    if (nitrogen <= 0) {
        return;
    }
    const double density = nitrogen / a->volume;
    double specific = 0;
    if (surface > 0) {
        const double thickness = (r->attenuation + 15 * density) * r->depth;
        const double light = surface * -expm1(-thickness) / thickness;
        specific = r->free_growth * tanh(light / 100e-6) * monod(a->c[NH] + a->c[NO3], 1e-3)
            * monod(a->c[PO4], 0.1e-3) * pow(1.066, a->temperature - 25);
    }
    grow(d, a, DISPLAY, FREE_C, specific * nitrogen, carbon, phosphorus);
    const double exposed = fmax(0, 1 - 1e-4 / density);
    const double loss = density * (r->free_death + r->free_clearance * 5e-3 / (5e-3 + density));
    die(d, FREE_C, exposed * a->volume * loss, carbon, phosphorus);
}

/* ---- lime ---- */

static void lay_down(double *d, int w, int to, double rate, double magnesium) {
    const double amount[4] = {(1 - magnesium) * rate, magnesium * rate, rate, 2 * rate};
    static const int of_water[4] = {CA, MG, DIC, ALK};
    for (int i = 0; i < 4; i++) {
        d[IN(w, of_water[i])] -= amount[i];
        d[to + i] += amount[i];
    }
}

static void lime(const room *r, double *d, const water *all, double light) {
    const water *a = &all[DISPLAY];
    const double off = (a->temperature - 27) / 6;
    const double alkalinity = a->c[ALK] * a->c[ALK];
    const double common = exp(-off * off) * alkalinity / (alkalinity + 0.01);
    const double lit_share = tanh(light / 180e-6);
    const skeleton *both[2] = {&r->coral_lime, &r->coralline_lime};
    for (int i = 0; i < 2; i++) {
        const skeleton *s = both[i];
        const double more = s->ratio - 1;
        const double rate = s->extent * s->rate * skeleton_response(a->aragonite, s->exponent)
            * (1 + more * lit_share) / (1 + more * 0.4) * common;
        lay_down(d, DISPLAY, SKELETON_CA, rate, s->magnesium);
    }
    for (int w = 0; w < WATERS; w++) {
        const double per_volume = aragonite_growth(all[w].aragonite, all[w].temperature)
            * aragonite_surface(all[w].aragonite, r->bare, r->fine);
        lay_down(d, w, SCALE_CA, per_volume * all[w].volume, 0);
    }
}

/* ---- all of it ---- */

static void all_else(room *r, double time, const double *y, double *d) {
    const double display_share = r->mains ? share_of(&r->display_lamp, time) : 0;
    const double refugium_share = r->mains ? share_of(&r->refugium_lamp, time) : 0;
    const double light = display_share * r->display_lamp.full;
    const double temperature = y[ROOM_HEAT] / r->room_solids;
    const double pressure = room_air_carbon_dioxide(r, y);
    /* What the air cannot hold lies on the room's panes. */
    const double vapour = fmin(air_pressure(r, y, fmax(0, y[AIR_WATER]) * FRESH_DENSITY / VAPOUR_MASS),
                               vapour_pressure(temperature, 0));
    water all[WATERS];
    double schmidt_ratio[WATERS];
    for (int w = 0; w < WATERS; w++) {
        look(r, y, w, &all[w]);
        surface_heat(r, d, &all[w], w, temperature, vapour);
        surface_gases(r, d, &all[w], w, pressure, &schmidt_ratio[w]);
        rot(d, &all[w], w, y + IN(w, OC), d + IN(w, OC), r->of[w].rot, r->of[w].phosphorus_rot, 1);
        settle(r, y, d, w);
    }
    if (r->stone_runs) {
        bubble_gases(d, &all[DISPLAY], DISPLAY, &r->stone, schmidt_ratio[DISPLAY], pressure);
    }
    if (r->mains) {
        bubble_gases(d, &all[SUMP], SUMP, &r->column, schmidt_ratio[SUMP], pressure);
        fall_gases(r, d, &all[DISPLAY], schmidt_ratio[DISPLAY], pressure);
    }
    surroundings_of(r, y, d, temperature, vapour);
    devices_of(r, d, &all[SUMP], display_share, refugium_share);
    top_off(r, y, d, &all[SUMP]);
    limewater(r, d);
    skim(r, y, d, &all[SUMP]);
    strain(r, d, &all[SUMP]);
    rot(d, &all[SUMP], SUMP, y + SOCK_C, d + SOCK_C, r->sock_rot, r->sock_phosphorus, 1);
    rot(d, &all[DISPLAY], DISPLAY, y + GROUND_C, d + GROUND_C, r->ground_rot, r->ground_phosphorus, 0);
    eaters(r, y, d, &all[DISPLAY]);
    nitrification(r, y, d, &all[DISPLAY]);
    denitrification(r, y, d, &all[DISPLAY]);
    phosphate(r, y, d, &all[SUMP]);
    fish(r, y, d, &all[DISPLAY]);
    dying(r, y, d, &all[DISPLAY]);
    lit(&r->corals, y, d, &all[DISPLAY], light, CORALS_C, TISSUE_C);
    lit(&r->turf, y, d, &all[DISPLAY], light, TURF_C, -1);
    bed(r, y, d, &all[REFUGIUM], refugium_share * r->refugium_lamp.full);
    free_algae(r, y, d, &all[DISPLAY], light);
    lime(r, d, all, light);
}

void room_without_circulation(room *r, double time, const double *y, double *d) {
    memset(d, 0, STATES * sizeof *d);
    all_else(r, time, y, d);
}

void room_slopes(room *r, double time, const double *y, double *d) {
    room_circulation(r, y, d);
    all_else(r, time, y, d);
}
