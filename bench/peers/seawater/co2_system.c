/* Written from the publications named beside each formula. T in kelvin, S practical salinity. */
#include "co2_system.h"

#include <math.h>

#define LN10 2.302585092994045684

/* of pH 15; the highest is that of pH 0 */
#define LOWEST_LN_H (-15 * LN10)

/* What the formulas below share. */
typedef struct {
    double s, root_s, s15, s2;
    double t, ln_t, per_t, hundredth, ln_hundredth;
    double i, root_i;       /* ionic strength */
    double water, ln_water; /* kg of water in a kg of seawater */
    double total_of_sws;    /* of a constant on the seawater scale */
} powers;

static powers constants_of_alkalinity(double practical_salinity, double temperature, co2_constants *constants) {
    const double s = practical_salinity;
    const double t = temperature + 273.15;
    const double ln_t = log(t);
    const double per_t = 1 / t;
    const double hundredth = t / 100;
    const double ln_hundredth = ln_t - 2 * LN10;
    const double root_s = sqrt(s);
    const double s15 = s * root_s;
    const double s2 = s * s;

    /* Weiss 1974, Mar. Chem. 2, 203-215, eq. 12 */
    constants->k0 = exp(-60.2409 + 93.4517 / hundredth + 23.3585 * ln_hundredth
                        + s * (0.023517 + hundredth * (-0.023656 + hundredth * 0.0047036)));

    /* Lueker, Dickson and Keeling 2000, Mar. Chem. 70, 105-119, total scale */
    constants->k1 = exp(-LN10 * (3633.86 * per_t - 61.2172 + 9.67770 * ln_t - 0.011555 * s + 0.0001152 * s2));
    constants->k2 = exp(-LN10 * (471.78 * per_t + 25.9290 - 3.16967 * ln_t - 0.01781 * s + 0.0001122 * s2));

    /* Dickson 1990, Deep-Sea Res. 37, 755-766, total scale */
    constants->kb = exp((-8966.90 - 2890.53 * root_s - 77.942 * s + 1.728 * s15 - 0.0996 * s2) * per_t
                        + 148.0248 + 137.1942 * root_s + 1.62142 * s
                        - (24.4344 + 25.085 * root_s + 0.2474 * s) * ln_t + 0.053105 * root_s * t);

    /* Totals in proportion to chlorinity S / 1.80655: Uppstrom 1974, Morris and Riley 1966, Riley 1965, Riley and
       Tongudai 1967 */
    constants->borate = 0.0004157 * s / 35;
    constants->sulfate = 0.14 / 96.062 * s / 1.80655;
    constants->fluoride = 0.000067 / 18.998 * s / 1.80655;
    constants->calcium = 0.02128 / 40.087 * s / 1.80655;

    /* Ionic strength, and ln(kg of water in a kg of seawater) */
    const double i = 19.924 * s / (1000 - 1.005 * s);
    const double root_i = sqrt(i);
    const double water = 1 - 0.001005 * s;
    const double ln_water = log(water);

    /* Dickson 1990, J. Chem. Thermodyn. 22, 113-127, free scale */
    constants->ks = exp(-4276.1 * per_t + 141.328 - 23.093 * ln_t
                        + (-13856 * per_t + 324.57 - 47.986 * ln_t) * root_i
                        + (35474 * per_t - 771.54 + 114.723 * ln_t) * i
                        - 2698 * per_t * i * root_i + 1776 * per_t * i * i + ln_water);

    /* Dickson and Riley 1979, Mar. Chem. 7, 89-99, free scale */
    constants->kf = exp(1590.2 * per_t - 12.641 + 1.525 * root_i + ln_water);

    const double total_of_free = 1 + constants->sulfate / constants->ks;
    const double sws_of_free = total_of_free + constants->fluoride / constants->kf;
    const double total_of_sws = total_of_free / sws_of_free;

    /* Millero 1995, Geochim. Cosmochim. Acta 59, 661-677, seawater scale */
    constants->kw = total_of_sws * exp(148.9802 - 13847.26 * per_t - 23.6521 * ln_t
                                       + (-5.977 + 118.67 * per_t + 1.0495 * ln_t) * root_s - 0.01615 * s);

    /* Yao and Millero 1995, Aquat. Geochem. 1, 53-88, seawater scale */
    constants->kp1 = total_of_sws * exp(-4576.752 * per_t + 115.54 - 18.453 * ln_t
                                        + (-106.736 * per_t + 0.69171) * root_s + (-0.65643 * per_t - 0.01844) * s);
    constants->kp2 = total_of_sws * exp(-8814.715 * per_t + 172.1033 - 27.927 * ln_t
                                        + (-160.34 * per_t + 1.3566) * root_s + (0.37335 * per_t - 0.05778) * s);
    constants->kp3 = total_of_sws * exp(-3070.75 * per_t - 18.126
                                        + (17.27039 * per_t + 2.81197) * root_s + (-44.99486 * per_t - 0.09984) * s);

    /* Clegg and Whitfield 1995, Geochim. Cosmochim. Acta 59, 2403-2421, eq. 18, total scale, mol per kg of water */
    const double root_t = sqrt(t);
    const double pk_ammonium = 9.244605 - 2729.33 * (1 / 298.15 - per_t)
        + (0.04203362 - 11.24742 * per_t) * sqrt(root_s)
        + (-13.6416 + 1.176949 * root_t - 0.02860785 * t + 545.4834 * per_t) * root_s
        + (-0.1462507 + 0.0090226468 * root_t - 0.0001471361 * t + 10.5425 * per_t) * s15
        + (0.004669309 - 0.0001691742 * root_t - 0.5677934 * per_t) * s2
        + (-2.354039e-5 + 0.009698623 * per_t) * s2 * root_s;
    constants->knh4 = water * exp(-LN10 * pk_ammonium);

    /* Mucci 1983, Am. J. Sci. 283, 780-799 */
    constants->ksp_aragonite = exp(LN10 * (-171.945 - 0.077993 * t + 2903.293 * per_t
                                           + (-0.068393 + 0.0017276 * t + 88.135 * per_t) * root_s
                                           - 0.10018 * s + 0.0059415 * s15) + 71.595 * ln_t);

    /* Weiss 1974, eq. 6 and 11: virial coefficients in cm3/mol, one atmosphere = 1.01325 bar */
    const double b = -1636.75 + t * (12.0408 + t * (-0.0327957 + t * 3.16528e-5));
    const double delta = 57.7 - 0.118 * t;
    constants->fugacity_factor = exp((b + 2 * delta) * 1.01325 / (83.14462618 * t));

    const powers shared = {
        .s = s, .root_s = root_s, .s15 = s15, .s2 = s2,
        .t = t, .ln_t = ln_t, .per_t = per_t, .hundredth = hundredth, .ln_hundredth = ln_hundredth,
        .i = i, .root_i = root_i, .water = water, .ln_water = ln_water, .total_of_sws = total_of_sws,
    };
    return shared;
}

void co2_constants_of_water(double practical_salinity, double temperature, co2_constants *constants) {
    constants_of_alkalinity(practical_salinity, temperature, constants);
    constants->ksi = 1; /* without silicate */
}

void co2_constants_at(double practical_salinity, double temperature, co2_constants *constants) {
    const powers p = constants_of_alkalinity(practical_salinity, temperature, constants);

    /* Yao and Millero 1995, Aquat. Geochem. 1, 53-88, seawater scale */
    constants->ksi = p.total_of_sws * exp(-8904.2 * p.per_t + 117.4 - 19.334 * p.ln_t
                                          + (-458.79 * p.per_t + 3.5913) * p.root_i
                                          + (188.74 * p.per_t - 1.5998) * p.i
                                          + (-12.1652 * p.per_t + 0.07871) * p.i * p.i + p.ln_water);

    /* Mucci 1983, Am. J. Sci. 283, 780-799 */
    constants->ksp_calcite = exp(LN10 * (-171.9065 - 0.077993 * p.t + 2839.319 * p.per_t
                                         + (-0.77712 + 0.0028426 * p.t + 178.34 * p.per_t) * p.root_s
                                         - 0.07711 * p.s + 0.0041249 * p.s15) + 71.595 * p.ln_t);

    /* Weiss and Price 1980, Mar. Chem. 8, 347-359, eq. 10 */
    constants->dry_share = 1 - exp(24.4543 - 67.4509 / p.hundredth - 4.8489 * p.ln_hundredth - 0.000544 * p.s);

    /* Takahashi et al. 1982, in GEOSECS Pacific Expedition 3 */
    constants->fh = 1.2948 - 0.002036 * p.t + (0.0004607 - 0.000001475 * p.t) * p.s2;
}

/* Totals in mol/kg, and what a hydrogen ion concentration on the total scale makes of them. */
typedef struct {
    double dic, phosphate, silicate, ammonia;
    double total_of_free;
} totals;

/* Total alkalinity (Dickson 1981, Deep-Sea Res. 28A, 609-623) and its slope in ln[H+]. */
static double alkalinity_at(double h, const co2_constants *k, const totals *of, double *slope) {
    const double k1h = k->k1 * h;
    const double k12 = k->k1 * k->k2;
    const double carbon = 1 / (h * h + k1h + k12);
    double sum = of->dic * (k1h + 2 * k12) * carbon;
    double change = -of->dic * k1h * (h * h + 4 * k->k2 * h + k12) * carbon * carbon;

    const double boron = 1 / (k->kb + h);
    const double borate = k->borate * k->kb * boron;
    sum += borate;
    change -= borate * h * boron;

    const double hydroxide = k->kw / h;
    sum += hydroxide;
    change -= hydroxide;

    const double p3 = h * h * h;
    const double p2 = k->kp1 * h * h;
    const double p1 = k->kp1 * k->kp2 * h;
    const double p0 = k->kp1 * k->kp2 * k->kp3;
    const double phosphorus = 1 / (p3 + p2 + p1 + p0);
    const double charge = (p1 + 2 * p0 - p3) * phosphorus;
    sum += of->phosphate * charge;
    change += of->phosphate * (p1 - 3 * p3 - charge * (3 * p3 + 2 * p2 + p1)) * phosphorus;

    const double silicon = 1 / (k->ksi + h);
    const double silicate = of->silicate * k->ksi * silicon;
    sum += silicate;
    change -= silicate * h * silicon;

    const double nitrogen = 1 / (k->knh4 + h);
    const double ammonia = of->ammonia * k->knh4 * nitrogen;
    sum += ammonia;
    change -= ammonia * h * nitrogen;

    const double free = h / of->total_of_free;
    const double sulfur = 1 / (k->ks + free);
    const double bisulfate = k->sulfate * free * sulfur;
    const double fluorine = 1 / (k->kf + free);
    const double hydrogen_fluoride = k->fluoride * free * fluorine;
    sum -= free + bisulfate + hydrogen_fluoride;
    change -= free + bisulfate * k->ks * sulfur + hydrogen_fluoride * k->kf * fluorine;

    *slope = change;
    return sum;
}

/* A start near the root: borate and hydroxide as at pH 8.1, the rest of the alkalinity carried by carbon alone, which
   leaves a quadratic in [H+]. */
static double start(double alkalinity, const co2_constants *k, const totals *of) {
    const double near = 7.943282347242815e-9;
    const double carried = alkalinity - k->borate * k->kb / (k->kb + near) - k->kw / near;
    if (!(carried > 0 && carried < 2 * of->dic)) {
        return near;
    }
    const double half = 0.5 * k->k1 * (carried - of->dic);
    const double product = k->k1 * k->k2 * carried * (2 * of->dic - carried);
    return (sqrt(half * half + product) - half) / carried;
}

/* ln[H+] by Newton's steps, and halves of the bracket where one leads out of it: alkalinity only falls with [H+]. */
static int solve(double alkalinity, const co2_constants *k, const totals *of, double first, double enough,
                 double *ln_h, double *slope) {
    double low = LOWEST_LN_H;
    double high = 0;
    double x = first;
    for (int step = 1; step <= 100; step++) {
        const double excess = alkalinity_at(exp(x), k, of, slope) - alkalinity;
        if (excess > 0) {
            low = x;
        } else {
            high = x;
        }
        double next = x - excess / *slope;
        if (!(next > low && next < high) && !(fabs(next - x) <= enough)) {
            next = (low + high) / 2;
        }
        const double moved = fabs(next - x);
        x = next;
        if (moved <= enough) {
            *ln_h = x;
            return x > LOWEST_LN_H + 2 * enough && x < -2 * enough ? step : 0;
        }
    }
    return 0;
}

int co2_hydrogen_near(double alkalinity, double dic, double phosphate, double ammonia, const co2_constants *k,
                      double *ln_h) {
    const totals of = {
        .dic = dic, .phosphate = phosphate, .silicate = 0, .ammonia = ammonia, .total_of_free = 1 + k->sulfate / k->ks,
    };
    double slope;
    /* Steps square the error: after one of this length none is left to see. */
    return solve(alkalinity, k, &of, *ln_h, 1e-8, ln_h, &slope);
}

int co2_solve(const co2_input *input, co2_state *state) {
    co2_constants k;
    co2_constants_at(input->practical_salinity, input->temperature, &k);
    const totals of = {
        .dic = 1e-6 * input->dic,
        .phosphate = 1e-6 * input->phosphate,
        .silicate = 1e-6 * input->silicate,
        .ammonia = 1e-6 * input->ammonia,
        .total_of_free = 1 + k.sulfate / k.ks,
    };
    const double alkalinity = 1e-6 * input->alkalinity;
    double ln_h;
    double slope;
    const int steps = solve(alkalinity, &k, &of, log(start(alkalinity, &k, &of)), 1e-12 * LN10, &ln_h, &slope);
    if (steps == 0) {
        return 0;
    }
    const double h = exp(ln_h);
    const double free = h / of.total_of_free;
    const double log_total_of_free = log10(of.total_of_free);

    state->ph_total = -ln_h / LN10;
    state->ph_free = state->ph_total + log_total_of_free;
    state->ph_sws = state->ph_free - log10(of.total_of_free + k.fluoride / k.kf);
    state->ph_nbs = state->ph_sws - log10(k.fh);

    const double h2 = h * h;
    const double k12 = k.k1 * k.k2;
    const double carbon = 1 / (h2 + k.k1 * h + k12);
    state->co2_aq = input->dic * h2 * carbon;
    state->bicarbonate = input->dic * k.k1 * h * carbon;
    state->carbonate = input->dic * k12 * carbon;
    state->fco2 = state->co2_aq / k.k0;
    state->pco2 = state->fco2 / k.fugacity_factor;
    state->xco2_dry = state->pco2 / k.dry_share;

    state->hydrogen_free = 1e6 * free;
    state->hydroxide = 1e6 * k.kw / h;

    const double boron = 1e6 * k.borate / (k.kb + h);
    state->borate = boron * k.kb;
    state->boric_acid = boron * h;

    const double p3 = h2 * h;
    const double p2 = k.kp1 * h2;
    const double p1 = k.kp1 * k.kp2 * h;
    const double p0 = k.kp1 * k.kp2 * k.kp3;
    const double phosphorus = input->phosphate / (p3 + p2 + p1 + p0);
    state->h3po4 = phosphorus * p3;
    state->h2po4 = phosphorus * p2;
    state->hpo4 = phosphorus * p1;
    state->po4 = phosphorus * p0;

    const double silicon = input->silicate / (k.ksi + h);
    state->h3sio4 = silicon * k.ksi;
    state->h4sio4 = silicon * h;

    const double nitrogen = input->ammonia / (k.knh4 + h);
    state->nh3 = nitrogen * k.knh4;
    state->nh4 = nitrogen * h;

    const double sulfur = 1e6 * k.sulfate / (k.ks + free);
    state->hso4 = sulfur * free;
    state->so4 = sulfur * k.ks;
    const double fluorine = 1e6 * k.fluoride / (k.kf + free);
    state->hf = fluorine * free;
    state->fluoride = fluorine * k.kf;

    const double product = 1e-6 * state->carbonate * k.calcium;
    state->saturation_aragonite = product / k.ksp_aragonite;
    state->saturation_calcite = product / k.ksp_calcite;

    /* d ln[CO2] / d ln[DIC] at constant alkalinity; the slope is that of the last step, where [H+] has settled. */
    const double charge = (k.k1 * h + 2 * k12) * carbon;
    state->revelle_factor = 1 - of.dic * charge * charge / slope;
    return steps;
}
